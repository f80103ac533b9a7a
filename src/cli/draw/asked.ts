/** What `draw` can be asked, and what conflicts. */
import type { Paper } from '../../pages/pdf/document.ts';
import type { CinchOptions } from '../asked-cinch.ts';
import { CliFault, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';
import type { SayOptions } from '../said.ts';

export const pictureFormats = ['svg', 'png', 'jpeg', 'html', 'pdf'] as const;
export const views = ['side', 'flat'] as const;
export type PictureFormat = (typeof pictureFormats)[number];

export interface DrawOptions extends CinchOptions, SayOptions {
  readonly spec?: number;
  readonly wants?: true;
  readonly current?: true;
  readonly view?: (typeof views)[number];
  readonly template?: true;
  readonly onPhoto?: true;
  readonly photosFrom?: string;
  readonly format: PictureFormat;
  readonly paper?: Paper;
  readonly units: 'in' | 'cm';
  readonly shop?: string;
  readonly outDir?: string;
  readonly color: boolean;
}

/** Flat shows one cinch, side several. */
export const isFlat = ({ view, template }: Pick<DrawOptions, 'view' | 'template'>): boolean =>
  view === 'flat' || template === true;

/** Throws before anything is read. */
export function guardAsked(options: DrawOptions, io: CliIo): void {
  guardCinch(options);
  guardPhoto(options, io);
  guardFormat(options);
  guardOut(options, io);
}

function guardCinch(options: DrawOptions): void {
  const { spec, wants, current, style, strands, buckle, length } = options;
  const named = [style, strands, buckle, length].some((part) => part !== undefined);
  const told = wants === true || current === true;
  if (spec !== undefined && (named || told))
    throw new CliFault('--spec names one spec already: leave out the other cinches');
  if (named && told) throw new CliFault('you named a cinch already: leave out --wants and --current');
  if (isFlat(options) && wants === true && current === true)
    throw new CliFault('--view flat and --template draw one cinch: choose --wants or --current');
  if (options.template === true && options.view === 'side')
    throw new CliFault('a template is the cinch laid flat: leave out --view');
}

function guardPhoto(options: DrawOptions, io: CliIo): void {
  const { onPhoto, photosFrom, format, view, template, say } = options;
  if (onPhoto !== true) {
    if (photosFrom !== undefined) throw new CliFault('--photos-from goes with --on-photo');
    if (format === 'jpeg')
      throw new CliFault('a JPEG needs a photo: add --on-photo', {
        hint: 'Pictures are svg, png or html.',
      });
    return;
  }
  if (say !== undefined) throw new CliFault('an order from --say has no photo: leave out --on-photo');
  if (template === true || view !== undefined)
    throw new CliFault('--on-photo draws on the side of the horse: leave out --view and --template');
  if (format === 'svg' || format === 'pdf')
    throw new CliFault(`--on-photo makes jpeg, png or html, not ${format}`);
  if (photosFrom !== undefined && io.standsAt(photosFrom) !== 'directory')
    throw new CliFault(`--photos-from takes a folder, and "${printable(photosFrom)}" is not one`);
}

function guardFormat({ format, template, paper }: DrawOptions): void {
  if (template === true && (format === 'png' || format === 'html'))
    throw new CliFault(`a template prints at true size, and ${format} does not: use --format svg or pdf`);
  if (template !== true && format === 'pdf')
    throw new CliFault('a PDF needs a template: add --template', {
      hint: 'Pictures are svg, png or html.',
    });
  if (paper !== undefined && format !== 'pdf') throw new CliFault('--paper goes with --format pdf');
}

function guardOut({ format, out, outDir }: DrawOptions, io: CliIo): void {
  if (out !== undefined && outDir !== undefined) throw new CliFault('name --out or --out-dir, not both');
  if (outDir === undefined) {
    if (['png', 'jpeg', 'pdf'].includes(format) && (out === undefined || out === '-') && io.stdoutIsTerminal)
      throw new CliFault(`a ${format.toUpperCase()} cannot be shown on a terminal: name a file with --out`);
    return;
  }
  if (outDir === '') throw new CliFault('--out-dir needs the name of a folder');
  if (io.standsAt(outDir) === 'file')
    throw new CliFault(`--out-dir takes a folder, and "${printable(outDir)}" is a file`);
}
