/** Reads YAML text into plain trees and locates its errors. */
import { Composer, CST, Parser, isMap, isScalar, type Document } from 'yaml';
import type { Chunk } from './documents.ts';
import { edgeAbove, isTabbed, layoutFault, rowsOf, type Row } from './layout.ts';
import { Lines } from './lines.ts';
import { pathText, shown, type Fault, type Problem } from './problem.ts';
import { deepest, mostLetters, refused, tooDeep } from './refused.ts';
import { sourceOf, startOf, type Source } from './source.ts';
import { strangeSign, strangeWords, syntaxWords } from './syntax.ts';
import type { Spot, Tree } from './tree.ts';
import { gaveUp, newWalk, walkNode, type Placed } from './walk.ts';

/** More than anyone reads. */
export const mostProblems = 100;
/** Several complaints may share a line. */
const mostTrips = 300;

const unclosed = 'an end to the quote or bracket that opens here';

interface Broken {
  /** Too deep for the stack. */
  deep: boolean;
  fault: Placed;
}

export interface Loaded {
  file: string;
  /** undefined for a single document. */
  document: number | undefined;
  /** undefined when not YAML. */
  tree: Tree | undefined;
  /** A top-level value, even from a broken document. */
  top: (key: string) => string | undefined;
  line: number;
  problems: Problem[];
  settled: ReadonlySet<string>;
  /** A missing path gets its nearest parent's place. */
  locate: (fault: Fault, path: readonly PropertyKey[], side?: keyof Spot) => Problem;
}

/** Reads up to `most` documents; none from an empty file. Never throws. */
export function load(raw: string, file: string, most = Infinity): Loaded[] {
  const source = sourceOf(raw, file);
  return source.chunks.slice(0, most).map((chunk) => loadChunk(source, chunk));
}

/** Never throws. */
export function loadChunk(source: Source, chunk: Chunk): Loaded {
  const document = source.chunks.length > 1 ? chunk.number : undefined;
  const parsed = parse(chunk.text);
  const walk = newWalk();
  const usable = parsed.doc !== undefined && parsed.faults.length === 0;
  const tree = usable ? walkNode(walk, parsed.doc?.contents, []) : undefined;
  const start = startOf(chunk);
  const at = (offset: number) => source.lines.at(offset);
  const problem = (fault: Fault, offset: number): Problem => ({
    file: source.file,
    ...(document === undefined ? {} : { document }),
    ...at(offset),
    path: fault.path,
    ...(fault.found === undefined ? {} : { found: fault.found }),
    expected: fault.expected,
    ...(fault.hint === undefined ? {} : { hint: fault.hint }),
  });
  const place = (fault: Placed): Problem => {
    const offset = chunk.base + fault.offset;
    const hint =
      fault.earlier === undefined
        ? fault.hint
        : `it is already on line ${at(chunk.base + fault.earlier).line}`;
    return problem({ ...fault, hint, found: fault.found ?? textFound(source, offset) }, offset);
  };
  const problems = [...parsed.faults, ...walk.faults].map(place);
  return {
    file: source.file,
    document,
    tree: gaveUp(walk) ? undefined : tree,
    top: (key) => (usable ? topText(parsed.doc, key) : writtenTop(chunk.text, key)),
    line: at(start).line,
    problems: chunk.text.length > mostLetters ? problems : withStrangeSigns(problems, chunk.text, place),
    settled: walk.settled,
    locate: (fault, path, side = 'value') => {
      const spot = walk.spots.get(pathText(path));
      if (spot !== undefined) return problem(fault, chunk.base + spot[side]);
      const parent = nearestSpot(walk.spots, path);
      return problem(fault, parent === undefined ? start : chunk.base + parent.key);
    },
  };
}

function textFound({ lines }: Source, offset: number): string | undefined {
  const text = lines.textAt(offset);
  return text === '' ? undefined : shown(text);
}

function parse(text: string): { doc: Document | undefined; faults: Placed[] } {
  const fault = refused(text);
  if (fault !== undefined) return { doc: undefined, faults: [fault] };
  try {
    const tokens = [...new Parser().parse(text)];
    const broken = tokens.map(brokenToken).find((fault) => fault !== undefined);
    if (broken?.deep === true) return { doc: undefined, faults: [broken.fault] };
    // Failsafe: every scalar stays text. We report doubled keys ourselves.
    const composer = new Composer({
      schema: 'failsafe',
      uniqueKeys: false,
      prettyErrors: false,
      logLevel: 'silent',
    });
    const [doc] = composer.compose(tokens, true, text.length);
    return { doc, faults: broken === undefined ? syntaxFaults(doc, text) : [broken.fault] };
  } catch {
    return { doc: undefined, faults: [{ path: '', expected: 'text that can be read as YAML', offset: 0 }] };
  }
}

