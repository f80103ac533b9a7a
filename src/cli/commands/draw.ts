/** `draw`: pictures to scale, of a cinch on the side of the horse. */
import { Option, type Command } from 'commander';
import { addCinchOptions } from '../asked-cinch.ts';
import { pictureFormats, pictureUnits, type DrawOptions } from '../draw/asked.ts';
import { outOption, shopOption, whole, word } from '../options.ts';
import type { Session } from '../program.ts';

const examples = `
A picture shows the side of the barrel behind the elbow, as if its skin were
laid flat: the cinch, its buckle, latigo and ring, the back of the elbow with its
give or take, and the clearance at the nearest place. Shown are the best three.
With --style, --strands, --buckle or --length the cinch named here is shown
beside the best one; what it leaves open is taken as in "check". --wants and
--current show what the order wants or has now beside the best one.
A cinch that is refused is drawn, marked, and makes the exit code 1.

Examples:
  cinchwright draw order.yaml --out cinch.svg
  cinchwright draw order.yaml --wants --out cinch.svg
  cinchwright draw order.yaml --strands 21 --out cinch.svg
  cinchwright draw *.yaml --out-dir pictures`;

/** Adds the command. */
export function addDraw(program: Command, session: Session): void {
  const command = program
    .command('draw')
    .summary('draw the cinch on the horse, to scale')
    .description('Draws the cinches that suit each order on the side of the horse, to scale.')
    .argument('[files...]', 'order files')
    .addOption(
      new Option('--spec <rank>', 'draw only the spec of this rank').argParser(whole('--spec', 1, 999)),
    );
  addCinchOptions(command, 'draw')
    .option('--wants', 'draw what the order wants beside the best')
    .option('--current', 'draw what is ridden in now beside the best')
    .addOption(
      new Option('--format <name>', `draw as ${pictureFormats.join(', ')}`)
        .default('svg', 'svg')
        .argParser(word('--format', pictureFormats)),
    )
    .addOption(
      new Option('--units <name>', 'write lengths in in or cm')
        .default('in', 'in')
        .argParser(word('--units', pictureUnits)),
    )
    .addOption(shopOption())
    .addOption(outOption())
    .addOption(new Option('--out-dir <folder>', 'write each picture to a file of its own in this folder'))
    .addHelpText('after', examples)
    .action(async (files: string[], _: unknown, command: Command) => {
      const { draw } = await import('../draw/draw.ts');
      session.code = await draw(files, command.optsWithGlobals<DrawOptions>(), session.io);
    });
}
