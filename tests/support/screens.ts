/** What a command prints, as text. */
import { askSheets } from '../../src/views/ask-sheet.ts';
import type { AskedOrder } from '../../src/words/about-ask.ts';
import { checkSheet } from '../../src/views/check-sheet.ts';
import { sheetsMarkdown } from '../../src/pages/sheet-markdown.ts';
import { screenOf } from '../../src/pages/sheet-screen.ts';
import { tableLines } from '../../src/pages/sheet-table.ts';
import { unreadSheet, type Sheet } from '../../src/pages/sheet.ts';
import { columns } from '../../src/units/width.ts';
import { sizeSheet } from '../../src/views/size-sheet.ts';
import type { ReportOptions } from '../../src/pages/page.ts';
import type { CheckResult, SizeResult } from '../../src/words/types.ts';

type Some = Pick<ReportOptions, 'units'> & Partial<ReportOptions>;

const full = (options: Some): ReportOptions => ({
  color: false,
  width: 80,
  top: 3,
  why: false,
  all: false,
  ...options,
});

const sizes = (results: readonly SizeResult[], options: Some): Sheet[] =>
  results.map((result) => (result.ok ? sizeSheet(result, full(options)) : unreadSheet(result)));
const checks = (results: readonly CheckResult[], options: Some): Sheet[] =>
  results.map((result) => (result.ok ? checkSheet(result, full(options)) : unreadSheet(result)));

export const sheetText = (sheets: readonly Sheet[], options: Some): string =>
  screenOf(sheets, full(options), tableLines);

export const sizeScreen = (results: readonly SizeResult[], options: Some): string =>
  sheetText(sizes(results, options), options);
export const sizeMarkdown = (results: readonly SizeResult[], options: Some): string =>
  sheetsMarkdown(sizes(results, options));
export const checkScreen = (results: readonly CheckResult[], options: Some): string =>
  sheetText(checks(results, options), options);
export const checkMarkdown = (results: readonly CheckResult[], options: Some): string =>
  sheetsMarkdown(checks(results, options));
export const askScreen = (results: readonly AskedOrder[], options: Some): string =>
  sheetText(askSheets(results, options.units), options);

export const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

/** Columns of the widest line. */
export const widest = (text: string): number => Math.max(...text.split('\n').map(columns));
