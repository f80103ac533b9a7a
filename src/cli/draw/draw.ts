/** Runs `draw`: orders in, pictures out. */
import { askedOf } from '../asked-cinch.ts';
import { emit, emitBytes, guardInputs, tellNotWritten } from '../emit.ts';
import { worse, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { lackingText } from '../pdf.ts';
import { orderFiles } from '../order-files.ts';
import { tellFaults } from '../problems.ts';
import { inputsOf } from '../said.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import { guardAsked, type DrawOptions } from './asked.ts';
import { contentOf } from './content.ts';
import { tellNone } from './none.ts';
import { picturesOf } from './pictures.ts';
import { guardCount, makePlace, outputsFor } from './places.ts';

/** Reports orders it cannot draw. */
export async function draw(paths: readonly string[], options: DrawOptions, io: CliIo): Promise<ExitCode> {
  guardAsked(options, io);
  const { names, readAll } = await inputsOf(paths, options, { io, command: 'draw', find: orderFiles });
  const inputs = [...names, options.shop];
  guardInputs(options.out, inputs, io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const asked = await askedOf(options, shop);
  const entries = await readAll(shop);
  const orders = entries.flatMap((entry) => (entry.ok ? [entry.order] : []));
  guardCount(orders.length, options);
  const made = await picturesOf(orders, { options, shop, asked });
  const pictures = made.flatMap(({ picture }) => picture ?? []);
  const outputs = outputsFor(pictures, options);
  for (const { place } of outputs) guardInputs(place, inputs, io);
  if (outputs.length > 0) makePlace(options, io);
  for (const output of outputs) {
    const { content, lacking } = await contentOf(output.pictures, { options, day: io.today() });
    if (typeof content === 'string') emit(content, output.place, io);
    else emitBytes(content, output.place, io);
    if (lacking.length > 0) io.stderr(`cinchwright: ${lackingText(lacking, 'picture')}\n`);
  }
  const told = await tellFaults(entries, io, errorColor);
  if (outputs.length === 0) tellNotWritten(options.out, io);
  return worse(told, tellNone(made, io));
}
