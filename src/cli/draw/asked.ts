/** What `draw` can be asked for, and what does not go together. */
import path from 'node:path';
import type { Paper } from '../../print/pages.ts';
import type { CinchOptions } from '../asked-cinch.ts';
import { CliFault, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';

export const pictureFormats = ['svg', 'png', 'html', 'pdf'] as const;
export const views = ['side', 'flat'] as const;
export type PictureFormat = (typeof pictureFormats)[number];

export interface DrawOptions extends CinchOptions {
  readonly spec?: number;
  readonly wants?: true;
  readonly current?: true;
  readonly view?: (typeof views)[number];
  readonly template?: true;
  readonly format?: PictureFormat;
  readonly paper?: Paper;
  readonly units: 'in' | 'cm';
  readonly shop?: string;
  readonly out?: string;
  readonly outDir?: string;
  readonly color: boolean;
}

/** The format, SVG when nobody said. */
export const formatOf = ({
  format = 'svg',
}: {
  readonly format?: PictureFormat | undefined;
}): PictureFormat => format;

/** Laid flat one cinch is shown, on the side of the horse several. */
export const isFlat = ({ view, template }: Pick<DrawOptions, 'view' | 'template'>): boolean =>
  view === 'flat' || template === true;

/** Refuses what cannot be done before anything is read. */
export function guardAsked(options: DrawOptions, io: CliIo): void {
  guardCinch(options);
  guardFormat(options);
  guardOut(options, io);
}

function guardCinch(options: DrawOptions): void {
  const { spec, wants, current, style, strands, buckle, length } = options;
  const named = [style, strands, buckle, length].some((part) => part !== undefined);
  const told = wants === true || current === true;
  if (spec !== undefined && (named || told))
    throw new CliFault('--spec names one spec already: leave out the other cinches');
  if (named && told) throw new CliFault('a cinch is named here already: leave out --wants and --current');
  if (isFlat(options) && wants === true && current === true)
    throw new CliFault('laid flat, one cinch is drawn: choose --wants or --current');
  if (options.template === true && options.view === 'side')
    throw new CliFault('a template is the cinch laid flat: leave out --view');
}

function guardFormat({ format, template, paper, out }: DrawOptions): void {
  const kind = formatOf({ format });
  if (template === true && (kind === 'png' || kind === 'html'))
    throw new CliFault(`a template is true to size, which ${kind} does not keep: take --format svg or pdf`);
  if (template !== true && kind === 'pdf')
    throw new CliFault('--format pdf goes with --template', { hint: 'Pictures are svg, png or html.' });
  if (paper !== undefined && kind !== 'pdf') throw new CliFault('--paper goes with --format pdf');
  if (format !== undefined || out === undefined) return;
  const ending = path.extname(out).slice(1).toLowerCase();
  const meant = pictureFormats.find((each) => each === ending && each !== 'svg');
  if (meant !== undefined)
    throw new CliFault(`${printable(out)} would hold SVG: say --format ${meant} as well`);
}

function guardOut({ format, out, outDir }: DrawOptions, io: CliIo): void {
  const kind = formatOf({ format });
  if (out !== undefined && outDir !== undefined) throw new CliFault('name --out or --out-dir, not both');
  if (outDir === undefined) {
    if ((kind === 'png' || kind === 'pdf') && (out === undefined || out === '-') && io.stdoutIsTerminal)
      throw new CliFault(`a ${kind.toUpperCase()} cannot be shown on a terminal: name a file with --out`);
    return;
  }
  if (outDir === '') throw new CliFault('--out-dir needs the name of a folder');
  if (io.standsAt(outDir) !== 'directory')
    throw new CliFault(`there is no folder ${printable(outDir)}`, { hint: 'Make it first.' });
}
