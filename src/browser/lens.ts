/** The magnifier: the photo around the mark, enlarged, with a cross. */
import { placeOf } from '../pick/view.ts';
import type { Desk } from './desk.ts';

/** Draws the magnifier, or hides it. */
export function drawLens(canvas: HTMLCanvasElement, image: HTMLImageElement, desk: Desk): void {
  canvas.hidden = desk.look === undefined;
  const pen = canvas.getContext('2d');
  if (desk.look === undefined || pen === null) return;
  const [x, y] = desk.look;
  // Moves off what it shows.
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
