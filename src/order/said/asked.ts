/** An order that is asked for, one question after the other: which comes next, and what an answer does. */
import { filledOrder } from '../filled.ts';
import { treeAt, type Block } from '../../yaml/tree.ts';
import type { Problem } from '../../yaml/problem.ts';
import { readAnswer, type Answered } from './order.ts';

interface Question {
  /** Keys of the order; any one of them answers it. */
  readonly paths: readonly (readonly string[])[];
  /** Said before the answer, so that "round" or "44" is known for what it is. */
  readonly before?: string;
  /** The answer is a text for the one key, not words of an order. */
  readonly text?: boolean;
  /** A wrong answer is told by what its one key takes. */
  readonly single?: boolean;
}

/** In the order in which answers matter at a counter. */
const questions = {
  order: { paths: [['order']], text: true },
  customer: { paths: [['customer', 'name']], text: true },
  name: { paths: [['horse', 'name']], text: true },
  height: {
    paths: [
      ['horse', 'height'],
      ['horse', 'heart-girth'],
    ],
    before: 'height',
  },
  girth: { paths: [['horse', 'heart-girth']], before: 'girth', single: true },
  rigging: { paths: [['saddle', 'rigging']] },
  barrel: { paths: [['horse', 'barrel']], before: 'barrel', single: true },
  withers: { paths: [['horse', 'withers']], before: 'withers', single: true },
  trouble: { paths: [['horse', 'trouble']] },
  room: { paths: [['horse', 'elbow-room']], before: 'room', single: true },
  rings: { paths: [['saddle', 'ring-to-ring']], before: 'ring to ring', single: true },
  use: { paths: [['use']], before: 'use', single: true },
  current: { paths: [['current']], before: 'now' },
  wants: { paths: [['wants']], before: 'wants' },
  due: { paths: [['due']], text: true },
  notes: { paths: [['notes']], text: true },
} as const satisfies Record<string, Question>;

export type QuestionId = keyof typeof questions;

/** What was said so far, and what nobody wanted to answer. */
export interface Told {
  readonly tree: Block;
  readonly skipped: readonly QuestionId[];
}

export const nothingTold: Told = { tree: { horse: {}, saddle: {} }, skipped: [] };

const ids = Object.keys(questions) as QuestionId[];

/** The first question that is neither answered nor skipped. */
export const nextQuestion = ({ tree, skipped }: Told): QuestionId | undefined =>
  ids.find((id) => !skipped.includes(id) && !isAnswered(id, tree));

const isAnswered = (id: QuestionId, tree: Block): boolean =>
  questions[id].paths.some((path) => treeAt(tree, path) !== undefined);

/** Whether anything was said. */
export const isTold = ({ tree }: Told): boolean => ids.some((id) => isAnswered(id, tree));

/** What is told after an answer, or why it cannot be taken. */
export type Telling =
  | {
      readonly ok: true;
      readonly told: Told;
      /** Where it was read as more than was typed. */ readonly taken: string;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Takes an answer; an empty one, or "no", skips. An answer may say more than was asked, and may put an earlier one right. */
export function answer(
  told: Told,
  id: QuestionId,
  typed: { line: string; buckles: readonly string[] },
): Telling {
  const { tree, skipped } = told;
  const line = typed.line.trim();
  const { text = false }: Question = questions[id];
  if (line === '' || (!text && /^(?:no|none|nothing)$/i.test(line)))
    return { ok: true, told: { tree, skipped: [...skipped, id] }, taken: '' };
  const read = readings(tree, id, { ...typed, line });
  const good = read.find(({ problems }) => problems.length === 0);
  if (good !== undefined) {
    const plain = (words: string): string => words.toLowerCase().replaceAll('-', ' ');
    const taken = good.taken.filter((each) => !plain(line).includes(plain(each)));
    return { ok: true, told: { tree: good.tree, skipped }, taken: taken.join(', ') };
  }
  // What was understood and cannot be is the better thing to tell.
  const told_ = read.find(({ understood }) => understood) ?? read.at(-1);
  return { ok: false, problems: told_?.problems ?? [] };
}

/** The ways to read an answer, likeliest first: as the answer to the question, by itself, as text for the key. */
function readings(
  tree: Block,
  id: QuestionId,
  { line, buckles }: { line: string; buckles: readonly string[] },
): Answered[] {
  const { paths, before, text, single }: Question = questions[id];
  const said = (words: string): Parameters<typeof readAnswer>[1] => ({
    line: words,
    file: 'answer',
    buckles,
  });
  if (text) return [readAnswer(tree, said(line), paths[0])];
  // A cinch is told in one breath: a comma would end it.
  const words = id === 'current' || id === 'wants' ? line.replaceAll(/[,;](?=\s)/g, ' ') : line;
  return [
    ...(before === undefined ? [] : [readAnswer(tree, said(`${before} ${words}`))]),
    readAnswer(tree, said(line)),
    ...(single ? [readAnswer(tree, said(line), paths[0])] : []),
  ];
}

/** What was said as an order file; what is needed stands open where nobody said it. A number that was not said is the file's name. */
export function formOf({ tree }: Told, { stem, unread = '' }: { stem: string; unread?: string }): string {
  const form = filledOrder({ ...tree, order: tree['order'] ?? stem });
  return unread === '' ? form : `${form}\n## Typed last, not understood: ${unread}\n`;
}
