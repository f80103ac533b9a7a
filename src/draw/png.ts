/** Pictures as PNG: the SVG drawn by a library, with our own type and no other. */
import { Resvg, type ResvgRenderOptions } from '@resvg/resvg-js';

export interface PngOptions {
  /** Files of the type that comes with the program; the library reads them itself. */
  readonly fontFiles: readonly string[];
  /** Dots to an inch of paper. */
  readonly dots: number;
}

/** A point of the library's own is a 96th of an inch. */
const OWN_DOTS = 96;

const rendered = (
  svg: string,
  fontFiles: readonly string[],
  fitTo: NonNullable<ResvgRenderOptions['fitTo']>,
) =>
  new Resvg(svg, {
    fitTo,
    font: { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: 'Source Sans 3' },
  }).render();

/** Bytes of the picture: the same on every machine of a kind. */
export const svgPng = (svg: string, { fontFiles, dots }: PngOptions): Uint8Array =>
  rendered(svg, fontFiles, { mode: 'zoom', value: dots / OWN_DOTS }).asPng();

/** A drawing on nothing, so many pixels wide: colors are weighed by opacity already. */
export function svgPixels(
  svg: string,
  { fontFiles, width }: { readonly fontFiles: readonly string[]; readonly width: number },
): { width: number; height: number; data: Uint8Array } {
  const picture = rendered(svg, fontFiles, { mode: 'width', value: width });
  return { width: picture.width, height: picture.height, data: Uint8Array.from(picture.pixels) };
}
