/** Asks for an order, one question at a time. */
import { filledOrder } from '../filled.ts';
import { treeAt, type Block } from '../../yaml/tree.ts';
import type { Problem } from '../../yaml/problem.ts';
import { readAnswer, type Answered } from './order.ts';

interface Question {
  /** Any of these answers it. */
  readonly paths: readonly (readonly string[])[];
  /** Makes "round" or "44" understood. */
  readonly before?: string;
  /** The answer is plain text. */
  readonly text?: boolean;
  /** A fault says what this key takes. */
  readonly single?: boolean;
}

/** Most useful first. */
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

export interface Told {
  readonly tree: Block;
  readonly skipped: readonly QuestionId[];
}

export const nothingTold: Told = { tree: { horse: {}, saddle: {} }, skipped: [] };

const ids = Object.keys(questions) as QuestionId[];

/** The first neither answered nor skipped. */
export const nextQuestion = ({ tree, skipped }: Told): QuestionId | undefined =>
  ids.find((id) => !skipped.includes(id) && !isAnswered(id, tree));

const isAnswered = (id: QuestionId, tree: Block): boolean =>
  questions[id].paths.some((path) => treeAt(tree, path) !== undefined);

/** Whether any question was answered. */
export const isTold = ({ tree }: Told): boolean => ids.some((id) => isAnswered(id, tree));

export type Telling =
  | {
      readonly ok: true;
      readonly told: Told;
      /** What we understood, if typed otherwise. */ readonly taken: string;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Empty or "no" skips. May hold more than asked, or correct earlier answers. */
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
  // Prefer the complaint about what was understood.
  const told_ = read.find(({ understood }) => understood) ?? read.at(-1);
  return { ok: false, problems: told_?.problems ?? [] };
}

/** Likeliest first: with the question, alone, as text. */
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
  // A comma would end a cinch.
  const words = id === 'current' || id === 'wants' ? line.replaceAll(/[,;](?=\s)/g, ' ') : line;
  return [
    ...(before === undefined ? [] : [readAnswer(tree, said(`${before} ${words}`))]),
    readAnswer(tree, said(line)),
    ...(single ? [readAnswer(tree, said(line), paths[0])] : []),
  ];
}

/** Needed keys stay open; `stem` is the default number. */
export function formOf({ tree }: Told, { stem, unread = '' }: { stem: string; unread?: string }): string {
  const form = filledOrder({ ...tree, order: tree['order'] ?? stem });
  return unread === '' ? form : `${form}\n## Typed last, not understood: ${unread}\n`;
}
