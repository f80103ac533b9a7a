/** Writes as people and programs do: blocks, braces, JSON, quotes, remarks, aliases, CRLF. */
import type { Random } from '../../../src/math/random.ts';
import { happens, pick, whole } from '../../support/draw.ts';
import type { Said } from './tree.ts';

interface Pen {
  readonly chance: Random;
  readonly quote: number;
  readonly remark: number;
  readonly step: string;
  /** Texts of anchored leaves already written. */
  readonly anchors: Map<string, string>;
  readonly alias: number;
}

const plain = /^[A-Za-z0-9][\w./ -]*$/;

function leaf(text: string, pen: Pen): string {
  const { chance, quote, anchors, alias } = pen;
  const known = anchors.get(text);
  if (known !== undefined && happens(chance, alias)) return `*${known}`;
  const written = plain.test(text) && !happens(chance, quote) ? text : quoted(text, chance);
  if (known !== undefined || !happens(chance, alias)) return written;
  const name = `a${String(anchors.size)}`;
  anchors.set(text, name);
  return `&${name} ${written}`;
}

const quoted = (text: string, chance: Random): string =>
  happens(chance, 0.4) && !/[\n\r]/.test(text) ? `'${text.replaceAll("'", "''")}'` : JSON.stringify(text);

const remarkAt = ({ chance, remark }: Pen): string =>
  happens(chance, remark) ? pick(chance, [' # as told', '  #', ' # "{[', ' #\u200f', ' ']) : '';

function block(said: Said, pen: Pen, indent: string): string {
  const inner = indent + pen.step;
  if (Array.isArray(said) && said.length > 0)
    return said.map((each) => `\n${indent}-${value(each, pen, inner)}`).join('');
  const entries = typeof said === 'string' ? [] : Object.entries(said);
  return entries
    .map(
      ([key, each]) => `\n${indent}${plain.test(key) ? key : JSON.stringify(key)}:${value(each, pen, inner)}`,
    )
    .join('');
}

function value(said: Said, pen: Pen, indent: string): string {
  if (typeof said === 'string') return ` ${leaf(said, pen)}${remarkAt(pen)}`;
  const empty = Object.keys(said).length === 0;
  if (empty || happens(pen.chance, 0.3)) return ` ${flow(said, pen)}${remarkAt(pen)}`;
  return remarkAt(pen) + block(said, pen, indent);
}

function flow(said: Said, pen: Pen): string {
  if (typeof said === 'string') return leaf(said, pen);
  if (Array.isArray(said)) return `[${said.map((each) => flow(each, pen)).join(', ')}]`;
  const entries = Object.entries(said).map(
    ([key, each]) => `${plain.test(key) ? key : JSON.stringify(key)}: ${flow(each, pen)}`,
  );
  return `{ ${entries.join(', ')} }`;
}

/** Numbers and booleans bare, as programs write. */
function json(said: Said, chance: Random): string {
  const typed = happens(chance, 0.5);
  return JSON.stringify(
    said,
    (_, each: unknown) => {
      if (!typed || typeof each !== 'string') return each;
      if (/^-?\d{1,9}(?:\.\d{1,6})?$/.test(each)) return Number(each);
      return each === 'true' ? true : each === '' ? null : each;
    },
    happens(chance, 0.3) ? 2 : undefined,
  );
}

function document(said: Said, chance: Random): string {
  if (happens(chance, 0.25)) return `${json(said, chance)}\n`;
  const pen: Pen = {
    chance,
    quote: pick(chance, [0, 0.2, 1]),
    remark: pick(chance, [0, 0, 0.2]),
    step: ' '.repeat(pick(chance, [2, 2, 2, 1, 4, 8])),
    anchors: new Map(),
    alias: pick(chance, [0, 0, 0, 0.15]),
  };
  if (typeof said === 'string' || happens(chance, 0.15)) return `${flow(said, pen)}\n`;
  return `${block(said, pen, '').slice(1)}\n`;
}

/** Documents split by marks, or one a line. */
export function written(documents: readonly Said[], chance: Random): string {
  if (documents.length > 1 && happens(chance, 0.4)) {
    return documents.map((said) => `${JSON.stringify(said)}\n`).join(pick(chance, ['', '', '\n']));
  }
  const parts = documents.map((said) => document(said, chance));
  const text = parts.join(pick(chance, ['---\n', '---\n', '...\n---\n', '--- # next\n', '']));
  const kind = whole(chance, 0, 19);
  if (kind === 0) return text.replaceAll('\n', '\r\n');
  if (kind === 1) return `\ufeff${text}`;
  return kind === 2 ? text.trimEnd() : text;
}
