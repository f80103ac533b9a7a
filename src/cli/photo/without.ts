/** Reports orders without a photo block. */
import { CliFault, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';

export interface Lack {
  readonly nothing: string;
  readonly hint: string;
}

/** On standard error. Throws when no other order is `useful`. */
export function tellWithout(
  orders: readonly string[],
  { nothing, hint, useful }: Lack & { useful: boolean },
  io: CliIo,
): void {
  const names = orders.map(printable);
  const which = names.length === 1 ? `order ${names.join('')} has` : `orders ${names.join(', ')} have`;
  const message = `${nothing}: ${which} no "photo" block`;
  if (!useful) throw new CliFault(message, { hint });
  io.stderr(`cinchwright: ${message}\n`);
}
