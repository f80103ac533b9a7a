/** What printers are handed, and how the reader wants it. */
import type { Advice } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { PhotoWorth } from '../advice/photo-worth.ts';
import type { Simulated } from '../advice/simulate.ts';
import type { Surer } from '../horse/photo-surer.ts';
import type { Problem } from '../yaml/problem.ts';
import type { PhotoReading } from '../photo/read.ts';

/** An order that could not be read, and why. */
export interface Unread {
  readonly ok: false;
  readonly file: string;
  readonly order?: string | undefined;
  readonly problems: readonly Problem[];
}

/** One order's result in input order: its advice, or the problems that kept it from being read. */
export type SizeResult =
  | {
      readonly ok: true;
      readonly file: string;
      readonly advice: Advice;
      /** For the first specs, when a simulation was asked for; by rank, first is index 0. */
      readonly simulated?: readonly Simulated[] | undefined;
      /** The customer's own wish, judged in a line. */
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

/** A paper of an order, or why there is none, or the problems that kept the order from being read. */
export type PaperResult<P> =
  | {
      readonly ok: true;
      readonly file: string;
      readonly order: string;
      readonly paper: P | undefined;
      /** Why there is none; undefined when there is one. */
      readonly none: string | undefined;
    }
  | Unread;

/** What was found where the picture of an order should lie. */
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

/** What the photo of an order gives, or the problems that kept order or picture from being read. */
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
