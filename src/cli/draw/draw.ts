/** One run of `draw`: orders in, pictures out, each to its own place. */
import { askedOf } from '../asked-cinch.ts';
import { emit, guardInputs } from '../emit.ts';
import { exit, printable, worse, type ExitCode } from '../fault.ts';
import { namesOf, readEntries } from '../input.ts';
import type { CliIo } from '../io.ts';
import { tellFaults } from '../problems.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import type { DrawOptions } from './asked.ts';
import { guardAsked, guardCount, placesFor } from './places.ts';
import { picturesOf, type Picture } from './pictures.ts';

/** Draws all orders that can be drawn, and tells of the rest. */
export async function draw(files: readonly string[], options: DrawOptions, io: CliIo): Promise<ExitCode> {
  guardAsked(options, io);
  const names = namesOf(files, io, 'draw');
  guardInputs(options.out, [...names, options.shop], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const asked = await askedOf(options, shop);
  const entries = await readEntries(names, io);
  const orders = entries.flatMap((entry) => (entry.ok ? [entry.order] : []));
  guardCount(orders.length, options);
  const made = await picturesOf(orders, { options, shop, asked });
  const pictures = made.filter((each) => each.scene !== undefined);
  const places = placesFor(pictures, options);
  guardEach(places, [...names, options.shop], io);
  for (const [i, picture] of pictures.entries()) await write(picture, places[i], io);
  const told = await tellFaults(entries, io, errorColor);
  let code: ExitCode = exit.good;
  for (const { order, none, refused } of made) {
    if (none !== undefined) io.stderr(`cinchwright: order ${printable(order)}: ${none}\n`);
    if (none !== undefined || refused) code = exit.noSpec;
  }
  return worse(told, code);
}

function guardEach(
  places: readonly (string | undefined)[],
  inputs: readonly (string | undefined)[],
  io: CliIo,
): void {
  for (const place of places) guardInputs(place, inputs, io);
}

async function write({ scene }: Picture, place: string | undefined, io: CliIo): Promise<void> {
  if (scene === undefined) return;
  const { sceneSvg } = await import('../../picture/svg.ts');
  emit(sceneSvg(scene), place, io);
}
