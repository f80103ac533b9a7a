/** What past cinches tell us: numbers before and after, and whether they predict better. */
import { floorOf, refitsOf, writtenOf } from '../learn/entries.ts';
import type { Learned } from '../learn/learn.ts';
import { isOdd, type Bin } from '../learn/calibration.ts';
import type { Range, Refit } from '../learn/refit.ts';
import { learningNumbers } from '../numbers/learning-numbers.ts';
import { defaultModel } from '../numbers/numbers.ts';
import { plural } from '../units/phrase.ts';
import { decimals } from '../units/print.ts';
import { FLOOR_FOLLOWS } from '../words/about-order.ts';
import { left, right, under, type Block, type Sheet } from '../pages/sheet.ts';
import { chanceText } from '../units/text.ts';

const names: Readonly<Record<Refit['key'], string>> = {
  'required-clearance': 'Required clearance',
  stretch: 'Stretch in new cord',
};

const complaintNames: Readonly<Record<Refit['key'], string>> = {
  'required-clearance': 'rubs',
  stretch: 'too long or too short',
};

/** `day` is when it is written. */
export function learnSheet(learned: Learned, { file, day }: { file: string; day: string }): Sheet {
  const { shop, counts, evidence } = learned;
  const told = counts
    .filter(({ count }) => count > 0)
    .map(({ result, count }) => `${String(count)} ${result}`);
  return {
    title: 'What past cinches tell us',
    shop: shop.name,
    about: [`${plural(evidence.length, 'outcome')} in ${file}: ${told.join(', ')}.`, `${day}.`],
    notice: undefined,
    blocks: [
      ...under('Before and after', [numbersTable(learned)]),
      ...under('How much we learned from', [{ kind: 'list', items: refitsOf(learned).map(strengthText) }]),
      ...under('Tested on cinches it had not seen', [
        { kind: 'list', items: refitsOf(learned).map((each) => verdictText(each, learned)) },
      ]),
      ...under('What does not add up', [{ kind: 'list', items: doubts(learned) }]),
      ...refitsOf(learned).flatMap((each) =>
        under(`Expected and actual: ${complaintNames[each.key]}`, [binsTable(each.bins)]),
      ),
      ...under('How to read this', [{ kind: 'list', items: readingTexts(learned) }]),
    ],
    rules: [],
    cautions: [],
  };
}

const inches = (value: number): string => `${decimals(value, 2)} in`;
const between = ({ low, high }: Range): string => `${decimals(Math.max(0, low), 2)} to ${inches(high)}`;

/** Reports that contradict each other or fit no number. */
function doubts({ contrary, ...learned }: Learned): string[] {
  return [
    ...contrary.map(({ clearance, counts }) => {
      const parts = [...counts].map(([result, count]) => `${String(count)} ${result}`);
      return `Cinches alike, with ${inches(clearance)} of clearance on an average horse, came out differently: ${parts.join(', ')}. They can't all be about the fit: check the reports.`;
    }),
    ...[learned.clearance, learned.give].flatMap(({ key, bins }) =>
      bins
        .filter((bin) => isOdd(bin, bins.length))
        .map(
          ({ count, after, came }) =>
            `${names[key]}: of ${plural(count, 'outcome')} the new numbers, too, expect ${decimals(after * count, 1)} ${complaintNames[key]}; there were ${String(Math.round(came * count))}. Hardly chance: look for another cause, or wrong reports.`,
        ),
    ),
  ];
}

function numbersTable(learned: Learned): Block {
  return {
    kind: 'table',
    columns: left('', 'Now', 'Before', '90%', 'After', '90%'),
    rows: [
      ...refitsOf(learned).map((each) => [
        names[each.key],
        inches(learned.shop.model[each.key]),
        inches(each.before.value),
        between(each.before),
        inches(each.after.value),
        between(each.after),
      ]),
      [
        'Least clearance',
        inches(learned.shop.model['floor-clearance']),
        inches(defaultModel['floor-clearance']),
        '',
        inches(floorOf(learned).value),
        '',
      ],
    ],
  };
}

