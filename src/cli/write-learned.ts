/** Writes what was learned and recommended to a shop file. */
import type { Learned } from '../learn/learn.ts';
import { emit } from './emit.ts';
import { CliFault, exit, printable, type ExitCode } from './fault.ts';
import { readText } from './input.ts';
import type { CliIo } from './io.ts';
import { writing } from './system-error.ts';

interface Asked {
  readonly shop?: string;
  readonly write?: string;
  readonly inPlace?: true;
  readonly until: string;
}

/** Errors: the shop file cannot be edited. */
export async function writeLearned(learned: Learned, asked: Asked, io: CliIo): Promise<ExitCode> {
  const target = asked.inPlace === true ? asked.shop : asked.write;
  if (target === undefined) return exit.good;
  const { entriesOf } = await import('../learn/entries.ts');
  const entries = entriesOf(learned, asked.until);
  if (entries.length === 0) {
    io.stderr(`cinchwright: we recommend nothing, so nothing was written to ${printable(target)}\n`);
    return exit.noSpec;
  }
  const { withEntries } = await import('../order/edit-shop.ts');
  if (asked.shop === undefined) {
    const head = '# Written by "cinchwright learn": these blocks go into a shop file.\n';
    emit(head + withEntries('', entries).trimStart(), target, io);
    return exit.good;
  }
  const old = await readText(asked.shop, io);
  if (!old.ok)
    throw new CliFault(`cannot read the shop file ${printable(asked.shop)}: ${old.why}`, {
      code: exit.input,
    });
  const text = withEntries(old.text, entries);
  const { readShop } = await import('../order/read-shop.ts');
  const read = readShop(text, asked.shop);
  const numbers = entries.filter(({ block }) => block === 'model');
  if (
    !read.ok ||
    numbers.some(({ key, value }) => `${String(read.shop.model[key as 'stretch'])} in` !== value)
  ) {
    const blocks = entries.map(({ block, key, value }) => `${block}: { ${key}: ${value} }`).join('\n');
    throw new CliFault(`the shop file ${printable(asked.shop)} cannot be edited: nothing was written`, {
      code: exit.input,
      hint: `Write it by hand:\n${blocks}`,
    });
  }
  if (asked.inPlace !== true) emit(text, target, io);
  else replaceAsked(text, target, io);
  return exit.good;
}

/** `emit` never overwrites a shop; here the user asked. */
function replaceAsked(text: string, shop: string, io: CliIo): void {
  writing(shop, () => {
    io.replaceFile(shop, text);
  });
  io.stderr(`wrote ${printable(shop)}\n`);
}
