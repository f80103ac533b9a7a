/** `draw`: pictures to scale, of a cinch on the side of the horse or laid flat, and templates at true size. */
import { Option, type Command } from 'commander';
import { addCinchOptions } from '../asked-cinch.ts';
import { pictureFormats, views, type DrawOptions } from '../draw/asked.ts';
import { outOption, paperOption, shopOption, unitsOption, whole, word } from '../options.ts';
import type { Session } from '../program.ts';
import { addSayOptions } from '../said.ts';

const examples = `
A picture shows the side of the barrel behind the elbow as if its skin were laid
flat: cinch, buckle, latigo and ring, the back of the elbow with its give or
take, and the clearance where it is least. Shown are the best three. With
--style, --strands, --buckle or --length the cinch named here is shown beside
the best one, completed as "check" does; so are --wants and --current. A cinch
that is refused is drawn and marked, and the exit code is 1.

--view flat shows one cinch as it lies on the bench, with its stations and bars:
the one that "ticket" takes, unless another is named.
--template is the same at its true size: one SVG as large as it is, or a PDF
over several sheets. Print it at 100 % and measure the bars on every sheet.

--on-photo lays the cinch on the side photo of the order, by the marks of its
"photo" block: the part round the girth, as JPEG if nothing else is said, under
2 MB, without what the camera noted of time and place. The first cinch is drawn
whole, of others the edges. It shows no length, and is as sure as the marks.

An SVG, PNG or JPEG holds one picture; an HTML page or a PDF holds those of all
orders. With --out-dir each order gets a file of its own, named after it; the
folder is made when it is not there.

Examples:
  cinchwright draw order.yaml --out cinch.png
  cinchwright draw order.yaml --wants --out cinch.svg
  cinchwright draw order.yaml --strands 21 --out cinch.html
  cinchwright draw order.yaml --view flat --out bench.svg
  cinchwright draw order.yaml --template --out template.pdf
  cinchwright draw order.yaml --on-photo --out juniper.jpg
  cinchwright draw order.yaml --on-photo --out juniper.html
  cinchwright draw orders --format png --out-dir pictures
  cinchwright draw --say "15.2 hh stock, 7/8, round" --out cinch.png`;

/** Adds the command. */
export function addDraw(program: Command, session: Session): void {
  const command = program
    .command('draw')
    .summary('draw the cinch on the horse, to scale')
    .description(
      'Draws the cinches that suit each order, to scale: on the side of the horse, or laid flat for the bench.',
    )
    .argument('[paths...]', 'order files, folders with them, or patterns')
    .addOption(
      new Option('--spec <rank>', 'draw only the spec of this rank').argParser(whole('--spec', 1, 999)),
    );
  addCinchOptions(addSayOptions(command), 'draw')
    .option('--wants', 'draw what the order wants')
    .option('--current', 'draw what is ridden in now')
    .addOption(
      new Option('--view <name>', 'side: on the horse; flat: laid on the bench (default: side)').argParser(
        word('--view', views),
      ),
    )
    .option('--template', 'draw the cinch flat at its true size')
    .option('--on-photo', "draw on the order's side photo")
    .option('--photos-from <folder>', 'look for the photos in this folder, not beside the order files')
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
    .addOption(new Option('--out-dir <folder>', 'write each picture to a file of its own in this folder'))
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
