/** Results as printers get them. */
import type { Advice } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { PhotoWorth } from '../advice/photo-worth.ts';
import type { Simulated } from '../advice/simulate.ts';
import type { Surer } from '../horse/photo-surer.ts';
import type { Problem } from '../yaml/problem.ts';
import type { PhotoReading } from '../photo/read/reading.ts';

export interface Unread {
  readonly ok: false;
  readonly file: string;
  readonly order?: string | undefined;
  readonly problems: readonly Problem[];
}

export type SizeResult =
  | {
      readonly ok: true;
      readonly file: string;
      readonly advice: Advice;
      /** By rank; set by `--simulate`. */
      readonly simulated?: readonly Simulated[] | undefined;
      readonly wants?: Checked | undefined;
    }
  | Unread;

export type CheckResult =
  | {
      readonly ok: true;
      readonly file: string;
      readonly advice: Advice;
      readonly checked: readonly Checked[];
    }
  | Unread;

export type PaperResult<P> =
  | {
      readonly ok: true;
      readonly file: string;
      readonly order: string;
      readonly paper: P | undefined;
      readonly none: string | undefined;
    }
  | Unread;

/** What we found at the picture's place. */
export type PictureSeen =
  | { readonly there: false }
  | {
      readonly there: true;
      readonly kind: 'jpeg' | 'png';
      readonly width: number;
      readonly height: number;
      /** Exif, 1 to 8. */
      readonly orientation: number;
    };

export type PhotoResult =
  | {
      readonly ok: true;
      readonly file: string;
      readonly advice: Advice;
      readonly photo: PhotoReading;
      readonly picture: PictureSeen;
      readonly worth: PhotoWorth;
      readonly surer: readonly Surer[];
    }
  | (SizeResult & { readonly ok: false });
