/** What paper commands share: orders, spec, day, output. */
import { Option, type Command } from 'commander';
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Shop, Style } from '../order/types.ts';
import { styleIds as styles } from '../cinch/styles.ts';
import type { Taken } from '../work/taken.ts';
import type { Paper } from '../pages/pdf/document.ts';
import type { Sheet } from '../pages/sheet.ts';
import type { PaperResult } from '../words/types.ts';
import { askedStrands } from './asked.ts';
import { guardInputs } from './emit.ts';
import { CliFault, exit, printable, worse, type ExitCode } from './fault.ts';
import { failed, type Entry } from './input.ts';
import type { CliIo } from './io.ts';
import {
  dateOption,
  outOption,
  formatsOption,
  paperOption,
  shopOption,
  unitsOption,
  whole,
  word,
} from './options.ts';
import { guardPdf } from './pdf.ts';
import { printViews, sheetFormats, type Format, type Views } from './print.ts';
import { tellFaults } from './problems.ts';
import type { Session } from './program.ts';
import { addSayOptions, inputsOf, type SayOptions } from './said.ts';
import { colorFor } from './screen.ts';
import { shopOf } from './shop.ts';

export interface PaperOptions extends SayOptions {
  spec?: number;
  style?: Style;
  strands?: number;
  date?: string;
  format: Format;
  paper?: Paper;
  units: 'in' | 'cm';
  shop?: string;
  out?: string;
  backlog?: readonly string[];
  itemized?: true;
  invoice?: string;
  paid?: string;
  care?: true;
  color: boolean;
}
export interface Source {
  readonly options: PaperOptions;
  readonly io: CliIo;
  readonly shop: Shop;
  readonly day: string;
  readonly count: number;
}

export interface Maker<P> {
  readonly paper: (taken: Taken, advice: Advice) => P;
  /** From reading a backlog. */
  readonly code?: ExitCode;
}

export interface PaperKind<P> {
  readonly name: string;
  readonly summary: string;
  readonly description: string;
  readonly help: string;
  readonly extra?: readonly Option[];
  readonly make: (source: Source) => Promise<Maker<P>>;
  /** Told to the shop, not on the paper. */
  readonly lacking?: (paper: P) => readonly string[];
  readonly assumed?: (paper: P) => readonly string[];
  readonly sheet: (options: PaperOptions) => Promise<(paper: P) => Sheet>;
  readonly json?: () => Promise<Printer<P>>;
  readonly csv?: () => Promise<Printer<P>>;
  /** For the customer. */
  readonly text?: (options: PaperOptions) => Promise<Printer<P>>;
}

type Printer<P> = (results: readonly PaperResult<P>[]) => string;

const formatsOf = <P>({ json, csv, text }: PaperKind<P>): Format[] => [
  ...sheetFormats,
  ...(text === undefined ? [] : (['text'] as const)),
  ...(json === undefined ? [] : (['json'] as const)),
  ...(csv === undefined ? [] : (['csv'] as const)),
];

/** Makes a command of one kind. */
export function addPaper<P>(kind: PaperKind<P>, program: Command, session: Session): void {
  const command = program
    .command(kind.name)
    .summary(kind.summary)
    .description(kind.description)
    .argument('[files...]', 'order files');
  addSayOptions(command)
    .addOption(new Option('--spec <rank>', 'use this rank (default 1)').argParser(whole('--spec', 1, 999)))
    .addOption(new Option('--style <name>', styles.join(', ')).argParser(word('--style', styles)))
    .addOption(new Option('--strands <n>', 'use this many strands').argParser(askedStrands))
    .addOption(dateOption())
    .addOption(formatsOption(formatsOf(kind)))
    .addOption(paperOption())
    .addOption(unitsOption())
    .addOption(shopOption())
    .addOption(outOption())
    .addHelpText('after', kind.help);
  for (const option of kind.extra ?? []) command.addOption(option);
  command.action(async (files: string[], _: unknown, command: Command) => {
    session.code = await printPapers(kind, files, { options: command.optsWithGlobals(), io: session.io });
  });
}

interface Run {
  readonly options: PaperOptions;
  readonly io: CliIo;
}