const complaintsText = (key: Refit['key'], count: number): string =>
  count === 1 && key === 'required-clearance' ? '1 rub' : `${String(count)} ${complaintNames[key]}`;

function strengthText({ key, outcomes, complaints, strength, settled }: Refit): string {
  return `${names[key]}: ${plural(outcomes, 'outcome')}, ${complaintsText(key, complaints)}; by days in use, worth ${decimals(strength, 1)} long ones. We know ${String(Math.round(100 * settled))}% more than before.`;
}

const ONE = 'not recommended: one outcome, and no other to test it on.';
const ONE_KIND =
  'not recommended: all outcomes are of one cinch with one set of measurements, and no other to test it on.';

/** Whether the new number beats the default on unseen outcomes. */
export function verdictText(refit: Refit, learned: Learned): string {
  const { key, heldOut, recommended, outcomes } = refit;
  if (outcomes === 0) return `${names[key]}: no past cinch tells us about it; nothing learned.`;
  const { defaults, refit: own, better, error } = heldOut;
  const scores = `log score ${decimals(own, 2)}, defaults ${decimals(defaults, 2)}; ${better < 0 ? 'worse' : 'better'} by ${decimals(Math.abs(better), 2)}, give or take ${decimals(error, 2)}`;
  if (!Number.isFinite(error)) return `${names[key]}: ${outcomes === 1 ? ONE : ONE_KIND}`;
  const follows = recommended
    ? `Recommended: ${inches(writtenOf(refit, learned))}.`
    : refit.settled < learningNumbers['least-settled'].value
      ? `Not recommended: the outcomes settle less than ${chanceText(learningNumbers['least-settled'].value)} of what was unknown.`
      : refit.misfit && heldOut.better > error
        ? 'Not recommended: the new number does not fit either.'
        : 'Not recommended: it predicts no better than the defaults.';
  return `${names[key]}: ${scores}. ${follows}`;
}

function binsTable(bins: readonly Bin[]): Block {
  const count = (share: number, of: number): string => decimals(share * of, 1);
  return {
    kind: 'table',
    columns: [...right('Outcomes', 'Chance', 'Expected before', 'Expected after', 'Actual'), ...left('90%')],
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

/** The least clearance rules cinches out. */
function floorText(learned: Learned): string {
  const { atFloor, shop } = learned;
  const { value, moves } = floorOf(learned);
  const old = inches(shop.model['floor-clearance']);
  const chances = `the chance of a rub was ${chanceText(atFloor.before)} and is now ${chanceText(atFloor.after)}`;
  const same = old === inches(value);
  const moved = same ? ` and is already at ${old}` : ` from ${old} to ${inches(value)}`;
  const then = same ? '' : `; at ${inches(value)} it is ${chanceText(atFloor.moved)}`;
  const raise =
    atFloor.moved >= 0.5
      ? ' If that is more than you will tie, raise floor-clearance in the shop file by hand.'
      : '';
  if (moves === 'follows')
    return `The least clearance, which rules cinches out, moves with it${moved}: ${FLOOR_FOLLOWS}. At ${old} ${chances}${then}.${raise}`;
  const why = moves === 'set-by-shop' ? 'which the shop set,' : 'which is never lowered below the default,';
  return `At the least clearance (${old}), ${why} ${chances}.${raise}`;
}

function readingTexts(learned: Learned): string[] {
  return [
    `Required clearance: where ${chanceText(rubShare.value)} of cinches rub in time, on an average horse.`,
    `A rub shows after ${String(rubDays.value)} days on average, a wrong length after ${String(slackDays.value)}; a good report after two days says little.`,
    floorText(learned),
    'Expected: rubs, or wrong lengths, in the days in use, by the numbers before and after. In 9 lines out of 10 the expected number should fall within the 90% next to the actual one.',
    'Tested: each outcome is predicted from the others; alike cinches are left out together.',
    'Rubs tell us about clearance, wrong lengths about the stretch; a cinch that slipped tells us neither.',
  ];
}
