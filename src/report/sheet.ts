/** A paper as data: one page model for every printer, on the screen, in Markdown, as HTML or on a printed page. */

/** A column of a table. */
export interface Column {
  readonly head: string;
  readonly align?: 'right';
}

/** Texts are as they came, not yet escaped for anything. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly tone?: 'strong' | 'quiet' }
  | { readonly kind: 'list'; readonly items: readonly string[] }
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
    }
  /** To be ticked off. */
  | { readonly kind: 'boxes'; readonly items: readonly string[] }
  /** To be written in by hand. */
  | { readonly kind: 'blanks'; readonly labels: readonly string[] };

export interface Sheet {
  readonly title: string;
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

/** A heading with what stands under it; nothing when nothing does. */
export const under = (text: string, blocks: readonly Block[]): Block[] => {
  const full = blocks.filter((block) => !isEmpty(block));
  return full.length === 0 ? [] : [{ kind: 'heading', text }, ...full];
};

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
    default:
      return block.text === '';
  }
}