async function printPapers<P>(
  kind: PaperKind<P>,
  files: readonly string[],
  { options, io }: Run,
): Promise<ExitCode> {
  if (options.spec !== undefined && (options.style !== undefined || options.strands !== undefined)) {
    throw new CliFault('--spec names one spec already: leave out --style and --strands');
  }
  guardPdf(options, io);
  const { names, readAll } = await inputsOf(files, options, { io, command: kind.name });
  guardInputs(options.out, [...names, ...(options.backlog ?? []), options.shop], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const entries = await readAll(shop);
  const { sizeOrder } = await import('../index.ts');
  const { takenOf, takenSpec } = await import('../work/taken.ts');
  const { paper: make, code = exit.good } = await kind.make({
    options,
    io,
    shop,
    day: options.date ?? io.today(),
    count: entries.length,
  });
  const isNamed = [options.spec, options.style, options.strands].some((part) => part !== undefined);
  const chosen = (advice: Advice): { taken?: Taken | undefined; none: string | undefined } => {
    if (advice.specs.length === 0) return { none: 'no cinch we tie passes here; see size' };
    if (!isNamed) return { taken: takenOf(advice), none: undefined };
    const { spec, none } = named(advice, options);
    return { taken: spec && takenSpec(spec), none };
  };
  const results = entries.map((entry): PaperResult<P> => {
    if (!entry.ok) return failed(entry);
    const advice = sizeOrder(entry.order, shop);
    const { taken, none } = chosen(advice);
    const paper = taken === undefined ? undefined : make(taken, advice);
    return { ok: true, file: entry.file, order: entry.order.order, paper, none };
  });
  await printViews(viewsOf(kind, results, options), { ...options, day: options.date }, io);
  const told = (whatOf: (paper: P) => readonly string[]): string[] =>
    results.flatMap((result) =>
      result.ok && result.paper !== undefined
        ? whatOf(result.paper).map((what) => printable(`order ${result.order}: ${what}`))
        : [],
    );
  const lacks = told((paper) => kind.lacking?.(paper) ?? []);
  const assumed = told((paper) => kind.assumed?.(paper) ?? []);
  for (const what of [...lacks, ...assumed]) io.stderr(`cinchwright: ${what}\n`);
  const read = await codeOf(entries, results, { io, errorColor });
  return [code, read, lacks.length > 0 ? exit.input : exit.good].reduce(worse);
}

function viewsOf<P>(kind: PaperKind<P>, results: readonly PaperResult<P>[], options: PaperOptions): Views {
  return {
    sheets: async () => {
      const sheetOf = await kind.sheet(options);
      return results.flatMap((result) =>
        result.ok && result.paper !== undefined ? [sheetOf(result.paper)] : [],
      );
    },
    json: async () => (await kind.json?.())?.(results) ?? '',
    csv: async () => (await kind.csv?.())?.(results) ?? '',
    text: async () => (await kind.text?.(options))?.(results) ?? '',
  };
}
async function codeOf<P>(
  entries: readonly Entry[],
  results: readonly PaperResult<P>[],
  { io, errorColor }: { io: CliIo; errorColor: boolean },
): Promise<ExitCode> {
  const told = await tellFaults(entries, io, errorColor);
  const without = results.flatMap((result) => (result.ok && result.none !== undefined ? [result] : []));
  for (const { order, none = '' } of without) io.stderr(`cinchwright: order ${printable(order)}: ${none}\n`);
  if (told !== exit.good) return told;
  return without.length > 0 ? exit.noSpec : exit.good;
}

type Chosen = { spec: RankedSpec; none?: undefined } | { spec?: undefined; none: string };

/** Or why there is none. */
function named({ specs }: Advice, { spec: rank, style, strands }: PaperOptions): Chosen {
  if (rank !== undefined) {
    const spec = specs[rank - 1];
    const none = `there is no rank ${String(rank)}: the last is ${String(specs.length)}`;
    return spec === undefined ? { none } : { spec };
  }
  const spec = specs.find(
    ({ candidate: c }) => c.style === (style ?? c.style) && c.strands === (strands ?? c.strands),
  );
  const asked = [style, strands === undefined ? undefined : `${String(strands)} strands`];
  const none = `no ${asked.filter((part) => part !== undefined).join(', ')} passes here; see check`;
  return spec === undefined ? { none } : { spec };
}
