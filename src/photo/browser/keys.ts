/** The keyboard does all that the mouse does. */
import { inside, pixelAt, showing, whole, zoomed } from '../pick/view.ts';
import type { Desk } from './desk.ts';

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** On the photo; Ctrl+Z everywhere but in inputs. */
export function listenToKeys(stage: HTMLElement, desk: Desk): void {
  stage.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = arrows[event.key];
    const deed = arrow === undefined ? deeds[event.key] : undefined;
    if (arrow !== undefined) step(desk, arrow, event.shiftKey);
    else if (deed !== undefined) deed(desk);
    else return;
    event.preventDefault();
  });
  document.addEventListener('keydown', (event) => {
    const inField = event.target instanceof HTMLInputElement && event.target.type === 'text';
    if (inField || event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    desk.do({ do: 'undo' });
  });
}

/** Zooms around the mark or the middle. */
export function zoomBy(desk: Desk, factor: number): void {
  const { width, height } = desk.window;
  desk.view = zoomed(desk.view, { factor, x: width / 2, y: height / 2 }, desk.frame);
  const mark = desk.cross ?? (desk.point === undefined ? undefined : desk.session.now.points[desk.point]);
  if (mark !== undefined && factor > 1) desk.view = showing(desk.view, mark, desk.frame);
  desk.tell();
}

/** Shows the whole photo. */
export function showAll(desk: Desk): void {
  desk.view = whole(desk.photo, desk.window);
  desk.tell();
}

const zoomIn = (desk: Desk): void => {
  zoomBy(desk, 1.5);
};

const deeds: Readonly<Record<string, (desk: Desk) => void>> = {
  '+': zoomIn,
  '=': zoomIn,
  '-': (desk) => {
    zoomBy(desk, 1 / 1.5);
  },
  '0': showAll,
  Enter: putOrGoOn,
  ' ': putOrGoOn,
  PageDown: (desk) => {
    desk.do({ do: 'next' });
  },
  PageUp: (desk) => {
    desk.do({ do: 'back' });
  },
  Delete: (desk) => {
    if (desk.point !== undefined) desk.do({ do: 'remove', id: desk.point });
  },
};

const middle = (desk: Desk): readonly [number, number] =>
  pixelAt(desk.view, { x: desk.window.width / 2, y: desk.window.height / 2 }, desk.photo);

function step(desk: Desk, [right, down]: readonly [number, number], far: boolean): void {
  if (desk.point === undefined) return;
  const mark = desk.session.now.points[desk.point];
  if (mark !== undefined) {
    const by = far ? 10 : 1;
    const to = inside([mark[0] + by * right, mark[1] + by * down], desk.photo);
    desk.view = showing(desk.view, to, desk.frame);
    desk.put(to, `nudge ${desk.point}`);
    return;
  }
  // Single pixels are too slow on a whole photo.
  const by = Math.max(1, (far ? 0.08 : 0.02) * (desk.window.width / desk.view.scale));
  const from = desk.cross ?? middle(desk);
  desk.cross = inside([from[0] + by * right, from[1] + by * down], desk.photo);
  desk.look = desk.cross;
  desk.view = showing(desk.view, desk.cross, desk.frame);
  desk.tell();
}

function putOrGoOn(desk: Desk): void {
  if (desk.point === undefined || desk.session.now.points[desk.point] !== undefined) {
    desk.do({ do: 'next' });
  } else desk.put(desk.cross ?? middle(desk));
}
