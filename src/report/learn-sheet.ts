/** What outcomes taught, as a sheet: before and after, how strong, whether it foretells better, and how well it is calibrated. */
import { refitsOf, writtenOf } from '../learn/entries.ts';
import type { Learned } from '../learn/learn.ts';
import type { Bin, Range, Refit } from '../learn/refit.ts';
import { learningNumbers } from '../sources/learning.ts';
import { decimals } from '../units/print.ts';
import { under, type Block, type Sheet } from './sheet.ts';
import { chanceText } from './text.ts';

const names: Readonly<Record<Refit['key'], string>> = {
  'required-clearance': 'Required clearance',
  stretch: 'Give of new cord',
};

const complaintNames: Readonly<Record<Refit['key'], string>> = {
  'required-clearance': 'rubs',
  stretch: 'too long or too short',
};

/** The sheet; `day` is when it is written, `file` names the outcomes. */
export function learnSheet(learned: Learned, { file, day }: { file: string; day: string }): Sheet {
  const { shop, counts, evidence } = learned;
  const told = counts
    .filter(({ count }) => count > 0)
    .map(({ result, count }) => `${String(count)} ${result}`);
  return {
    title: 'What the outcomes teach',
    shop: shop.name,
    about: [`${String(evidence.length)} outcomes in ${file}: ${told.join(', ')}.`, `Written ${day}.`],
    notice: undefined,
    blocks: [
      ...under('Before and after', [numbersTable(learned)]),
      ...under('How strong', [{ kind: 'list', items: refitsOf(learned).map(strengthText) }]),
      ...under('Held out', [
        { kind: 'list', items: refitsOf(learned).map((each) => verdictText(each, learned)) },
      ]),
      ...refitsOf(learned).flatMap((each) =>
        under(`Expected and come: ${complaintNames[each.key]}`, [binsTable(each.bins)]),
      ),
      ...under('How to read this', [{ kind: 'list', items: readingTexts(learned) }]),
    ],
    rules: [],
    cautions: [],
  };
}

const inches = (value: number): string => `${decimals(value, 2)} in`;
const between = ({ low, high }: Range): string => `${decimals(Math.max(0, low), 2)} to ${inches(high)}`;

function numbersTable(learned: Learned): Block {
  return {
    kind: 'table',
    columns: ['', 'In force', 'Before', '90 %', 'After', '90 %'].map((head) => ({ head })),
    rows: refitsOf(learned).map((each) => [
      names[each.key],
      inches(learned.shop.model[each.key]),
      inches(each.before.value),
      between(each.before),
      inches(each.after.value),
      between(each.after),
    ]),
  };
}

function strengthText({ key, outcomes, complaints, strength, settled }: Refit): string {
  return `${names[key]}: ${String(outcomes)} outcomes speak of it, ${String(complaints)} of them ${complaintNames[key]}; by the days they had to show, they weigh as much as ${decimals(strength, 1)} that were in use for long. They take away ${String(Math.round(100 * settled))} % of what was unknown.`;
}

/** Whether the refit beats the defaults where it had not seen the outcome, and what follows. */
export function verdictText(refit: Refit, learned: Learned): string {
  const { key, heldOut, recommended, outcomes } = refit;
  if (outcomes === 0) return `${names[key]}: no outcome speaks of it; nothing is learned.`;
  const { defaults, refit: own, better, error } = heldOut;
  const scores = `log score ${decimals(own, 2)} against ${decimals(defaults, 2)} with the defaults; ${better < 0 ? 'worse' : 'better'} by ${decimals(Math.abs(better), 2)}, give or take ${Number.isFinite(error) ? decimals(error, 2) : 'anything'}`;
  const follows = recommended
    ? `Recommended: ${inches(writtenOf(refit, learned))}.`
    : refit.settled < learningNumbers['least-settled'].value
      ? `Not recommended: the outcomes take away less than ${chanceText(learningNumbers['least-settled'].value)} of what was unknown.`
      : 'Not recommended: what it has not seen it does not foretell better than the defaults do by more than the error of that.';
  return `${names[key]}: ${scores}. ${follows}`;
}

function binsTable(bins: readonly Bin[]): Block {
  const count = (share: number, of: number): string => decimals(share * of, 1);
  return {
    kind: 'table',
    columns: [
      { head: 'Outcomes', align: 'right' },
      { head: 'Chance', align: 'right' },
      { head: 'Expected before', align: 'right' },
      { head: 'Expected after', align: 'right' },
      { head: 'Came', align: 'right' },
      { head: '90 %' },
    ],
    rows: bins.map(({ count: of, chance, before, after, came, low, high }) => [
      String(of),
      chanceText(chance),
      count(before, of),
      count(after, of),
      String(Math.round(came * of)),
      `${count(low, of)} to ${count(high, of)}`,
    ]),
  };
}

const { 'days-to-rub': rubDays, 'days-to-slack': slackDays, 'rub-chance': rubShare } = learningNumbers;

function readingTexts({ atFloor, shop }: Learned): string[] {
  return [
    `Required clearance: where ${chanceText(rubShare.value)} of cinches would come to rub, for the average horse; a clearance at tying counts with its spread.`,
    `A cinch that is going to rub has shown it after ${String(rubDays.value)} days on average, a wrong length after ${String(slackDays.value)}: a good one after two days says little.`,
    `At the least clearance (${inches(shop.model['floor-clearance'])}), which stays as it is, the chance of a rub was taken as ${chanceText(atFloor.before)} and is now ${chanceText(atFloor.after)}.${atFloor.after >= 0.5 ? ' If that is more than you will tie, raise floor-clearance in the shop file by hand.' : ''}`,
    'Expected: rubs or complaints to be expected in the days in use, by the numbers before and after; what came should lie within the 90 % about as often.',
    'Rubs are told against the clearance, lengths against the latigo run; a cinch that slipped says nothing about either.',
  ];
}
