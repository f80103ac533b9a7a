/** Turns a CSV table of outcomes into a YAML file's tree. */
import { nearestWord } from '../units/nearest.ts';
import { listed } from '../units/phrase.ts';
import { csvRows, type CsvCell } from './csv-rows.ts';
import { didYouMean } from './leaves.ts';
import type { Loaded } from '../yaml/load.ts';
import { pathText, shown, type Fault, type Problem } from '../yaml/problem.ts';
import type { Block, Tree } from '../yaml/tree.ts';

/** With the keys they fill. */
export const outcomeColumns: Readonly<Record<string, readonly string[]>> = {
  order: ['order'],
  height: ['horse', 'height'],
  'heart-girth': ['horse', 'heart-girth'],
  'elbow-room': ['horse', 'elbow-room'],
  barrel: ['horse', 'barrel'],
  kind: ['horse', 'kind'],
  rigging: ['saddle', 'rigging'],
  'set-back': ['saddle', 'rigging', 'set-back'],
  'rigging-style': ['saddle', 'style'],
  'bar-span': ['saddle', 'bar-span'],
  'ring-to-ring': ['saddle', 'ring-to-ring'],
  'ring-drop': ['saddle', 'ring-drop'],
  style: ['tied', 'style'],
  strands: ['tied', 'strands'],
  buckle: ['tied', 'buckle'],
  length: ['tied', 'length'],
  days: ['days'],
  result: ['result'],
  notes: ['notes'],
};
const needed = ['style', 'strands', 'length', 'days', 'result'] as const;

type Table = Pick<Loaded, 'file' | 'tree' | 'problems' | 'settled' | 'locate'>;
type At = (fault: Fault, cell: Pick<CsvCell, 'line' | 'column'>) => Problem;

/** Its tree with places, or all its faults. */
export function csvOutcomes(text: string, file: string): Table {
  const at: At = ({ path, expected, found, hint }, { line, column }) => ({
    file,
    line,
    column,
    path,
    expected,
    ...(found === undefined ? {} : { found: shown(found) }),
    ...(hint === undefined ? {} : { hint }),
  });
  const failed = (problems: Problem[]): Table => ({
    file,
    tree: undefined,
    problems,
    settled: new Set(),
    locate: (fault) => at(fault, { line: 1, column: 1 }),
  });
  const read = csvRows(text);
  if (!read.ok) return failed([at({ path: '', expected: read.expected, found: read.found }, read)]);
  const [head, ...rows] = read.rows;
  const start = { line: 1, column: 1 };
  if (head === undefined) return failed([at({ path: '', expected: 'a table: the file is empty' }, start)]);
  const problems = [...headFaults(head, at), ...rows.flatMap((row) => lengthFaults(row, head.length, at))];
  if (problems.length > 0) return failed(problems);
  const cells = new Map<string, CsvCell>();
  const tree = { outcomes: rows.map((row, i) => treeOf(row, { head, place: i, cells })) };
  return {
    file,
    tree,
    problems: [],
    settled: new Set(),
    locate: (fault, path) => at(fault, cellFor(cells, path) ?? head[0] ?? start),
  };
}

function headFaults(head: readonly CsvCell[], at: At): Problem[] {
  const names = Object.keys(outcomeColumns);
  const [first] = head;
  if (head.length === 1 && first !== undefined && /[;\t]/.test(first.text)) {
    return [at({ path: '', found: first.text, expected: 'columns separated by commas' }, first)];
  }
  const unknown = head.flatMap((cell, i) => {
    const name = cell.text.trim();
    const twice = head.findIndex((other) => other.text.trim() === name) < i;
    if (names.includes(name) && !twice) return [];
    const expected = twice ? 'each column once' : `a column: ${names.join(', ')}`;
    const hint = twice ? undefined : didYouMean(name === 'outcome' ? 'result' : nearestWord(name, names));
    return [at({ path: '', found: cell.text === '' ? 'nothing' : cell.text, expected, hint }, cell)];
  });
  const missing = needed.filter((name) => !head.some((cell) => cell.text.trim() === name));
  if (missing.length === 0 || first === undefined) return unknown;
  const found = head.map(({ text }) => text).join(',');
  const expected = `${missing.length === 1 ? 'the column' : 'the columns'} ${listed(missing)}, too`;
  return [...unknown, at({ path: '', found, expected }, first)];
}

function lengthFaults(row: readonly CsvCell[], count: number, at: At): Problem[] {
  const [first] = row;
  if (row.length === count || first === undefined) return [];
  const found = `${String(row.length)} cells`;
  return [
    at(
      { path: '', found, expected: `${String(count)} cells, as many as the header row` },
      row[count] ?? first,
    ),
  ];
}

interface Row {
  readonly head: readonly CsvCell[];
  readonly place: number;
  readonly cells: Map<string, CsvCell>;
}

/** Without empty cells. */
function treeOf(row: readonly CsvCell[], { head, place, cells }: Row): Tree {
  const outcome: Block = {};
  const base = ['outcomes', place];
  cells.set(pathText(base), row[0] as CsvCell);
  row.forEach((cell, i) => {
    const path = outcomeColumns[head[i]?.text.trim() ?? ''] ?? [];
    const text = cell.text.trim();
    cells.set(pathText([...base, ...path]), cell);
    if (text === '') return;
    let here = outcome;
    for (const step of path.slice(0, -1)) {
      const inner = here[step];
      here = here[step] = typeof inner === 'object' && !Array.isArray(inner) ? inner : {};
    }
    const last = path.at(-1);
    if (last !== undefined) here[last] = text;
  });
  return outcome;
}

function cellFor(cells: ReadonlyMap<string, CsvCell>, path: readonly PropertyKey[]): CsvCell | undefined {
  for (let length = path.length; length > 0; length--) {
    const cell = cells.get(pathText(path.slice(0, length)));
    if (cell !== undefined) return cell;
  }
  return undefined;
}
