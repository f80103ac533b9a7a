/** All rules, in the order asked. */
import { betterThanNow } from './better-than-now.ts';
import { buckleHeight } from './buckle-height.ts';
import { buckleRoom } from './buckle-room.ts';
import { buckleStrands } from './buckle-strands.ts';
import { elbowClearance } from './elbow-clearance.ts';
import { flarePosition } from './flare-position.ts';
import { grip } from './grip.ts';
import { latigoRun } from './latigo-run.ts';
import { layersRule } from './layers.ts';
import { lengthAgreement } from './length-agreement.ts';
import { pressureIndex } from './pressure-index.ts';
import { ringSlant } from './ring-slant.ts';
import { ropingStrength } from './roping-strength.ts';
import type { AnyRule } from './rule.ts';
import { stock } from './stock.ts';
import { strandRange } from './strand-range.ts';
import { usualLength } from './usual-length.ts';
import { usualStrands } from './usual-strands.ts';

export const rules: readonly AnyRule[] = [
  elbowClearance,
  betterThanNow,
  buckleHeight,
  latigoRun,
  buckleStrands,
  strandRange,
  stock,
  buckleRoom,
  pressureIndex,
  grip,
  flarePosition,
  ringSlant,
  ropingStrength,
  usualStrands,
  layersRule,
  usualLength,
  lengthAgreement,
];
