/** A paper as data, for every printer. */

import type { Document } from './pdf/document.ts';
import type { Sign } from './pen.ts';
import { capital } from '../units/text.ts';

export interface Column {
  readonly head: string;
  readonly align?: 'right';
  /** On screen, so tables line up. */
  readonly least?: number;
}

/** On screen: `apart` adds an empty line, `spare` may be dropped. */
interface Placed {
  readonly apart?: true;
  readonly spare?: true;
}

/** A dash when missing. */
export type ItemMark = 'number' | Sign;

/** Texts are raw; printers escape them. */
export type Block = Placed & SomeBlock;

export type TableBlock = Extract<Block, { kind: 'table' }>;
export type BesideBlock = Extract<Block, { kind: 'beside' }>;

type SomeBlock =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly tone?: 'strong' | 'quiet' }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly mark?: ItemMark }
  | { readonly kind: 'pairs'; readonly rows: readonly (readonly [label: string, value: string])[] }
  /** `foot` holds totals; `total` is the main one's index. */
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
      readonly foot?: readonly (readonly string[])[];
      readonly total?: number;
      /** May sit beside the next table. */
      readonly half?: true;
      /** The last column takes the rest and wraps. */
      readonly noted?: true;
      /** All but the first share the width and wrap. */
      readonly even?: true;
    }
  /** Check boxes. */
  | { readonly kind: 'boxes'; readonly items: readonly string[] }
  /** Writing lines. */
  | { readonly kind: 'blanks'; readonly labels: readonly string[] }
  /** Screens omit the picture. */
  | { readonly kind: 'beside'; readonly picture: Drawing; readonly blocks: readonly Block[] };

/** Finished, in points. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** For screen readers. */
  readonly about: string;
  /** For HTML. */
  readonly svg: string;
  readonly draw: (document: Document) => void;
}

export interface Sheet {
  readonly title: string;
  /** A counter sheet's answer, on line 1. */
  readonly lead?: string;
  /** Replaces the cautions on screen. */
  readonly foot?: readonly string[];
  readonly shop: string;
  /** Below the title. */
  readonly about: readonly string[];
  /** Comes first. */
  readonly notice: string | undefined;
  readonly blocks: readonly Block[];
  /** House rules. */
  readonly rules: readonly string[];
  readonly cautions: readonly string[];
}

/** For page printers: the answer becomes a paragraph. */
export const asPaper = ({ lead, ...sheet }: Sheet): Sheet =>
  lead === undefined
    ? sheet
    : { ...sheet, blocks: [{ kind: 'text', text: capital(lead), tone: 'strong' }, ...sheet.blocks] };

type CounterSheet = Pick<Sheet, 'title' | 'blocks' | 'cautions'> & Required<Pick<Sheet, 'lead' | 'foot'>>;

/** For the counter only. */
export const counterSheet = (sheet: CounterSheet): Sheet => ({
  shop: '',
  about: [],
  notice: undefined,
  rules: [],
  ...sheet,
});

/** Columns under these heads, at the left. */
export const left = (...heads: readonly string[]): Column[] => heads.map((head) => ({ head }));

/** The same at the right, for numbers. */
export const right = (...heads: readonly string[]): Column[] =>
  heads.map((head) => ({ head, align: 'right' }));

/** A plain paragraph. */
export const paragraph = (text: string): Block => ({ kind: 'text', text });

/** For an order we could not read; errors are printed separately. */
export const unreadSheet = ({ file, order }: { file: string; order?: string | undefined }): Sheet =>
  counterSheet({
    title: order === undefined ? file : `${order} in ${file}`,
    lead: 'could not be read: see the messages.',
    blocks: [],
    cautions: [],
    foot: [],
  });

/** Empty without blocks. */
export const under = (text: string, blocks: readonly Block[]): Block[] => {
  const full = blocks.filter((block) => !isEmpty(block));
  return full.length === 0 ? [] : [{ kind: 'heading', text }, ...full];
};

/** Drops blocks without text. */
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
