/** Declares a key of the order: its reader, blank line and spoken words. */
import * as z from 'zod/mini';
import type { Inches } from '../units/length.ts';
import { block, listOf, oneOf, type Leaf } from './leaves.ts';
import { measure, type LengthRange } from './measure.ts';
import type { Sense } from './near-in-sense.ts';

export interface Key<S extends z.ZodMiniType = z.ZodMiniType> {
  readonly read: S;
  /** Needed, or has a default. */
  readonly always?: true;
  /** In the blank form; blocks show their keys' answers. */
  readonly example?: string;
  readonly open?: string;
  /** After the example, and above the line. */
  readonly note?: string;
  readonly above?: string;
  /** Usual one first; without any, the key cannot be spoken. */
  readonly labels?: readonly string[];
  /** May also come before a length. */
  readonly of?: string;
  /** Answers, and what people say for them. */
  readonly words?: readonly string[];
  readonly sense?: Sense;
  /** Other answers: alone, or only with a label. */
  readonly alone?: RegExp;
  readonly labeled?: RegExp;
  readonly min?: Inches;
  readonly max?: Inches;
  readonly keys?: Keys;
}

export type Keys = Readonly<Record<string, Key>>;

type Told = Omit<Key, 'read'>;

/** With its unit. */
export const length = <const T extends Told & LengthRange>(told: T): T & { readonly read: Leaf<Inches> } => ({
  ...told,
  read: measure(told),
});

interface Words<W extends string> extends Told {
  readonly about: string;
  readonly words: readonly W[];
  readonly sense?: Sense<NoInfer<W>>;
}

/** One of some words. */
export const word = <const W extends string>(told: Words<W>) => ({
  note: told.words.join(' | '),
  ...told,
  read: oneOf(told.about, told.words, told.sense),
});

/** Some of them, none by default; `each` names one. */
export const words = <const W extends string>(told: Words<W> & { readonly each: string }) => ({
  note: told.words.join(', '),
  ...told,
  always: true as const,
  read: orElse<readonly W[]>(listOf(told.about, oneOf(told.each, told.words, told.sense)), []),
});

/** A default for what is not said. */
export const orElse = <T>(reader: z.ZodMiniType<T>, value: T) =>
  z.pipe(
    z.optional(reader),
    z.transform((read: T | undefined): T => read ?? value),
  );

type Readers<K extends Keys> = {
  [N in keyof K]: K[N] extends { always: true } ? K[N]['read'] : z.ZodMiniOptional<K[N]['read']>;
};

/** "ring-to-ring" becomes ringToRing. */
type Camel<S> = S extends `${infer A}-${infer B}` ? `${A}${Capitalize<Camel<B>>}` : S;
type Named<T> = { [N in keyof T as Camel<N>]: T[N] };

/** Reads a block under the program's names. */
export function blockOf<K extends Keys>(about: string, keys: K, sample?: string) {
  const readers = Object.entries(keys).map(([name, { read, always }]) => [
    name,
    always === true ? read : z.optional(read),
  ]);
  const schema = block(about, Object.fromEntries(readers) as Readers<K>, sample);
  return z.pipe(
    schema,
    z.transform((written: z.output<typeof schema>) => named(written)),
  );
}

function named<T extends object>(written: T): Named<T> {
  const entries = Object.entries(written).map(([name, value]): [string, unknown] => [camel(name), value]);
  return Object.fromEntries(entries) as Named<T>;
}

const camel = (name: string): string => name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

export type PlacedKey = Key & { readonly path: readonly string[] };

/** Blocks before their keys. */
export function allKeys(keys: Keys, before: readonly string[] = []): PlacedKey[] {
  return Object.entries(keys).flatMap(([name, key]) => {
    const path = [...before, name];
    return [{ ...key, path }, ...allKeys(key.keys ?? {}, path)];
  });
}
