/** Letters that the type lacks: shown as an empty square, and told, rather than left out. */
import { visible } from '../report/clean.ts';
import { signs } from '../report/width.ts';
import type { Block, Sheet } from '../report/sheet.ts';
import type { Face } from './marks.ts';

/** Stands for a letter that cannot be printed. */
const missingLetter = '\u25a1';

/** Which code points a face can print. */
export type Has = (codePoint: number, face: Face) => boolean;

const ascii = /^[ -~]*$/;

/** Whether a face can print all of a text. */
export const canPrint = (text: string, face: Face, has: Has): boolean =>
  ascii.test(text) || Array.from(text).every((letter) => has(letter.codePointAt(0) ?? 0, face));

/** A text as it can be printed, made visible; `lacking` collects the letters that were replaced. */
export function printed(text: string, has: Has, lacking: Set<string>): string {
  if (ascii.test(text)) return text;
  return signs(visible(text.normalize('NFC')))
    .map((sign) => {
      if (canPrint(sign, 'text', has)) return sign;
      lacking.add(sign);
      return missingLetter;
    })
    .join('');
}

/** A paper with every text as it can be printed. */
export function printedSheet(sheet: Sheet, of: (text: string) => string): Sheet {
  const { title, shop, about, notice, blocks, rules, cautions } = sheet;
  return {
    title: of(title),
    shop: of(shop),
    about: about.map(of),
    notice: notice === undefined ? undefined : of(notice),
    blocks: blocks.map((block) => printedBlock(block, of)),
    rules: rules.map(of),
    cautions: cautions.map(of),
  };
}

function printedBlock(block: Block, of: (text: string) => string): Block {
  const rowsOf = (rows: readonly (readonly string[])[]): string[][] => rows.map((row) => row.map(of));
  switch (block.kind) {
    case 'heading':
    case 'text':
      return { ...block, text: of(block.text) };
    case 'list':
    case 'boxes':
      return { ...block, items: block.items.map(of) };
    case 'blanks':
      return { ...block, labels: block.labels.map(of) };
    case 'pairs':
      return { ...block, rows: block.rows.map(([label, value]) => [of(label), of(value)] as const) };
    case 'table':
      return {
        ...block,
        columns: block.columns.map((column) => ({ ...column, head: of(column.head) })),
        rows: rowsOf(block.rows),
        ...(block.foot === undefined ? {} : { foot: rowsOf(block.foot) }),
      };
  }
}
