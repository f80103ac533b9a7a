/** Whatever an order, a shop file or a file's name says, no printer hands it to a screen, a spreadsheet or a page as a command. */
import fs from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Problem } from '../../src/yaml/problem.ts';
import { rowOf, type Row } from '../../src/work/row.ts';
import { columnNames } from '../../src/work/columns.ts';
import { askAbout, toAsk } from '../../src/advice/ask.ts';
import type { AskedOrder } from '../../src/words/about-ask.ts';
import { askCsv, askJson } from '../../src/views/ask-data.ts';
import { askMarkdown } from '../../src/views/ask-markdown.ts';
import { askScreen } from '../support/screens.ts';
import { askText } from '../../src/views/ask-text.ts';
import { flatScene } from '../../src/draw/flat-page.ts';
import { titleText } from '../../src/draw/frame.ts';
import { picturesHtml } from '../../src/draw/html.ts';
import { phoneScenes, sideScene } from '../../src/draw/page.ts';
import { shownChecked, shownSpec } from '../../src/draw/shown.ts';
import { sceneSvg } from '../../src/draw/svg.ts';
import { templateOf, templateScene } from '../../src/draw/template.ts';
import { backlogCsv, backlogJson } from '../../src/views/backlog-data.ts';
import { backlogMarkdown, backlogTable } from '../../src/views/backlog-pages.ts';
import type { BacklogPrinter } from '../../src/views/backlog-cells.ts';
import { checkCsv, checkJson } from '../../src/views/check-data.ts';
import { checkMarkdown, checkScreen } from '../support/screens.ts';
import { visible } from '../../src/units/clean.ts';
import { learnJson } from '../../src/views/learn-json.ts';
import { learnSheet } from '../../src/views/learn-sheet.ts';
import { learnSvg } from '../../src/views/learn-svg.ts';
import { learnFrom } from '../../src/learn/learn.ts';
import { materialsCsv } from '../../src/views/materials-csv.ts';
import { materialsJson } from '../../src/views/materials-json.ts';
import { materialsSheet } from '../../src/views/materials-sheet.ts';
import { photoCsv, photoJson } from '../../src/views/photo-data.ts';
import { photoSheet } from '../../src/views/photo-sheet.ts';
import { quotesJson } from '../../src/views/paper-json.ts';
import { problemsText } from '../../src/words/problems.ts';
import { quotesCsv } from '../../src/views/quote-csv.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import { quoteMessages } from '../../src/views/quote-text.ts';
import { scheduleCsv } from '../../src/views/schedule-csv.ts';
import { scheduleJson } from '../../src/views/schedule-json.ts';
import { scheduleSheet } from '../../src/views/schedule-sheet.ts';
import { sheetsHtml } from '../../src/pages/sheet-html.ts';
import { sheetsMarkdown } from '../../src/pages/sheet-markdown.ts';
import { sheetText as sheetsScreen } from '../support/screens.ts';
import type { Sheet } from '../../src/pages/sheet.ts';
import { sizeCsv, sizeJson, whatIfCsv, whatIfJson } from '../../src/views/size-data.ts';
import { sizeMarkdown, sizeScreen } from '../support/screens.ts';
import { sideBySideSheet, whatIfSheet } from '../../src/views/side-by-side-sheet.ts';
import { ticketSheet } from '../../src/views/ticket-sheet.ts';
import type { ReportOptions } from '../../src/pages/page.ts';
import type { CheckResult, PhotoResult, SizeResult } from '../../src/words/types.ts';
import { backlogFrom, type BacklogPapers } from '../support/backlog-papers.ts';
import { outcomesOf } from '../support/outcome-cases.ts';
import { photoResultFor } from '../support/photo-scenes.ts';
import { orderWith, problemWith, shopWith } from '../support/hostile-texts.ts';
import { quoteFor, ticketFor } from '../support/papers.ts';
import { readSvg } from '../support/read-svg.ts';
import { repo } from '../support/run-cli.ts';
import { formulas, moreFormulas, signs } from '../unit/report-payloads.ts';

