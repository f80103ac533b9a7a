/** Messages to customers, as plain text for mail or as Markdown. */
import { wrap, type Indent } from '../units/text.ts';
import { document, escaped, list } from './markdown.ts';

/** A paragraph, or more of them; raw text, printers escape it. */
export type Piece =
  | string
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'steps'; readonly items: readonly { readonly lead?: string; readonly text: string }[] };

/** Empty paragraphs are dropped. */
export type Message = readonly Piece[];

/** Columns; short enough to survive quoting in replies. */
const WIDTH = 72;

/** With a line between messages. */
export const messagesText = (messages: readonly Message[]): string =>
  messages.map((pieces) => `${full(pieces).map(textOf).join('\n\n')}\n`).join(`\n${'='.repeat(WIDTH)}\n\n`);

/** With a rule between messages; empty without messages. */
export const messagesMarkdown = (messages: readonly Message[]): string =>
  messages.length === 0
    ? ''
    : document(messages.flatMap((pieces, i) => [...(i === 0 ? [] : ['---']), ...pieces.map(markdownOf)]));

const full = (pieces: Message): Message => pieces.filter((piece) => piece !== '');

function textOf(piece: Piece): string {
  if (typeof piece === 'string') return wrapped(piece);
  switch (piece.kind) {
    case 'heading':
      return wrapped(`${piece.text}:`);
    case 'list':
      return piece.items.map((text) => wrapped(`- ${text}`, { first: 0, rest: 2 })).join('\n');
    case 'steps':
      return piece.items
        .map(({ lead, text }, i) =>
          wrapped(`${String(i + 1)}. ${lead === undefined ? '' : `${lead} `}${text}`, { first: 0, rest: 3 }),
        )
        .join('\n\n');
  }
}

const wrapped = (text: string, indent?: Indent): string => wrap(text, WIDTH, indent).join('\n');

function markdownOf(piece: Piece): string {
  if (typeof piece === 'string') return escaped(piece);
  switch (piece.kind) {
    case 'heading':
      return `## ${escaped(piece.text)}`;
    case 'list':
      return list(piece.items.map(escaped));
    case 'steps':
      return piece.items
        .map(({ lead, text }, i) => {
          const strong = lead === undefined ? '' : `**${escaped(lead)}** `;
          return `${String(i + 1)}. ${strong}${escaped(text)}`;
        })
        .join('\n');
  }
}
