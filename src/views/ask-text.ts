/** Customer messages as plain text for mail, with a line between them. */
import { byCustomer, type AskedOrder } from '../words/about-ask.ts';
import { messageFor, shortMessage, type Piece } from './ask-message.ts';
import { wrap } from '../units/text.ts';

/** Columns; short enough to survive quoting in replies. */
const WIDTH = 72;

/** One message per customer with a question. */
export function askText(results: readonly AskedOrder[], long: boolean): string {
  const messages = byCustomer(results)
    .map(({ orders }) => (long ? messageFor(orders) : shortMessage(orders)))
    .filter((pieces) => pieces.length > 0);
  return messages.map((pieces) => `${pieces.map(textOf).join('\n\n')}\n`).join(`\n${'='.repeat(WIDTH)}\n\n`);
}

function textOf(piece: Piece): string {
  switch (piece.kind) {
    case 'paragraph':
      return wrap(piece.text, WIDTH).join('\n');
    case 'heading':
      return wrap(`${piece.text}:`, WIDTH).join('\n');
    case 'list':
      return piece.items.flatMap((text) => wrap(`- ${text}`, WIDTH, { first: 0, rest: 2 })).join('\n');
    case 'steps':
      return piece.items
        .map(({ lead, text }, i) =>
          wrap(`${String(i + 1)}. ${lead}${lead === '' ? '' : ' '}${text}`, WIDTH, {
            first: 0,
            rest: 3,
          }).join('\n'),
        )
        .join('\n\n');
  }
}
