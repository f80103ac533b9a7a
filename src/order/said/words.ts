/** The words clerks say, each with its key. */
import { pathText, type Fault } from '../../yaml/problem.ts';
import { allKeys, type PlacedKey } from '../key.ts';
import { oneOfThese } from '../leaves.ts';
import { sensed } from '../near-in-sense.ts';
import { orderKeys } from '../order-schema.ts';

/** As a file would have it. */
export interface Part {
  readonly path: readonly string[];
  readonly text: string;
}

export type Reading = { readonly part: Part } | { readonly fault: Fault };

type WordKey = PlacedKey & Required<Pick<PlacedKey, 'labels' | 'words'>>;

const isWordKey = (key: PlacedKey): key is WordKey => key.words !== undefined && key.labels !== undefined;

export const wordKeys: readonly WordKey[] = allKeys(orderKeys).filter(isWordKey);

/** Vague, with what to ask back. */
const rollsOrSlides = 'rolls to a side, or slides back? say "rolls" or "slides back"';
const elbowOrBuckle = 'at the elbow, or under the buckle? say "galled" or "buckle rub"';
const questions: Readonly<Record<string, string>> = {
  slips: rollsOrSlides,
  slides: rollsOrSlides,
  sore: elbowOrBuckle,
  raw: elbowOrBuckle,
  'rubbed raw': elbowOrBuckle,
  bleeding: elbowOrBuckle,
  rub: elbowOrBuckle,
  roper: 'high or low? say "wants high flare" or "wants low flare"',
  not: 'say only the troubles it has',
  no: 'say only the troubles it has',
};

/** A key's own word beats a synonym. */
export function readWord(phrase: string): Reading | undefined {
  const found = wordKeys.flatMap((key) => {
    const answer = answerOf(key, phrase);
    return answer === undefined ? [] : [{ key, ...answer }];
  });
  const own = found.filter(({ isOwn }) => isOwn);
  const best = own.length > 0 ? own : found;
  const [first] = best;
  if (first === undefined)
    return Object.hasOwn(questions, phrase)
      ? { fault: { path: '', expected: severalMeanings, hint: questions[phrase] } }
      : undefined;
  const { path } = first.key;
  const [text = '', ...others] = first.words;
  if (best.length === 1 && others.length === 0) return { part: { path, text } };
  const meant =
    best.length === 1 ? first.words : best.map(({ key: { labels } }) => `${phrase} ${labels[0] ?? ''}`);
  const hint = Object.hasOwn(questions, phrase) ? questions[phrase] : oneOfThese(meant);
  return { fault: { path: best.length === 1 ? pathText(path) : '', expected: severalMeanings, hint } };
}

const severalMeanings = 'words that mean one thing';

interface Answer {
  readonly isOwn: boolean;
  readonly words: readonly string[];
}

function answerOf(
  { labels, words, sense = {}, alone, labeled }: WordKey,
  phrase: string,
): Answer | undefined {
  const beside = labels.flatMap((label) => withoutLabel(phrase, label));
  const forms = [phrase, ...beside];
  const written = forms.map((form) => form.replaceAll(/[\s_]/g, '-'));
  const own =
    words.find((word) => written.includes(word.replaceAll(' ', '-'))) ??
    forms.find((form) => alone?.test(form) === true) ??
    beside.find((form) => labeled?.test(form) === true);
  if (own !== undefined) return { isOwn: true, words: [own] };
  const meant = forms.map((form) => sensed(form, sense)).find((each) => each.length > 0);
  return meant === undefined ? undefined : { isOwn: false, words: meant };
}

/** "low withers" and "withers low" are "low". */
function withoutLabel(phrase: string, label: string): string[] {
  if (phrase.endsWith(` ${label}`)) return [phrase.slice(0, -label.length - 1)];
  return phrase.startsWith(`${label} `) ? [phrase.slice(label.length + 1).replace(/^(?:of|is) /, '')] : [];
}
