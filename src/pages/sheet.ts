/** A paper as data: one page model for every printer, on the screen, in Markdown, as HTML or on a printed page. */

import type { Document } from './pdf/document.ts';
import type { Sign } from './pen.ts';
import { capital } from '../units/text.ts';

/** A column of a table. */
export interface Column {
  readonly head: string;
  readonly align?: 'right';
  /** Columns of a screen that it takes at least, so that tables under each other line up. */
  readonly least?: number;
}

/** Where a block stands on a screen: after an empty line, and left out where the screen would grow too long. */
interface Placed {
  readonly apart?: true;
  readonly spare?: true;
}

/** What stands before an item: a dash, its number, or a sign. */
export type ItemMark = 'number' | Sign;

/** Texts are as they came, not yet escaped for anything. */
export type Block = Placed & SomeBlock;

/** Some of them. */
export type TableBlock = Extract<Block, { kind: 'table' }>;
export type BesideBlock = Extract<Block, { kind: 'beside' }>;

type SomeBlock =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly tone?: 'strong' | 'quiet' }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly mark?: ItemMark }
  /** A label and what it says. */
  | { readonly kind: 'pairs'; readonly rows: readonly (readonly [label: string, value: string])[] }
  /** The rows of `foot` are sums and stand apart; `total` is the strongest of them. */
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
      readonly foot?: readonly (readonly string[])[];
      /** Place of the total in `foot`. */
      readonly total?: number;
      /** May stand beside the next table where the page is wide. */
      readonly half?: true;
      /** The last column is a note: it takes the rest of the line and wraps. */
      readonly noted?: true;
      /** Columns but the first share the width, and wrap. */
      readonly even?: true;
    }
  /** To be ticked off. */
  | { readonly kind: 'boxes'; readonly items: readonly string[] }
  /** To be written in by hand. */
  | { readonly kind: 'blanks'; readonly labels: readonly string[] }
  /** Blocks with a picture at their side, which a screen leaves out. */
  | { readonly kind: 'beside'; readonly picture: Drawing; readonly blocks: readonly Block[] };

/** A picture that was made elsewhere, in points; each printer of pages takes it in its own way. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** For readers who cannot see it. */
  readonly about: string;
  /** An element of a page, which says so itself. */
  readonly svg: string;
  readonly draw: (document: Document) => void;
}

export interface Sheet {
  readonly title: string;
  /** The answer, which stands behind the title on a screen: of sheets that are read at the counter. */
  readonly lead?: string;
  /** What stands at the end of a screen in place of all cautions. */
  readonly foot?: readonly string[];
  readonly shop: string;
  /** Lines under the title. */
  readonly about: readonly string[];
  /** What must be seen before anything else. */
  readonly notice: string | undefined;
  readonly blocks: readonly Block[];
  /** The shop's own lines, then what always goes with a cinch. */
  readonly rules: readonly string[];
  readonly cautions: readonly string[];
}

/** A counter's sheet for printers of pages: the answer is its first paragraph. */
export const asPaper = ({ lead, ...sheet }: Sheet): Sheet =>
  lead === undefined
    ? sheet
    : { ...sheet, blocks: [{ kind: 'text', text: capital(lead), tone: 'strong' }, ...sheet.blocks] };

type CounterSheet = Pick<Sheet, 'title' | 'blocks' | 'cautions'> & Required<Pick<Sheet, 'lead' | 'foot'>>;

/** A sheet that is read at the counter: an answer, its blocks and its foot, and nothing of a paper. */
export const counterSheet = (sheet: CounterSheet): Sheet => ({
  shop: '',
  about: [],
  notice: undefined,
  rules: [],
  ...sheet,
});

/** A text without more. */
export const paragraph = (text: string): Block => ({ kind: 'text', text });

/** The one line that an order leaves which could not be read; its problems go to the messages. */
export const unreadSheet = ({ file, order }: { file: string; order?: string | undefined }): Sheet =>
  counterSheet({
    title: order === undefined ? file : `${order} in ${file}`,
    lead: 'could not be read: see the messages.',
    blocks: [],
    cautions: [],
    foot: [],
  });

/** A heading with what stands under it; nothing when nothing does. */
export const under = (text: string, blocks: readonly Block[]): Block[] => {
  const full = blocks.filter((block) => !isEmpty(block));
  return full.length === 0 ? [] : [{ kind: 'heading', text }, ...full];
};

/** Without the blocks that say nothing. */
export const withoutEmpty = (blocks: readonly Block[]): Block[] => blocks.filter((block) => !isEmpty(block));

function isEmpty(block: Block): boolean {
  switch (block.kind) {
    case 'list':
    case 'boxes':
      return block.items.length === 0;
    case 'pairs':
    case 'table':
      return block.rows.length === 0;
    case 'blanks':
      return block.labels.length === 0;
    case 'beside':
      return block.blocks.length === 0;
    default:
      return block.text === '';
  }
}
