/** Puts numbers into a shop file and keeps all else, comments too. */
import { isMap, isScalar, parseDocument, type Pair, type YAMLMap } from 'yaml';

/** In a top-level block. */
export interface Entry {
  readonly block: string;
  readonly key: string;
  readonly value: string;
}

/** Read the result to find bad edits. */
export const withEntries = (text: string, entries: readonly Entry[]): string =>
  entries.reduce((edited, entry) => withEntry(edited, entry), text);

interface Placed {
  readonly range?: readonly [start: number, end: number, all: number] | null;
}

function withEntry(text: string, { block, key, value }: Entry): string {
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const { contents } = parseDocument(text, { logLevel: 'silent', prettyErrors: false });
  const held = isMap(contents) ? pairOf(contents, block)?.value : undefined;
  if (!isMap(held)) return appended(text, `${block}:${end}  ${key}: ${value}${end}`, end);
  const old = rangeOf(pairOf(held, key)?.value);
  if (old !== undefined) return text.slice(0, old[0]) + value + text.slice(old[1]);
  return held.flow === true
    ? afterBrace(text, held, `${key}: ${value}`)
    : beforeFirst(text, held, `${key}: ${value}${end}`);
}

const rangeOf = (node: unknown): NonNullable<Placed['range']> | undefined =>
  (node as Placed | undefined)?.range ?? undefined;

function afterBrace(text: string, held: YAMLMap, entry: string): string {
  const at = (rangeOf(held)?.[0] ?? 0) + 1;
  return `${text.slice(0, at)} ${entry}${held.items.length > 0 ? ',' : ' '}${text.slice(at)}`;
}

/** Comments above the first key stay above. */
function beforeFirst(text: string, held: YAMLMap, line: string): string {
  const at = rangeOf(held.items[0]?.key)?.[0] ?? 0;
  const indent = text.slice(text.lastIndexOf('\n', at - 1) + 1, at);
  return `${text.slice(0, at)}${line}${indent}${text.slice(at)}`;
}

function pairOf(map: YAMLMap, key: string): Pair | undefined {
  return map.items.find((pair) => isScalar(pair.key) && pair.key.value === key);
}

const appended = (text: string, block: string, end: string): string =>
  `${text}${text === '' || text.endsWith('\n') ? '' : end}${text === '' ? '' : end}${block}`;
