/** Zoom and position of the photo in its window. */
import type { Pixel } from '../../order/photo-types.ts';

/** Screen units, or pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** In the window, screen units. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface View {
  /** Screen units per pixel. */
  readonly scale: number;
  /** Of the picture's top left. */
  readonly left: number;
  readonly top: number;
}

const largest = 8;

/** The whole picture, centered. */
export function whole(picture: Size, window: Size): View {
  const scale = Math.min(window.width / picture.width, window.height / picture.height);
  return {
    scale,
    left: (window.width - scale * picture.width) / 2,
    top: (window.height - scale * picture.height) / 2,
  };
}

export interface Frame {
  readonly picture: Size;
  readonly window: Size;
}

/** Around a place that stays. */
export function zoomed(view: View, by: Spot & { readonly factor: number }, frame: Frame): View {
  const least = Math.min(whole(frame.picture, frame.window).scale, largest);
  const scale = Math.min(Math.max(view.scale * by.factor, least), Math.max(largest, least));
  const factor = scale / view.scale;
  return kept(
    { scale, left: by.x - factor * (by.x - view.left), top: by.y - factor * (by.y - view.top) },
    frame,
  );
}

/** By screen units. */
export const moved = (view: View, by: Spot, frame: Frame): View =>
  kept({ ...view, left: view.left + by.x, top: view.top + by.y }, frame);

/** Small pictures are centered; large ones leave no gap. */
function kept({ scale, left, top }: View, { picture, window }: Frame): View {
  const along = (at: number, length: number, room: number): number =>
    length <= room ? (room - length) / 2 : Math.min(0, Math.max(room - length, at));
  return {
    scale,
    left: along(left, scale * picture.width, window.width),
    top: along(top, scale * picture.height, window.height),
  };
}

/** Moved just enough to show a pixel. */
export function showing(view: View, [x, y]: Pixel, frame: Frame): View {
  const margin = 40;
  const need = (at: number, room: number): number =>
    at < margin ? margin - at : at > room - margin ? room - margin - at : 0;
  return moved(
    view,
    {
      x: need(view.left + view.scale * x, frame.window.width),
      y: need(view.top + view.scale * y, frame.window.height),
    },
    frame,
  );
}

/** The pixel at a place, inside the picture. */
export function pixelAt(view: View, at: Spot, picture: Size): Pixel {
  return inside([(at.x - view.left) / view.scale, (at.y - view.top) / view.scale], picture);
}

/** The nearest whole pixel. */
export function inside([x, y]: Pixel, { width, height }: Size): Pixel {
  const within = (at: number, most: number): number => Math.min(most - 1, Math.max(0, Math.round(at)));
  return [within(x, width), within(y, height)];
}

/** Where a pixel is seen. */
export const placeOf = (view: View, [x, y]: Pixel): Spot => ({
  x: view.left + view.scale * x,
  y: view.top + view.scale * y,
});
