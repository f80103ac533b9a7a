/** A cinch named on the command line. */
import { Option, type Command } from 'commander';
import type { Checked } from '../advice/check.ts';
import type { CinchAsked, Shop, Style } from '../order/types.ts';
import { styleIds as styles } from '../cinch/styles.ts';
import { askedStrands, buckleOf, lengthOf } from './asked.ts';
import { word } from './options.ts';

export interface CinchOptions {
  readonly style?: Style;
  readonly strands?: number;
  readonly buckle?: string;
  readonly length?: string;
}

/** `does` is the command's verb: "judge". */
export const addCinchOptions = (command: Command, does: string): Command =>
  command
    .addOption(new Option('--style <name>', styles.join(', ')).argParser(word('--style', styles)))
    .addOption(new Option('--strands <n>', `${does} this many strands`).argParser(askedStrands))
    .option('--buckle <name>', 'a buckle of the shop file')
    .option('--length <length>', 'such as "32 in"');

/** undefined when none is named. */
export async function askedOf(options: CinchOptions, shop: Shop): Promise<CinchAsked | undefined> {
  const { style, strands, buckle, length } = options;
  if ([style, strands, buckle, length].every((part) => part === undefined)) return undefined;
  return {
    style,
    strands,
    buckle: buckle === undefined ? undefined : buckleOf(buckle, shop),
    length: length === undefined ? undefined : await lengthOf(length),
  };
}

export interface ToCheck extends Pick<Checked, 'which' | 'kept'> {
  cinch: CinchAsked;
}

/** The order fills gaps; its buckle only with its own strands. */
export function overWants(asked: CinchAsked, wants: CinchAsked = {}): ToCheck {
  const parts = [
    'style',
    'strands',
    'length',
    ...(asked.strands === undefined ? ['buckle' as const] : []),
  ] as const;
  const kept = parts.filter((part) => asked[part] === undefined && wants[part] !== undefined);
  const fromOrder = Object.fromEntries(kept.map((part) => [part, wants[part]])) as CinchAsked;
  return { which: 'command line', cinch: { ...asked, ...fromOrder }, kept };
}