/** One fault per line: the package often complains twice. */
function syntaxFaults(doc: Document | undefined, text: string): Placed[] {
  const lines = new Lines(text);
  const rows = rowsOf(text);
  const lineOf = (offset: number): number => lines.at(offset).line - 1;
  const faults = new Map<number, Placed>();
  const wrong = new Set<number>();
  for (const { code, pos } of (doc?.errors ?? []).slice(0, mostTrips)) {
    const row = lineOf(pos[0]);
    const laid = layoutFault(rows, { code, row });
    // After one wrong line, its block is misjudged.
    const edge = edgeAbove(rows, row);
    if (laid === undefined && code === 'BAD_INDENT' && wrong.has(edge)) continue;
    if (laid !== undefined) wrong.add(edge);
    const fault = laid ?? { path: '', ...syntaxWords(code), offset: pos[0] };
    const line = lineOf(fault.offset);
    if (!faults.has(line)) faults.set(line, fault);
  }
  return withoutEchoes(faults, rows).slice(0, mostProblems);
}

/** After a tab the package misreads the block: report only tabs. */
function withoutEchoes(faults: ReadonlyMap<number, Placed>, rows: readonly Row[]): Placed[] {
  const isTab = (line: number): boolean => rows[line] !== undefined && isTabbed(rows[line]);
  const blocks = new Set([...faults.keys()].filter(isTab).map((line) => edgeAbove(rows, line)));
  return [...faults]
    .filter(([line]) => isTab(line) || !blocks.has(edgeAbove(rows, line)))
    .map(([, fault]) => fault);
}

/** The first token too deep or unclosed, found without recursion. */
function brokenToken(root: CST.Token): Broken | undefined {
  const stack: { token: CST.Token; depth: number }[] = [{ token: root, depth: 0 }];
  for (let next = stack.pop(); next !== undefined; next = stack.pop()) {
    const { token, depth } = next;
    if (depth > deepest) return { deep: true, fault: { path: '', expected: tooDeep, offset: token.offset } };
    if (isUnclosed(token))
      return { deep: false, fault: { path: '', expected: unclosed, offset: token.offset } };
    if (token.type === 'document' && token.value !== undefined) stack.push({ token: token.value, depth });
    if (!CST.isCollection(token)) continue;
    // Reversed, so the first fault pops first.
    for (const { key, value } of token.items.toReversed()) {
      if (value) stack.push({ token: value, depth: depth + 1 });
      if (key) stack.push({ token: key, depth: depth + 1 });
    }
  }
  return undefined;
}

/** The package reports the text's end; people need the start. */
function isUnclosed(token: CST.Token): boolean {
  if (token.type === 'flow-collection') return token.end.length === 0;
  if (token.type === 'double-quoted-scalar') return token.source.length < 2 || !token.source.endsWith('"');
  return token.type === 'single-quoted-scalar' && (token.source.length < 2 || !token.source.endsWith("'"));
}

/** Strange characters in comments and keys. */
function withStrangeSigns(problems: Problem[], text: string, place: (fault: Placed) => Problem): Problem[] {
  const strange: Problem[] = [];
  let next = 0;
  for (const { 0: sign, index } of text.matchAll(new RegExp(strangeSign, 'gu'))) {
    if (strange.length >= mostProblems) break;
    if (index < next) continue;
    strange.push(place({ path: '', ...strangeWords(sign), offset: index }));
    const end = text.indexOf('\n', index);
    next = end === -1 ? text.length : end;
  }
  const lines = new Set(strange.map(({ line }) => line));
  // The package's words for such a line confuse.
  const kept = problems.filter((problem) => problem.path !== '' || !lines.has(problem.line));
  const told = new Set(kept.map((problem) => problem.line));
  return [...kept, ...strange.filter((problem) => !told.has(problem.line))];
}

function nearestSpot(spots: ReadonlyMap<string, Spot>, path: readonly PropertyKey[]): Spot | undefined {
  for (let length = path.length - 1; length > 0; length -= 1) {
    const spot = spots.get(pathText(path.slice(0, length)));
    if (spot !== undefined) return spot;
  }
  return undefined;
}

function topText(doc: Document | undefined, key: string): string | undefined {
  if (!isMap(doc?.contents)) return undefined;
  const pair = doc.contents.items.find((item) => isScalar(item.key) && item.key.value === key);
  const value = isScalar(pair?.value) ? pair.value.value : undefined;
  return typeof value === 'string' && value.trim() !== '' ? shown(value.trim()) : undefined;
}

/** From broken YAML: the line with the key. */
function writtenTop(text: string, key: string): string | undefined {
  const value = new RegExp(`^${key}:[ \\t]+["']?([^"'#\\r\\n]*)`, 'm').exec(text)?.[1]?.trim();
  return value === undefined || value === '' ? undefined : shown(value);
}
