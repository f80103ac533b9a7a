/** Mouse, pen and touch: tap to mark, drag mark or photo, zoom with two fingers. */
import type { PointId } from '../pick/landmarks.ts';
import { inside, moved, pixelAt, placeOf, zoomed, type Spot } from '../pick/view.ts';
import type { Desk } from './desk.ts';

/** `grip` is the mark's offset from the pointer. */
type Hold =
  | { readonly kind: 'press'; readonly start: Spot }
  | { readonly kind: 'pan' }
  | {
      readonly kind: 'mark';
      readonly id: PointId;
      readonly grip: Spot;
      readonly start: Spot;
      readonly run: string;
    }
  | { readonly kind: 'none' };

/** Smaller moves are no drag, screen units. */
const tremble = { mouse: 4, touch: 10 };
/** Distance that counts as on a mark, screen units. */
const reach = { mouse: 14, touch: 26 };

/** Listens on the stage. */
export function listenToPointers(stage: HTMLElement, desk: Desk): void {
  const down = new Map<number, Spot>();
  let hold: Hold = { kind: 'none' };
  let runs = 0;

  const placeIn = (event: MouseEvent): Spot => {
    const box = stage.getBoundingClientRect();
    return { x: event.clientX - box.left - stage.clientLeft, y: event.clientY - box.top - stage.clientTop };
  };

  stage.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    stage.setPointerCapture(event.pointerId);
    const at = placeIn(event);
    down.set(event.pointerId, at);
    if (down.size > 1) hold = { kind: 'none' };
    else hold = grasp(desk, at, { run: `drag ${String((runs += 1))}`, within: by(event, reach) });
  });

  stage.addEventListener('pointermove', (event) => {
    const at = placeIn(event);
    const before = down.get(event.pointerId);
    if (before === undefined) {
      hover(desk, at, event);
      return;
    }
    down.set(event.pointerId, at);
    if (down.size === 2) pinch(desk, { before, at, other: otherOf(down, event.pointerId) });
    else if (down.size === 1) hold = drag(desk, hold, { before, at, slack: by(event, tremble) });
  });

  const up = (event: PointerEvent): void => {
    if (!down.delete(event.pointerId)) return;
    const wasTap = hold.kind === 'press' || hold.kind === 'mark';
    if (event.type === 'pointerup' && wasTap && !(hold.kind === 'mark' && isMoving(hold)))
      desk.put(pixelAt(desk.view, placeIn(event), desk.photo));
    hold = { kind: 'none' };
  };
  stage.addEventListener('pointerup', up);
  stage.addEventListener('pointercancel', up);
  stage.addEventListener('pointerleave', () => {
    if (down.size > 0) return;
    desk.look = desk.point === undefined ? undefined : desk.session.now.points[desk.point];
    desk.tell();
  });

  stage.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      // A touchpad pinch arrives as Ctrl and wheel, in small steps.
      const factor = Math.exp((-event.deltaY * lines * (event.ctrlKey ? 8 : 1)) / 600);
      desk.view = zoomed(desk.view, { factor, ...placeIn(event) }, desk.frame);
      desk.tell();
    },
    { passive: false },
  );
}

const by = (event: PointerEvent, sizes: { mouse: number; touch: number }): number =>
  event.pointerType === 'mouse' ? sizes.mouse : sizes.touch;

const apart = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

const isMoving = (hold: Hold & { kind: 'mark' }): boolean => hold.start.x === Infinity;

/** The mark under the pointer, the current one first. */
function grasp(desk: Desk, at: Spot, { run, within }: { run: string; within: number }): Hold {
  const { points } = desk.session.now;
  const near = Object.entries(points)
    .map(([id, pixel]) => ({ id: id as PointId, place: placeOf(desk.view, pixel) }))
    .map((mark) => ({ ...mark, far: apart(mark.place, at) - (mark.id === desk.point ? within : 0) }))
    .filter(({ place }) => apart(place, at) <= within)
    .sort((a, b) => a.far - b.far)[0];
  if (near === undefined) return { kind: 'press', start: at };
  const grip = { x: near.place.x - at.x, y: near.place.y - at.y };
  return { kind: 'mark', id: near.id, grip, start: at, run };
}

interface Move {
  readonly before: Spot;
  readonly at: Spot;
  readonly slack: number;
}

function drag(desk: Desk, hold: Hold, { before, at, slack }: Move): Hold {
  if (hold.kind === 'none') return hold;
  if (hold.kind === 'press' && apart(hold.start, at) <= slack) return hold;
  if (hold.kind === 'mark') return dragMark(desk, hold, { at, slack });
  const from = hold.kind === 'press' ? hold.start : before;
  desk.view = moved(desk.view, { x: at.x - from.x, y: at.y - from.y }, desk.frame);
  desk.tell();
  return { kind: 'pan' };
}

function dragMark(
  desk: Desk,
  hold: Hold & { kind: 'mark' },
  { at, slack }: { at: Spot; slack: number },
): Hold {
  if (!isMoving(hold) && apart(hold.start, at) <= slack) return hold;
  const { view, photo } = desk;
  const to = pixelAt(view, { x: at.x + hold.grip.x, y: at.y + hold.grip.y }, photo);
  if (desk.session.now.at !== hold.id) desk.do({ do: 'go', to: hold.id });
  desk.put(inside(to, photo), hold.run);
  return { ...hold, start: { x: Infinity, y: Infinity } };
}

const otherOf = (down: ReadonlyMap<number, Spot>, id: number): Spot =>
  [...down].find(([other]) => other !== id)?.[1] ?? { x: 0, y: 0 };

function pinch(desk: Desk, { before, at, other }: { before: Spot; at: Spot; other: Spot }): void {
  const was = { x: (before.x + other.x) / 2, y: (before.y + other.y) / 2 };
  const now = { x: (at.x + other.x) / 2, y: (at.y + other.y) / 2 };
  const factor = apart(at, other) / Math.max(1, apart(before, other));
  const view = moved(desk.view, { x: now.x - was.x, y: now.y - was.y }, desk.frame);
  desk.view = zoomed(view, { factor, ...now }, desk.frame);
  desk.tell();
}

function hover(desk: Desk, at: Spot, event: PointerEvent): void {
  if (event.pointerType !== 'mouse' || desk.point === undefined) return;
  desk.look = pixelAt(desk.view, at, desk.photo);
  desk.tell();
}
