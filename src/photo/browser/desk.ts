/** What the page's parts share: session, view, and listeners for changes. */
import type { Pixel } from '../../order/photo-types.ts';
import { isPoint, type PointId } from '../pick/landmarks.ts';
import { act, begin, type Act, type Session } from '../pick/state.ts';
import { showing, whole, type Frame, type Size, type View } from '../pick/view.ts';
import type { PhotoFile } from '../pick/block.ts';

export class Desk {
  readonly photo: PhotoFile;
  session: Session = begin;
  view: View;
  window: Size;
  /** The arrow keys' cross, before the mark is placed. */
  cross: Pixel | undefined;
  /** What the magnifier shows. */
  look: Pixel | undefined;
  readonly #tellers: (() => void)[] = [];

  constructor(photo: PhotoFile, window: Size) {
    this.photo = photo;
    this.window = window;
    this.view = whole(photo, window);
  }

  get frame(): Frame {
    return { picture: this.photo, window: this.window };
  }

  /** undefined at a step without a mark. */
  get point(): PointId | undefined {
    const { at } = this.session.now;
    return isPoint(at) ? at : undefined;
  }

  onChange(tell: () => void): void {
    this.#tellers.push(tell);
  }

  tell(): void {
    for (const tell of this.#tellers) tell();
  }

  /** A new step is scrolled into view. */
  do(deed: Act): void {
    const before = this.session.now.at;
    this.session = act(this.session, deed);
    const { now } = this.session;
    if (now.at !== before) {
      this.cross = undefined;
      this.look = this.point === undefined ? undefined : now.points[this.point];
      if (this.look !== undefined) this.view = showing(this.view, this.look, this.frame);
    }
    this.tell();
  }

  put(at: Pixel, run?: string): void {
    if (this.point === undefined) return;
    this.cross = undefined;
    this.look = at;
    this.do({ do: 'put', id: this.point, at, ...(run === undefined ? {} : { run }) });
  }
}
