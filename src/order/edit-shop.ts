/** Puts numbers into the text of a shop file and leaves all else as it was written, comments too. */
import { isMap, isScalar, parseDocument, type Pair, type YAMLMap } from 'yaml';

/** A value as it is to stand there, under a key of a block at the top. */
export interface Entry {
  readonly block: string;
  readonly key: string;
  readonly value: string;
}

/** The text with the entries in it. The caller reads it again: what cannot be edited so comes out faulty, never silently wrong. */
export const withEntries = (text: string, entries: readonly Entry[]): string =>
  entries.reduce((edited, entry) => withEntry(edited, entry), text);

function withEntry(text: string, { block, key, value }: Entry): string {
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const { contents } = parseDocument(text, { logLevel: 'silent', prettyErrors: false });
  const held = isMap(contents) ? pairOf(contents, block)?.value : undefined;
  if (!isMap(held)) return appended(text, `${block}:${end}  ${key}: ${value}${end}`, end);
  const old = pairOf(held, key)?.value as { range?: [number, number, number] } | undefined;
  if (old?.range !== undefined) return text.slice(0, old.range[0]) + value + text.slice(old.range[1]);
  if (held.flow === true) {
    const at = (held.range?.[0] ?? 0) + 1;
    const comma = held.items.length > 0 ? ',' : ' ';
    return `${text.slice(0, at)} ${key}: ${value}${comma}${text.slice(at)}`;
  }
  const first = held.items[0]?.key as { range?: [number, number, number] } | undefined;
  const at = first?.range?.[0] ?? 0;
  const indent = text.slice(text.lastIndexOf('\n', at - 1) + 1, at);
  return `${text.slice(0, at)}${key}: ${value}${end}${indent}${text.slice(at)}`;
}

function pairOf(map: YAMLMap, key: string): Pair | undefined {
  return map.items.find((pair) => isScalar(pair.key) && pair.key.value === key);
}

const appended = (text: string, block: string, end: string): string =>
  `${text}${text === '' || text.endsWith('\n') ? '' : end}${text === '' ? '' : end}${block}`;
