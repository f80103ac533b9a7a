/** What `draw` can be asked for. */
import type { CinchOptions } from '../asked-cinch.ts';

export const pictureFormats = ['svg'] as const;
export const pictureUnits = ['in', 'cm'] as const;
export type PictureFormat = (typeof pictureFormats)[number];

export interface DrawOptions extends CinchOptions {
  readonly spec?: number;
  readonly wants?: true;
  readonly current?: true;
  readonly format: PictureFormat;
  readonly units: 'in' | 'cm';
  readonly shop?: string;
  readonly out?: string;
  readonly outDir?: string;
  readonly color: boolean;
}
