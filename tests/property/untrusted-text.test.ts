/** No text of a file or its name is printed as a command. */
import fs from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { type Row } from '../../src/work/row.ts';
import { columnNames } from '../../src/work/columns.ts';
import { askCsv, askJson } from '../../src/views/ask-data.ts';
import { askMessages } from '../../src/views/ask-message.ts';
import { askScreen } from '../support/screens.ts';
import { messagesMarkdown, messagesText } from '../../src/pages/messages.ts';
import { flatScene } from '../../src/draw/flat-page.ts';
import { titleText } from '../../src/draw/frame.ts';
import { picturesHtml } from '../../src/draw/html.ts';
import { phoneScenes, sideScene } from '../../src/draw/page.ts';
import { shownChecked, shownSpec } from '../../src/draw/shown.ts';
import { sceneSvg } from '../../src/draw/svg.ts';
import { templateOf, templateScene } from '../../src/draw/template.ts';
import { backlogCsv, backlogJson } from '../../src/views/backlog-data.ts';
import { backlogMarkdown, backlogTable } from '../../src/views/backlog-pages.ts';
import type { BacklogPrinter } from '../../src/views/backlog-data.ts';
import { checkCsv, checkJson } from '../../src/views/check-data.ts';
import { checkMarkdown, checkScreen } from '../support/screens.ts';
import { visible } from '../../src/units/clean.ts';
import { materialsCsv, materialsJson } from '../../src/views/materials-data.ts';
import { photoCsv, photoJson } from '../../src/views/photo-data.ts';
import { quotesCsv, quotesJson } from '../../src/views/quote-data.ts';
import { problemsText } from '../../src/words/problems.ts';
import { ticketsJson } from '../../src/views/ticket-data.ts';
import { quoteMessages } from '../../src/views/quote-message.ts';
import { scheduleCsv, scheduleJson } from '../../src/views/schedule-data.ts';
import { sheetsHtml } from '../../src/pages/sheet-html.ts';
import { sheetsMarkdown } from '../../src/pages/sheet-markdown.ts';
import { sheetText as sheetsScreen } from '../support/screens.ts';
import { sizeCsv, sizeJson, whatIfCsv, whatIfJson } from '../../src/views/size-data.ts';
import { sizeMarkdown, sizeScreen } from '../support/screens.ts';
import { sideBySideSheet, whatIfSheet } from '../../src/views/side-by-side-sheet.ts';
import type { ReportOptions } from '../../src/pages/page.ts';
import type { SizeResult } from '../../src/words/types.ts';
import { long } from '../support/cases.ts';
import { caseWith, type Case } from '../support/hostile-case.ts';
import { readSvg } from '../support/read-svg.ts';
import { repo } from '../support/run-cli.ts';
import { formulas, moreFormulas, signs } from '../unit/report-payloads.ts';

const options: ReportOptions = { units: 'in', color: false, width: 80, top: 2, why: true, all: false };

type Print = (from: Case) => string | Promise<string>;

/** By the name of its file. */
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
  'ask-text': ({ ask }) => [true, false].map((whole) => messagesText(askMessages(ask, whole))).join('\n'),
  'ask-markdown': ({ ask }) =>
    [true, false].map((whole) => messagesMarkdown(askMessages(ask, whole))).join('\n'),
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
  'sheet-html': ({ sheets }) => sheetsHtml(sheets),
  problems: ({ problems }) => problemsText(problems, options),
  'quote-json': ({ quotes }) => quotesJson(quotes),
  'ticket-json': ({ tickets }) => ticketsJson(tickets),
  'quote-csv': ({ quotes }) => quotesCsv(quotes),
  'quote-text': ({ quotes }) => messagesText(quoteMessages(quotes, 'in')),
  'sheet-screen': ({ sheets }) => sheetsScreen(sheets, options),
  'sheet-markdown': ({ sheets }) => sheetsMarkdown(sheets),
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

/** The side, the cinch flat, a template. */
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

/** Files that hold several printers. */
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
  messages: ['ask-text', 'ask-markdown', 'quote-text'],
  'materials-data': ['materials-csv', 'materials-json'],
  'schedule-data': ['schedule-csv', 'schedule-json'],
  'quote-data': ['quote-csv', 'quote-json'],
  'ticket-data': ['ticket-json'],
  'learn-data': ['learn-json'],
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

/** At the gate: a line break, an escape, a turn, every sixth other. */
const signsFor = (turn: number): readonly string[] =>
  signs.filter((sign, i) => long || '\n\u001b\u202e'.includes(sign) || (i + turn) % 6 === 0);

const inTurn = Object.entries(printers).map(([name, print], i) => ({ name, print, signs: signsFor(i) }));
describe.each(inTurn)('$name', ({ name, print, signs: some }) => {
  test.each(some)('%j is shown, not obeyed', async (sign) => {
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
    const some = ["'=1", ' =1', '-1', '+1', '@a', '=', '\uff1d1+1', '\t=1+1'];
    // All guard their cells by one function.
    for (const text of long || name === 'size-csv' ? [...formulas, ...moreFormulas, "'", ...some] : some) {
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
      const { elements } = readSvg(sceneSvg(scene)); // throws on malformed files
      const names = new Set(elements.map(({ name }) => name));
      expect(
        [...names].filter((name) => !['svg', 'title', 'desc', 'g', 'path', 'circle', 'text'].includes(name)),
      ).toEqual([]);
      const keys = new Set(elements.flatMap(({ attributes }) => Object.keys(attributes)));
      expect([...keys].filter((key) => /^on|href|style|id$/i.test(key) && key !== 'width')).toEqual([]);
    }
  }
});
