/** Markdown in which text can't become a link, heading, table or HTML. */
import { visible } from '../units/clean.ts';

/**
 * Backslashes before signs that mean something (CommonMark 0.31, 2.4). Round brackets are harmless once square
 * ones are escaped.
 */
export const escaped = (text: string): string =>
  visible(text)
    .replace(/[\\`*_[\]<|~&@#]/g, '\\$&')
    .replace(/^(\s*)([-=+>]|\d+(?=[.)](?:\s|$)))/, (_, space: string, sign: string) =>
      /\d/.test(sign) ? `${space}${sign}\\` : `${space}\\${sign}`,
    )
    // Keeps bare addresses from becoming links.
    .replace(/:(?=\/\/)/g, '\\:')
    .replace(/\bwww\./gi, (start) => `${start.slice(0, -1)}\\.`);

/** Cells are Markdown already; removes what would break the row. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** One item per line. */
export const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n');

/** Joined by empty lines; drops empty blocks. */
export const document = (blocks: readonly string[]): string =>
  `${blocks.filter((block) => block !== '').join('\n\n')}\n`;

/** Empty when `body` is. */
export const section = (heading: string, body: string): string[] => (body === '' ? [] : [heading, body]);