const options: ReportOptions = { units: 'in', color: false, width: 80, top: 2, why: true, all: false };

interface Case {
  readonly learned: { readonly json: string; readonly svg: string };
  readonly ask: readonly AskedOrder[];
  readonly backlog: BacklogPapers;
  readonly papers: { readonly quotes: Parameters<typeof quotesJson>[0]; readonly sheets: readonly Sheet[] };
  readonly size: readonly SizeResult[];
  readonly check: readonly CheckResult[];
  readonly photo: readonly PhotoResult[];
  readonly problems: readonly Problem[];
  readonly row: Row;
}

const cases = new Map<string, Case>();

/** Made once for each text: it takes longer than all printers together. */
function caseWith(text: string): Case {
  const made = cases.get(text) ?? newCase(text);
  cases.set(text, made);
  return made;
}

function newCase(text: string): Case {
  const order = orderWith(text);
  const shop = shopWith(text);
  const advice = sizeOrder(order, shop);
  const backlog = backlogFrom([order], shop);
  const wants = checkCinch(order.wants!, 'wants', advice);
  const current = checkCinch(order.current!, 'current', advice);
  const problems = [problemWith(text)];
  const failed = { ok: false, file: text, order: text, problems } as const;
  const asked = askAbout(advice, { strata: 2, seed: 1 });
  const { questions, photo } = toAsk(asked);
  const learned = learnFrom(outcomesOf(12, 1, { required: 1.3, softness: 0.15, give: 1 }), shop);
  const about = { file: text, day: '2026-11-20' };
  return {
    learned: {
      json: learnJson(learned, about),
      svg: learnSvg(learned),
    },
    ask: [{ ok: true, file: text, result: asked, toAsk: questions, photo }, failed],
    problems,
    row: rowOf(advice, { file: text, document: 1, line: 1 }),
    backlog: { ...backlog, results: [...backlog.results, failed] },
    papers: {
      quotes: [{ ok: true, file: text, order: text, paper: quoteFor(order, shop), none: undefined }],
      sheets: [
        learnSheet(learned, about),
        materialsSheet(backlog.materials, backlog.results),
        scheduleSheet(backlog.agenda, backlog.asked, backlog.results),
        quoteSheet(quoteFor(order, shop), { units: 'in', itemized: true }),
        ticketSheet(ticketFor(order, shop), 'in'),
        photoSheet(photoResultFor(advice, text), 'in'),
      ],
    },
    size: [{ ok: true, file: text, advice, wants }, failed],
    check: [{ ok: true, file: text, advice, checked: [wants, current] }, failed],
    photo: [photoResultFor(advice, text), failed],
  };
}

type Print = (from: Case) => string | Promise<string>;

