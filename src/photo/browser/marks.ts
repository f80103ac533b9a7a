/** Draws marks, lines between pairs, the keyboard cross and the magnifier. */
import { isPoint, stepsFor, type PointId } from '../pick/landmarks.ts';
import { placeLabels, type Label } from '../pick/labels.ts';
import { placeOf, type Spot } from '../pick/view.ts';
import type { Pixel } from '../../order/photo-types.ts';
import type { Desk } from './desk.ts';
import { drawn } from './elements.ts';

/** Dashed where the photo shows no line. */
const spans: readonly { readonly from: PointId; readonly to: PointId; readonly dashed?: true }[] = [
  { from: 'from', to: 'to' },
  { from: 'corner-1', to: 'corner-2' },
  { from: 'corner-2', to: 'corner-3' },
  { from: 'corner-3', to: 'corner-4' },
  { from: 'corner-4', to: 'corner-1' },
  { from: 'plumb-top', to: 'plumb-bottom', dashed: true },
  { from: 'spine', to: 'underline', dashed: true },
  { from: 'girth-groove', to: 'elbow', dashed: true },
];

/** Redraws all; they are few. */
export function drawMarks(svg: SVGElement, desk: Desk): void {
  const { now } = desk.session;
  const steps = stepsFor(now.kind).filter(({ id }) => isPoint(id));
  const shown = new Map<PointId, Pixel>();
  for (const { id } of steps) {
    const at = isPoint(id) ? now.points[id] : undefined;
    if (at !== undefined) shown.set(id as PointId, at);
  }
  const placed = steps.flatMap(({ id, name }) => {
    const at = shown.get(id as PointId);
    return at === undefined ? [] : [{ id, name, at: placeOf(desk.view, at), now: id === desk.point }];
  });
  const labels = placeLabels(placed, desk.window);
  const marks = placed.map((each, i) => mark(each, labels[i]));
  const cross =
    desk.cross === undefined
      ? []
      : [mark({ id: 'cross', name: '', at: placeOf(desk.view, desk.cross), now: true })];
  svg.replaceChildren(...lines(desk, shown), ...marks, ...cross);
}

function lines(desk: Desk, shown: ReadonlyMap<PointId, Pixel>): SVGElement[] {
  return spans.flatMap(({ from, to, dashed }) => {
    const a = shown.get(from);
    const b = shown.get(to);
    if (a === undefined || b === undefined) return [];
    const [start, end] = [placeOf(desk.view, a), placeOf(desk.view, b)];
    const d = `M${tenth(start.x)} ${tenth(start.y)}L${tenth(end.x)} ${tenth(end.y)}`;
    const kind = dashed === undefined ? 'span' : 'span dashed';
    return [drawn('path', { class: 'span under', d }), drawn('path', { class: kind, d })];
  });
}

const tenth = (value: number): string => String(Math.round(10 * value) / 10);

/** Open in the middle, so the spot shows. */
function mark(
  { id, name, at: { x, y }, now }: { id: string; name: string; at: Spot; now: boolean },
  label?: Label,
): SVGElement {
  const d = 'M-13 0H-4M4 0H13M0 -13V-4M0 4V13';
  const told =
    label === undefined
      ? []
      : [drawn('text', { x: label.dx, y: label.dy, 'text-anchor': label.anchor }, [new Text(name)])];
  return drawn(
    'g',
    { class: now ? 'mark now' : 'mark', 'data-mark': id, transform: `translate(${tenth(x)} ${tenth(y)})` },
    [
      drawn('circle', { class: 'under', r: 8 }),
      drawn('path', { class: 'under', d }),
      drawn('circle', { r: 8 }),
      drawn('path', { d }),
      ...told,
    ],
  );
}

/** The photo around the mark, enlarged, or nothing. */
export function drawLens(canvas: HTMLCanvasElement, image: HTMLImageElement, desk: Desk): void {
  canvas.hidden = desk.look === undefined;
  const pen = canvas.getContext('2d');
  if (desk.look === undefined || pen === null) return;
  const [x, y] = desk.look;
  // Moves away from what it shows.
  const place = placeOf(desk.view, desk.look);
  canvas.classList.toggle('left', place.x > desk.window.width - 190 && place.y < 190);
  const side = canvas.width;
  // Two canvas pixels per screen unit.
  const scale = Math.max(2, 6 * desk.view.scale);
  const span = side / scale;
  pen.fillStyle = '#3a322e';
  pen.fillRect(0, 0, side, side);
  pen.imageSmoothingEnabled = scale < 4;
  pen.drawImage(image, x - span / 2, y - span / 2, span, span, 0, 0, side, side);
  cross(pen, side);
}

function cross(pen: CanvasRenderingContext2D, side: number): void {
  const middle = side / 2;
  for (const [width, color] of [
    [6, '#2b2320'],
    [2, '#ffffff'],
  ] as const) {
    pen.lineWidth = width;
    pen.strokeStyle = color;
    pen.beginPath();
    for (const [from, to] of [
      [0, middle - 14],
      [middle + 14, side],
    ] as const) {
      pen.moveTo(from, middle);
      pen.lineTo(to, middle);
      pen.moveTo(middle, from);
      pen.lineTo(middle, to);
    }
    pen.stroke();
  }
}
