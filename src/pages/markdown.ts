/** Markdown that says what the text says: nothing that came from a file can become a link, a heading, a table or HTML. */
import { visible } from '../units/clean.ts';

/**
 * Text as Markdown: the signs that can mean something inside a line get a backslash, and so does what can mean something at its
 * start (CommonMark 0.31, 2.4: any ASCII punctuation may be escaped). Round brackets mean nothing once the square ones are escaped.
 */
export const escaped = (text: string): string =>
  visible(text)
    .replace(/[\\`*_[\]<|~&@#]/g, '\\$&')
    .replace(/^(\s*)([-=+>]|\d+(?=[.)](?:\s|$)))/, (_, space: string, sign: string) =>
      /\d/.test(sign) ? `${space}${sign}\\` : `${space}\\${sign}`,
    )
    // A bare address becomes a link in many readers; with a backslash in it, it does not.
    .replace(/:(?=\/\/)/g, '\\:')
    .replace(/\bwww\./gi, (start) => `${start.slice(0, -1)}\\.`);

/** A table; cells are Markdown already, so only what would break the row is taken out. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** A list with one item a line. */
export const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n');

/** Blocks with one empty line between them and a newline at the end; empty blocks are left out. */
export const document = (blocks: readonly string[]): string =>
  `${blocks.filter((block) => block !== '').join('\n\n')}\n`;

/** A heading with what stands under it; nothing when nothing does. */
export const section = (heading: string, body: string): string[] => (body === '' ? [] : [heading, body]);
