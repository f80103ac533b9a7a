/** `materials`: what a backlog uses, what to buy, how to cut it. */
import type { Command } from 'commander';
import { backlogOf, tellLeftOut } from '../backlog-orders.ts';
import { guardInputs } from '../emit.ts';
import type { ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { dateOption, formatOption, outOption, paperOption, shopOption } from '../options.ts';
import { orderFiles } from '../order-files.ts';
import type { Session } from '../program.ts';
import { guardPdf } from '../pdf.ts';
import { printViews, type Format } from '../print.ts';
import type { Paper } from '../../pages/pdf/document.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';

interface MaterialsOptions {
  format: Format;
  shop?: string;
  out?: string;
  paper?: Paper;
  color: boolean;
  date?: string;
}

const help = `
For each order, what the customer asked for if it passes, else our pick. The
earliest due takes from the shelf first. One dye lot per order and color, no
splices. Small jobs get the best cutting plan; larger ones say how many spools
a better plan could save at most.

  cinchwright materials orders/
  cinchwright materials orders/ --format pdf --out materials.pdf`;

/** Adds the command. */
export function addMaterials(program: Command, session: Session): void {
  program
    .command('materials')
    .summary('cord and hardware to pull, buy and cut')
    .description('Lists cord and hardware to pull and buy, and which spool each piece is cut from.')
    .argument('[paths...]', 'order files, folders with them, or patterns')
    .addOption(dateOption())
    .addOption(formatOption())
    .addOption(paperOption())
    .addOption(shopOption())
    .addOption(outOption())
    .addHelpText('after', help)
    .action(async (paths: string[], _: unknown, command: Command) => {
      session.code = await printMaterials(paths, command.optsWithGlobals<MaterialsOptions>(), session.io);
    });
}

async function printMaterials(
  paths: readonly string[],
  options: MaterialsOptions,
  io: CliIo,
): Promise<ExitCode> {
  const files = await orderFiles(paths, io, 'materials');
  guardPdf(options, io);
  guardInputs(options.out, [...files, options.shop], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const written = options.date ?? io.today();
  const backlog = await backlogOf(files, { shop, day: written }, io);
  const { orders, results } = backlog;
  const { materialsOf } = await import('../../work/materials.ts');
  const materials = materialsOf(orders, shop, written);
  await printViews(
    {
      sheets: async () =>
        orders.length === 0
          ? []
          : [(await import('../../views/materials-sheet.ts')).materialsSheet(materials, results)],
      csv: async () => (await import('../../views/materials-data.ts')).materialsCsv(materials, results),
      json: async () => (await import('../../views/materials-data.ts')).materialsJson(materials, results),
    },
    { ...options, day: written },
    io,
  );
  return tellLeftOut(backlog, io, errorColor);
}
