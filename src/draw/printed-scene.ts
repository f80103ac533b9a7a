/** Replaces letters the fonts lack in a picture. */
import { Letters, type Fonts } from '../pages/pdf/letters.ts';
import { withTexts, type Scene } from './scene.ts';

/** Also gives the missing letters. */
export function printedScene(scene: Scene, fonts: Fonts): { scene: Scene; lacking: readonly string[] } {
  const letters = new Letters(fonts);
  const layers = withTexts(scene.layers, letters.printed);
  return { scene: { ...scene, layers }, lacking: [...letters.lacking] };
}