/** Every printer that is handed text from files, by the name of its file. */
const printers: Readonly<Record<string, Print>> = {
  'size-screen': ({ size }) => sizeScreen(size, options),
  'size-markdown': ({ size }) => sizeMarkdown(size, options),
  'size-csv': ({ size }) => sizeCsv(size, options),
  'size-json': ({ size }) => sizeJson(size, options),
  'side-by-side-screen': ({ size }) => sheetsScreen([sideBySideSheet(size, 'in')], options),
  'what-if-screen': (from) => sheetsScreen([whatIfSheet(whatIfs(from), 'in')], options),
  'what-if-markdown': (from) => sheetsMarkdown([whatIfSheet(whatIfs(from), 'in')]),
  'what-if-csv': (from) => whatIfCsv(whatIfs(from), options),
  'what-if-json': (from) => whatIfJson(whatIfs(from), options),
  'check-screen': ({ check }) => checkScreen(check, options),
  'check-markdown': ({ check }) => checkMarkdown(check, options),
  'check-csv': ({ check }) => checkCsv(check),
  'check-json': ({ check }) => checkJson(check),
  'photo-csv': ({ photo }) => photoCsv(photo),
  'photo-json': ({ photo }) => photoJson(photo),
  'ask-screen': ({ ask }) => askScreen(ask, options) + askScreen([ask[0]!, ask[0]!], options),
  'ask-text': ({ ask }) => askText(ask, true) + askText(ask, false),
  'ask-markdown': ({ ask }) => askMarkdown(ask, true) + askMarkdown(ask, false),
  'ask-csv': ({ ask }) => askCsv(ask),
  'ask-json': ({ ask }) => askJson(ask),
  'backlog-csv': ({ row }) => rowText(backlogCsv(columnNames), row),
  'backlog-json': ({ row }) => rowText(backlogJson(columnNames), row),
  'backlog-markdown': ({ row }) => rowText(backlogMarkdown(columnNames, 'in'), row),
  'backlog-screen': ({ row }) => rowText(backlogTable(columnNames, true, { ...options, width: 4000 }), row),
  'picture-svg': ({ size }) =>
    picturesWith(size)
      .map((scene) => sceneSvg(scene))
      .join('\n'),
  'picture-html': ({ size }) => picturePage(size),
  'sheet-html': ({ papers }) => sheetsHtml(papers.sheets),
  problems: ({ problems }) => problemsText(problems, options),
  'paper-json': ({ papers }) => quotesJson(papers.quotes),
  'quote-csv': ({ papers }) => quotesCsv(papers.quotes),
  'quote-text': ({ papers }) => quoteMessages(papers.quotes, 'in'),
  'sheet-screen': ({ papers }) => sheetsScreen(papers.sheets, options),
  'sheet-markdown': ({ papers }) => sheetsMarkdown(papers.sheets),
  'learn-json': ({ learned }) => learned.json,
  'learn-svg': ({ learned }) => learned.svg,
  'materials-csv': ({ backlog }) => materialsCsv(backlog.materials, backlog.results),
  'materials-json': ({ backlog }) => materialsJson(backlog.materials, backlog.results),
  'schedule-csv': ({ backlog }) => scheduleCsv(backlog.agenda, backlog.asked, backlog.results),
  'schedule-json': ({ backlog }) => scheduleJson(backlog.agenda, backlog.asked, backlog.results),
};

const whatIfs = ({ size }: Case) =>
  [undefined, readOnes(size)[0]!.file].map((whatIf) => ({ whatIf, result: size[0]! }));

type Sized = SizeResult & { readonly ok: true };
const readOnes = (size: readonly SizeResult[]): Sized[] => size.flatMap((each) => (each.ok ? [each] : []));

/** The side, the cinch flat, and a template of it. */
const picturesWith = (size: readonly SizeResult[]) =>
  readOnes(size).flatMap(({ advice, wants }) => {
    const [spec] = advice.specs;
    const shown = [shownChecked(wants!, advice, 'in'), shownSpec(spec!, advice, 'in')];
    const template = templateOf({ advice, candidate: spec!.candidate, mark: undefined, units: 'in' });
    return [
      sideScene({ advice, shown, units: 'in' }),
      flatScene({ advice, shown: shown[1]!, units: 'in' }),
      templateScene(template),
    ];
  });

const picturePage = (size: readonly SizeResult[]): string =>
  picturesHtml(
    readOnes(size).map(({ advice, wants }) => {
      const shown = [shownChecked(wants!, advice, 'in')];
      const told = { advice, shown, units: 'in' } as const;
      return { ...told, title: titleText(advice.facts.order), scenes: phoneScenes(told) };
    }),
  );

const rowText = (printer: BacklogPrinter, { cells }: Row): string =>
  printer.head + printer.before + printer.row(cells) + printer.foot(true, true);

/** Files of several printers, and which of them they hold. */
const together: Readonly<Record<string, readonly string[]>> = {
  'size-sheet': ['size-screen', 'size-markdown'],
  'check-sheet': ['check-screen', 'check-markdown'],
  'ask-sheet': ['ask-screen'],
  'backlog-data': ['backlog-csv', 'backlog-json'],
  'backlog-pages': ['backlog-markdown', 'backlog-screen'],
  'size-data': ['size-csv', 'size-json', 'what-if-csv', 'what-if-json'],
  'check-data': ['check-csv', 'check-json'],
  'photo-data': ['photo-csv', 'photo-json'],
  'ask-data': ['ask-csv', 'ask-json'],
  'side-by-side-sheet': ['side-by-side-screen', 'what-if-screen', 'what-if-markdown'],
};

