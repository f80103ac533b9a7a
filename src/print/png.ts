/** Pictures as PNG: the SVG drawn by a library, with our own type and no other. */
import { Resvg } from '@resvg/resvg-js';

export interface PngOptions {
  /** Files of the type that comes with the program; the library reads them itself. */
  readonly fontFiles: readonly string[];
  /** Dots to an inch of paper. */
  readonly dots: number;
}

/** A point of the library's own is a 96th of an inch. */
const OWN_DOTS = 96;

/** Bytes of the picture: the same on every machine of a kind. */
export function svgPng(svg: string, { fontFiles, dots }: PngOptions): Uint8Array {
  const picture = new Resvg(svg, {
    fitTo: { mode: 'zoom', value: dots / OWN_DOTS },
    font: { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: 'Source Sans 3' },
  });
  return picture.render().asPng();
}

/** A drawing on nothing, so many pixels wide: colors are weighed by opacity already. */
export function svgPixels(
  svg: string,
  { fontFiles, width }: { readonly fontFiles: readonly string[]; readonly width: number },
): { width: number; height: number; data: Uint8Array } {
  const picture = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: 'Source Sans 3' },
  });
  const { width: wide, height, pixels } = picture.render();
  return { width: wide, height, data: Uint8Array.from(pixels) };
}
