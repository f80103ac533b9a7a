/** Reads a YAML or CSV file into outcomes, or all its problems. */
import { acrossKeys } from './plausible.ts';
import { check, checker, inOrder } from './check.ts';
import { csvOutcomes } from './csv-outcomes.ts';
import { load, type Loaded } from '../yaml/load.ts';
import type { Outcome, OutcomeParts } from './outcome-types.ts';
import { outcomesSchema, tiedSchema, type WrittenOutcome } from './outcomes-schema.ts';
import { pathText, type Problem } from '../yaml/problem.ts';
import { textAt } from './shop-tree.ts';
import { treeAt } from '../yaml/tree.ts';

export type OutcomesRead =
  | { readonly ok: true; readonly outcomes: readonly Outcome[] }
  | {
      readonly ok: false;
      readonly problems: readonly Problem[];
      /** For later checks. */
      readonly parts: readonly OutcomeParts[];
    };

const outcomesChecker = checker(outcomesSchema, {
  'outcomes.style': 'style, strands, buckle and length go under tied',
  'outcomes.outcome': 'did you mean "result"?',
  'outcomes.strands': 'style, strands, buckle and length go under tied',
});

/** Never throws. */
export function readOutcomes(text: string, file: string, kind: 'yaml' | 'csv'): OutcomesRead {
  const loaded = kind === 'csv' ? asLoaded(csvOutcomes(text, file)) : load(text, file, 2);
  const [first, second] = loaded;
  if (first === undefined) {
    const expected = 'outcomes: the file is empty';
    return { ok: false, problems: [{ file, line: 1, column: 1, path: '', expected }], parts: [] };
  }
  if (second !== undefined) {
    const fault = { path: '', found: 'a second document', expected: 'one list of outcomes in a file' };
    return { ok: false, problems: [second.locate(fault, [])], parts: [] };
  }
  const { value, problems } = check(first, outcomesChecker);
  const all = [...problems, ...across(first)];
  if (value === undefined || all.length > 0) {
    return { ok: false, problems: inOrder(all), parts: partsOf(first) };
  }
  return { ok: true, outcomes: value.outcomes.map((written, i) => outcomeOf(written, i, first)) };
}

const asLoaded = (table: ReturnType<typeof csvOutcomes>): Loaded[] => [
  { ...table, document: undefined, top: () => undefined, line: 1 },
];

function outcomeOf(written: WrittenOutcome, place: number, loaded: Loaded): Outcome {
  const { order, horse, saddle, tied, days, result } = written;
  const pair = horse === undefined || saddle === undefined ? undefined : { horse, saddle };
  return {
    order,
    pair,
    tied: { style: tied.style, strands: tied.strands, buckle: tied.buckle, length: tied.length },
    days,
    result,
    locate: locateIn(loaded, place),
  };
}

const locateIn =
  (loaded: Loaded, place: number): Outcome['locate'] =>
  (fault, path) => {
    const full = ['outcomes', place, ...path];
    return loaded.locate(
      { ...fault, path: pathText(full), found: fault.found ?? textAt(loaded, full) },
      full,
    );
  };

function partsOf(loaded: Loaded): OutcomeParts[] {
  const list = treeAt(loaded.tree, ['outcomes']);
  if (!Array.isArray(list)) return [];
  return list.map((_, place) => {
    const base = ['outcomes', place];
    return {
      order: textAt(loaded, [...base, 'order']),
      hasPair: ['horse', 'saddle'].some((key) => treeAt(loaded.tree, [...base, key]) !== undefined),
      tied: tiedAt(loaded, place),
      locate: locateIn(loaded, place),
    };
  });
}

function tiedAt(loaded: Loaded, place: number): Outcome['tied'] | undefined {
  const read = tiedSchema.safeParse(treeAt(loaded.tree, ['outcomes', place, 'tied']));
  return read.success ? { ...read.data, buckle: read.data.buckle } : undefined;
}

/** Half a pair, impossible sizes, repeated orders. */
function across(loaded: Loaded): Problem[] {
  const list = treeAt(loaded.tree, ['outcomes']);
  if (!Array.isArray(list)) return [];
  if (list.length === 0) {
    return [
      loaded.locate({ path: 'outcomes', found: 'an empty list', expected: 'at least one outcome' }, [
        'outcomes',
      ]),
    ];
  }
  const seen = new Map<string, number>();
  return list.flatMap((_, i) => [
    ...pairFaults(loaded, i),
    ...twice(loaded, i, seen),
    ...sizeFaults(loaded, i),
  ]);
}

function pairFaults(loaded: Loaded, i: number): Problem[] {
  const base = ['outcomes', i];
  const has = (key: string): boolean =>
    treeAt(loaded.tree, [...base, key]) !== undefined || loaded.settled.has(pathText([...base, key]));
  const [horse, saddle] = [has('horse'), has('saddle')];
  if (horse === saddle && (horse || has('order'))) return [];
  const expected = horse
    ? 'a saddle with the horse'
    : saddle
      ? 'a horse with the saddle'
      : 'an order, or a horse and a saddle: we need to know what the cinch was tied for';
  return [loaded.locate({ path: pathText(base), expected }, base)];
}

/** Same order, spec and days: reported twice. */
function twice(loaded: Loaded, i: number, seen: Map<string, number>): Problem[] {
  const path = ['outcomes', i, 'order'];
  const order = textAt(loaded, path);
  const days = textAt(loaded, ['outcomes', i, 'days']);
  const tied = tiedAt(loaded, i);
  if (order === undefined || days === undefined || tied === undefined) return [];
  const { style, strands, buckle, length } = tied;
  const same = JSON.stringify([order, Number(days), style, strands, buckle, length]);
  const earlier = seen.get(same);
  if (earlier === undefined) {
    seen.set(same, i);
    return [];
  }
  const { line } = loaded.locate({ path: '', expected: '' }, ['outcomes', earlier, 'order']);
  const expected = `each cinch of an order once; the same spec after the same days is already on line ${String(line)}`;
  const hint = 'keep the latest report';
  return [loaded.locate({ path: pathText(path), found: order, expected, hint }, path)];
}

/** The checks of an order apply. */
function sizeFaults(loaded: Loaded, i: number): Problem[] {
  const base = ['outcomes', i];
  const prefix = `${pathText(base)}.`;
  return acrossKeys({
    tree: treeAt(loaded.tree, base),
    settled: new Set(
      [...loaded.settled].flatMap((key) => (key.startsWith(prefix) ? [key.slice(prefix.length)] : [])),
    ),
    locate: (fault, path) => loaded.locate({ ...fault, path: `${prefix}${fault.path}` }, [...base, ...path]),
  });
}
