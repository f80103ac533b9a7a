/** Explains YAML errors by layout: tabs, indents, a missing space after a colon. */
import type { ErrorCode } from 'yaml';
import type { Fault } from './problem.ts';

/** `start` is its offset. */
export interface Row {
  text: string;
  start: number;
}

/** `row` counts from 0. */
interface Trip {
  code: ErrorCode;
  row: number;
}

type Laid = Fault & { offset: number };

const tabbed = /^ *\t[ \t]*[^\s#]/;
const counts = ['no space', 'one space', 'two spaces', 'three spaces', 'four spaces'];

/** The lines of a text. */
export function rowsOf(text: string): Row[] {
  let start = 0;
  return text.split('\n').map((line) => {
    const row = { text: line, start };
    start += line.length + 1;
    return row;
  });
}

/** undefined when the layout is right. */
export function layoutFault(rows: readonly Row[], { code, row }: Trip): Laid | undefined {
  const here = rows[row];
  const next = rows.slice(row + 1).find(isContent);
  if (here === undefined) return undefined;
  if (isTabbed(here)) return tabFault(here);
  if (code === 'MISSING_CHAR') return noSpace(here);
  if (code === 'BLOCK_AS_IMPLICIT_KEY' || code === 'MULTILINE_IMPLICIT_KEY') {
    if (next !== undefined && isTabbed(next)) return tabFault(next);
    return noSpace(here) ?? (next === undefined ? undefined : tooFarIn(here, next));
  }
  return code === 'BAD_INDENT' ? tooFarOut(rows.slice(0, row).filter(isContent), here) : undefined;
}

/** YAML does not count tabs as space. */
export function isTabbed({ text }: Row): boolean {
  return tabbed.test(text);
}

/** The unindented line above: after an error its block is unreliable. */
export function edgeAbove(rows: readonly Row[], row: number): number {
  return rows.slice(0, row + 1).findLastIndex(({ text }) => /^[^\s#]/.test(text));
}

/** For "key:value" without a space. */
export function noSpaceHint(text: string): string | undefined {
  const key = /^(?:- +)?([A-Za-z][\w-]*):(?![\s/]|$)/.exec(text)?.[1];
  return key === undefined ? undefined : `put a space after "${key}:"`;
}

function noSpace(row: Row): Laid | undefined {
  const hint = noSpaceHint(row.text.trim());
  return hint === undefined ? undefined : { ...at(row), expected: 'a space after the colon', hint };
}

function tabFault(row: Row): Laid {
  const hint = 'there is a tab: replace it with spaces';
  return { path: '', offset: row.start, expected: 'spaces at the start of the line', hint };
}

function tooFarIn(above: Row, row: Row): Laid | undefined {
  const by = indent(row) - indent(above);
  if (by <= 0 || !/:\s+[^\s#]/.test(above.text)) return undefined;
  const hint = `this line is ${spaces(by)} too far right`;
  const text = by === 1 ? '' : '; if it is part of a text, put the text in quotes';
  return { ...at(row), expected: columnOf(indent(above)), hint: hint + text };
}

/** A line belongs to the nearer column. */
function tooFarOut(above: readonly Row[], row: Row): Laid | undefined {
  const open = openColumns(above);
  const own = indent(row);
  const inner = open.find((column) => column > own);
  const outer = open.findLast((column) => column < own);
  if (inner === undefined || open.includes(own) || /^[\]}]/.test(row.text.trim())) return undefined;
  const [out, into] = [inner - own, outer === undefined ? Infinity : own - outer];
  // Half-way, a line that opens a block belongs outside.
  const isOuter = into < out || (into === out && /:\s*(?:#.*)?$/.test(row.text));
  const hint = isOuter
    ? `this line is ${spaces(into)} too far right`
    : `this line is ${spaces(out)} too far left`;
  return { ...at(row), expected: columnOf(isOuter ? own - into : inner), hint };
}

/** Outermost first. */
function openColumns(above: readonly Row[]): number[] {
  const open: number[] = [];
  for (const row of above.toReversed()) {
    const [least = Infinity] = open;
    if (indent(row) < least) open.unshift(indent(row));
  }
  return open;
}

const isContent = ({ text }: Row): boolean => /^\s*[^\s#]/.test(text) && !text.startsWith('---');
const indent = ({ text }: Row): number => text.length - text.trimStart().length;
const at = (row: Row): { path: string; offset: number } => ({ path: '', offset: row.start + indent(row) });
const spaces = (by: number): string => counts[by] ?? `${String(by)} spaces`;
const columnOf = (column: number): string =>
  `it to start at column ${String(column + 1)}, like the lines of its block`;
