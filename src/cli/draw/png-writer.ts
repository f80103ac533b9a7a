/** Loads the native PNG library; all else works without it. */
import type { svgPixels, svgPng } from '../../draw/png.ts';
import { CliFault } from '../fault.ts';

/** Errors: not built for this machine. */
export async function pngWriter(): Promise<{ svgPng: typeof svgPng; svgPixels: typeof svgPixels }> {
  try {
    return await import('../../draw/png.ts');
  } catch {
    throw new CliFault(
      'PNG cannot be drawn here: the package @resvg/resvg-js is not installed for this machine',
      {
        hint: 'Use --format svg or html, or install again with npm ci.',
      },
    );
  }
}
