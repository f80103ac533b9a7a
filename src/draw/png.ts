/** SVG pictures as PNG, using only our own fonts. */
import { Resvg, type ResvgRenderOptions } from '@resvg/resvg-js';

export interface PngOptions {
  readonly fontFiles: readonly string[];
  /** Per inch of paper. */
  readonly dots: number;
}

/** The library assumes 96 per inch. */
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

/** The same bytes on every machine of a kind. */
export const svgPng = (svg: string, { fontFiles, dots }: PngOptions): Uint8Array =>
  rendered(svg, fontFiles, { mode: 'zoom', value: dots / OWN_DOTS }).asPng();

/** `width` pixels wide, transparent, colors premultiplied. */
export function svgPixels(
  svg: string,
  { fontFiles, width }: { readonly fontFiles: readonly string[]; readonly width: number },
): { width: number; height: number; data: Uint8Array } {
  const picture = rendered(svg, fontFiles, { mode: 'width', value: width });
  return { width: picture.width, height: picture.height, data: Uint8Array.from(picture.pixels) };
}
