/** Customer messages as Markdown, with a rule between them. */
import { byCustomer, type AskedOrder } from '../words/about-ask.ts';
import { messageFor, shortMessage, type Piece } from './ask-message.ts';
import { document, escaped, list } from '../pages/markdown.ts';

/** One message per customer with a question. */
export function askMarkdown(results: readonly AskedOrder[], long: boolean): string {
  const messages = byCustomer(results)
    .map(({ orders }) => (long ? messageFor(orders) : shortMessage(orders)))
    .filter((pieces) => pieces.length > 0);
  if (messages.length === 0) return '';
  return document(messages.flatMap((pieces, i) => [...(i === 0 ? [] : ['---']), ...pieces.map(markdownOf)]));
}

function markdownOf(piece: Piece): string {
  switch (piece.kind) {
    case 'paragraph':
      return escaped(piece.text);
    case 'heading':
      return `## ${escaped(piece.text)}`;
    case 'list':
      return list(piece.items.map(escaped));
    case 'steps':
      return piece.items
        .map(
          ({ lead, text }, i) =>
            `${String(i + 1)}. ${lead === '' ? '' : `**${escaped(lead)}** `}${escaped(text)}`,
        )
        .join('\n');
  }
}
