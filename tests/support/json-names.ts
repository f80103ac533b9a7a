/** Names only JSON has; those of tables are in src/words/names.ts. */
import type { NameUnit } from '../../src/words/names.ts';

const byUnit: Readonly<Record<NameUnit, string>> = {
  '': `
    accent agreement alternatives asked assumptions atFloor benches bins buckles buy cannotGive cannotTell causes cautions
    checked checks contrary cord counts criterion cuts dees dissent endsAt error evenLengths examples faces filled first flare
    floorClearance followed front gives hardware heldOut houseRules imageSize kind late learned lengths lines looks lots materials metal
    missing moves movedPromises nearest nearestColor notes now numbers open options orderNotes orders otherStyles part per plan problems profile promises putUps
    questions reads refused result results schema sections seen shares shop shortages shows simulated source spec specs
    startsAt steps supply strandNumbers surer swap takes taxes then tolerances tradeOffs trouble unit value waits wants wayOut what where why
    window withoutPhoto worthAsking wovenBars accents better bought opened waste weekdays defaults mean refit standardError`,
  in: 'at floor frame frameBars further half high inForce leftover low lengthOnHand longest returned sdNow sdThen start station stretch strung tail whole wovenBar',
  n: `
    hours bound couldEarn draws endMinute firstStrand gap lastStrand minutesADay near number off orientation outcomes passes percent passing
    seed startMinute complaints strength tried`,
  chance:
    'after before both byChance came cameHigh cameLow chanceNow chanceThen clears complaint moved reaches',
  share: 'settled',
  minutes: '',
  money: 'amount dearerBy each',
  day: 'comes earliest latest promiseBefore until',
  yes: 'explained goesBack keeper meetsDue misfit orderable proven recommended there',
};

export const jsonNames: ReadonlyMap<string, NameUnit> = new Map(
  (Object.entries(byUnit) as [NameUnit, string][]).flatMap(([unit, text]) =>
    text
      .split(/\s+/)
      .filter((name) => name !== '')
      .map((name): [string, NameUnit] => [name, unit]),
  ),
);
