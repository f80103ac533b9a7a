/** Papers as Markdown to paste. */
import { document, escaped, list, section, table } from './markdown.ts';
import { asPaper, type Block, type Sheet } from './sheet.ts';

/** Cautions come once, at the end. */
export function sheetsMarkdown(sheets: readonly Sheet[]): string {
  const cautions = new Set(sheets.flatMap((sheet) => sheet.cautions));
  return document([
    ...sheets.map(asPaper).flatMap(sheetBlocks),
    ...section('## Keep in mind', list([...cautions].map(escaped))),
  ]);
}

const strong = (text: string): string => `**${escaped(text)}**`;

const sheetBlocks = ({ title, shop, about, notice, blocks, rules }: Sheet): string[] => [
  `# ${escaped(title)}`,
  [shop, ...about]
    .filter((line) => line !== '')
    .map(escaped)
    .join('  \n'),
  notice === undefined ? '' : strong(notice),
  ...blocks.map(blockText),
  list(rules.map(escaped)),
];

function blockText(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `## ${escaped(block.text)}`;
    case 'text':
      return block.tone === 'strong' ? strong(block.text) : escaped(block.text);
    case 'list':
      return list(block.items.map(escaped));
    case 'boxes':
      return list(block.items.map((item) => `[ ] ${escaped(item)}`));
    case 'blanks':
      return list(block.labels.map((label) => `${escaped(label)}: \\_\\_\\_\\_\\_\\_\\_\\_`));
    case 'pairs':
      return table(
        ['', ''],
        block.rows.map((row) => row.map(escaped)),
      );
    case 'table':
      return tableText(block);
    case 'beside':
      return document(block.blocks.map(blockText)).trimEnd();
  }
}

function tableText({ columns, rows, foot = [], total }: Extract<Block, { kind: 'table' }>): string {
  const sums = foot.map((row, i) =>
    i === total ? row.map((cell) => (cell === '' ? '' : strong(cell))) : row.map(escaped),
  );
  return table(
    columns.map(({ head }) => escaped(head)),
    [...rows.map((row) => row.map(escaped)), ...sums],
  );
}