test('no printer is left out', () => {
  const files = ['views', 'pages', 'words']
    .flatMap((room) => fs.readdirSync(path.join(repo, 'src', room)))
    .map((file) => file.replace(/\.ts$/, ''));
  const found = files
    .flatMap((name) => together[name] ?? [name])
    .filter(
      (name) => /-(screen|text|markdown|csv|json|html|svg|data|pages)$/.test(name) || name === 'problems',
    );
  const pictures = fs.readdirSync(path.join(repo, 'src', 'draw')).flatMap((file) => {
    const [, kind] = /^(svg|html)\.ts$/.exec(file) ?? [];
    return kind === undefined ? [] : [`picture-${kind}`];
  });
  // The rules print nothing that came from a file.
  expect([...found.filter((name) => !name.startsWith('rules-')), ...pictures].sort()).toEqual(
    Object.keys(printers).sort(),
  );
});

const written = (sign: string): string => `\\u{${sign.codePointAt(0)!.toString(16)}}`;

describe.each(Object.entries(printers))('%s', (name, print) => {
  test.each(signs)('%j is shown, not obeyed', async (sign) => {
    const text = `q7${sign}q8`;
    const page = await print(caseWith(text));
    expect(page).not.toContain(`q7${sign}`);
    expect(page).not.toContain(`${sign}q8`);
    if (name.endsWith('json')) {
      const values = JSON.stringify(JSON.parse(page));
      expect(values).toContain(JSON.stringify(text).slice(1, -1)); // the same data
    } else {
      const shown = `q7${written(sign)}q8`;
      expect(page).toContain(name.endsWith('markdown') ? shown.replace('\\', '\\\\') : shown);
    }
  });
});

test.each(['size-csv', 'what-if-csv', 'check-csv', 'photo-csv', 'ask-csv', 'materials-csv', 'schedule-csv'])(
  '%s: no cell is a formula',
  async (name) => {
    for (const text of [...formulas, ...moreFormulas, "'", "'=1", ' =1', '-1', '+1', '@a', '=']) {
      const page = await printers[name]!(caseWith(text));
      const [head, ...rows] = parse(page);
      const first = new Set(rows.flat().map((cell) => cell.trim().slice(0, 1)));
      expect(['=', '+', '@', '＝', '＋', '－', '＠'].filter((sign) => first.has(sign))).toEqual([]);
      // A number may be negative; a text may not look like one.
      expect(rows.flat().filter((cell) => /^\s*-/.test(cell) && !/^-[\d.]+$/.test(cell))).toEqual([]);
      if (!/^(size|what-if|check|photo|ask)/.test(name)) continue;
      const order = rows.map((row) => row[head!.indexOf('order')]!.replace(/^'/, ''));
      expect(new Set(order)).toEqual(new Set([visible(text)]));
    }
  },
);

test('a picture stays well-formed XML with nothing of the text in its markup', () => {
  const nasty = [
    ...[
      '<script>alert(1)</script>',
      '"/><image href="x"/>',
      "' onload='x",
      ']]>',
      '&amp;&#0;&x;',
      '<!--',
      '<?x',
    ],
    ...['\ufffe\uffff', '\ud800', '\u{1f434}\u{1f3fd}', '\u202e<svg>', 'e'.repeat(5000), ' ', '\u0000'],
  ];
  for (const text of nasty) {
    for (const scene of picturesWith(caseWith(text).size)) {
      const { elements } = readSvg(sceneSvg(scene)); // throws where it is not
      const names = new Set(elements.map(({ name }) => name));
      expect(
        [...names].filter((name) => !['svg', 'title', 'desc', 'g', 'path', 'circle', 'text'].includes(name)),
      ).toEqual([]);
      const keys = new Set(elements.flatMap(({ attributes }) => Object.keys(attributes)));
      expect([...keys].filter((key) => /^on|href|style|id$/i.test(key) && key !== 'width')).toEqual([]);
    }
  }
});
