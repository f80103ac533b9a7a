/** `draw`: pictures to scale and true-size templates. */
import { Option, type Command } from 'commander';
import { addCinchOptions } from '../asked-cinch.ts';
import { pictureFormats, views, type DrawOptions } from '../draw/asked.ts';
import { outOption, paperOption, shopOption, unitsOption, whole, word } from '../options.ts';
import type { Session } from '../program.ts';
import { addSayOptions } from '../said.ts';

const examples = `
Shows our best three, or the cinch named. --template prints at 100% on several
sheets. --on-photo needs the marks of a photo. Exit 1 if one is ruled out.

  cinchwright draw order.yaml --out cinch.png
  cinchwright draw order.yaml --strands 21 --out cinch.html
  cinchwright draw order.yaml --template --out template.pdf
  cinchwright draw orders --format png --out-dir pictures`;

/** Adds the command. */
export function addDraw(program: Command, session: Session): void {
  const command = program
    .command('draw')
    .summary('picture to scale, on the horse or flat')
    .description('Draws cinches to scale: on the horse, flat for the bench, or on a side photo.')
    .argument('[paths...]', 'order files, folders with them, or patterns')
    .addOption(new Option('--spec <rank>', 'only this rank').argParser(whole('--spec', 1, 999)));
  addCinchOptions(addSayOptions(command), 'draw')
    .option('--wants', 'the cinch asked for')
    .option('--current', 'the current cinch')
    .addOption(
      new Option('--view <name>', 'side (on the horse) or flat (default side)').argParser(
        word('--view', views),
      ),
    )
    .option('--template', 'flat, at true size')
    .option('--on-photo', "on the order's side photo")
    .option('--photos-from <folder>', 'look for the photos in this folder')
    .addOption(
      new Option(
        '--format <name>',
        `draw as ${pictureFormats.join(', ')}; pdf is for templates, jpeg for photos`,
      )
        .default('svg', 'svg')
        .argParser(word('--format', pictureFormats)),
    )
    .addOption(paperOption())
    .addOption(unitsOption('write lengths in in or cm'))
    .addOption(shopOption())
    .addOption(outOption())
    .addOption(new Option('--out-dir <folder>', 'one file per picture in this folder'))
    .addHelpText('after', examples)
    .action(async (paths: string[], _: unknown, command: Command) => {
      const asked = command.optsWithGlobals<DrawOptions>();
      const unsaid = command.getOptionValueSource('format') === 'default';
      const options: DrawOptions = unsaid && asked.onPhoto === true ? { ...asked, format: 'jpeg' } : asked;
      const run =
        options.onPhoto === true
          ? (await import('../draw/on-photo.ts')).drawOnPhoto
          : (await import('../draw/draw.ts')).draw;
      session.code = await run(paths, options, session.io);
    });
}
