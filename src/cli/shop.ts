/** The shop: built-in, or a file. */
import type { Shop } from '../order/types.ts';
import { CliFault, exit, printable } from './fault.ts';
import { readText } from './input.ts';
import type { CliIo } from './io.ts';
import { problemsOnStderr } from './problems.ts';

/** Errors: unreadable or faulty. */
export async function shopOf(file: string | undefined, io: CliIo, color: boolean): Promise<Shop> {
  if (file === undefined) return (await import('../cinch/default-shop.ts')).defaultShop;
  if (file === '')
    throw new CliFault('--shop takes a file, and its name is empty', {
      hint: 'Check the quotes on the command line.',
    });
  const read = file === '-' ? undefined : await readText(file, io);
  if (read === undefined) throw new CliFault('--shop takes a file; standard input is for orders');
  if (!read.ok) {
    throw new CliFault(`cannot read the shop file ${printable(file)}: ${read.why}`, { code: exit.input });
  }
  const { readShop } = await import('../order/read-shop.ts');
  const shop = readShop(read.text, file);
  if (shop.ok) return shop.shop;
  await problemsOnStderr(shop.problems, io, color);
  throw new CliFault(`the shop file ${printable(file)} has problems: nothing was done`, { code: exit.input });
}
