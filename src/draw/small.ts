/** A small picture of a cinch on its horse, for a paper. */
import type { Candidate } from '../cinch/candidate.ts';
import type { Facts } from '../horse/facts.ts';
import type { Drawing } from '../pages/sheet.ts';
import type { Units } from '../units/text.ts';
import { aCinch, horseName } from '../words/counter-words.ts';
import { linesAt, textLines } from './letters.ts';
import { hands, leading } from './look.ts';
import { panelLayers, settingFor, type Size } from './panel.ts';
import type { Scene } from './scene.ts';
import { drawLayers } from './scene-pdf.ts';
import { svgElement } from './svg.ts';

/** Points; the paper stays one page. */
const SIZE: Size = { width: 158, height: 176 };

/** To scale. */
export function smallPicture(candidate: Candidate, facts: Facts, units: Units): Drawing {
  // Papers tell the strands' clearance.
  const clearance = candidate.cordClearance;
  const shown = { head: '', tag: '', mark: undefined, lines: [], candidate, clearance };
  const set = settingFor([shown], { facts, units }, SIZE);
  // No scale: printers may shrink it.
  const words = textLines('Near side, to scale. Hatched: no cinch belongs there.', 'fine', SIZE);
  const height = SIZE.height + 4 + words.length * hands.fine.size * leading;
  const scene: Scene = {
    width: SIZE.width,
    height,
    margin: 0,
    title: `${aCinch(candidate)}, on ${horseName(facts.order)}`,
    about: words.join(' '),
    scale: set.scale,
    layers: [
      ...panelLayers(shown, set, [0, 0]),
      { name: 'words', shapes: linesAt(words, 'fine', [0, SIZE.height + 3]) },
    ],
  };
  return {
    width: SIZE.width,
    height,
    about: `${scene.title}. ${scene.about}`,
    svg: svgElement(scene),
    draw: (document) => {
      drawLayers(document, scene.layers);
    },
  };
}
