/** Pictures with the letters that the fonts have: the rest are shown as an empty square, and told. */
import { withTexts, type Scene } from '../picture/scene.ts';
import { hasOf, type Fonts } from './document.ts';
import { printed } from './letters.ts';

/** The same picture as it can be drawn with these fonts, and which letters they lack. */
export function printedScene(scene: Scene, fonts: Fonts): { scene: Scene; lacking: readonly string[] } {
  const lacking = new Set<string>();
  const has = hasOf(fonts);
  const layers = withTexts(scene.layers, (text) => printed(text, has, lacking));
  return { scene: { ...scene, layers }, lacking: [...lacking] };
}
