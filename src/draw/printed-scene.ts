/** A picture in the letters that the fonts have. */
import { Letters, type Fonts } from '../pages/pdf/letters.ts';
import { withTexts, type Scene } from './scene.ts';

/** A picture as it can be drawn with these fonts, and which letters they lack. */
export function printedScene(scene: Scene, fonts: Fonts): { scene: Scene; lacking: readonly string[] } {
  const letters = new Letters(fonts);
  const layers = withTexts(scene.layers, letters.printed);
  return { scene: { ...scene, layers }, lacking: [...letters.lacking] };
}
