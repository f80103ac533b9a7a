/** Words plus quantities: a reason keeps its numbers as numbers until a printer puts them in the reader's units. */

/** A number with what it is, so that a printer can choose unit and rounding. A `length` prints to the quarter, a `fine-length` finer, a `gap` finer and never too large, an `overlap` never too small, a `chance` as percent. */
export interface Quantity {
  readonly value: number;
  readonly as:
    'length' | 'fine-length' | 'gap' | 'overlap' | 'chance' | 'count' | 'pressure' | 'area' | 'ratio';
}

export interface Phrase {
  readonly words: readonly string[];
  readonly values: readonly (Quantity | string)[];
}

/** A length of a finished thing, in inches: prints as the nearest quarter. */
export const len = (value: number): Quantity => ({ value, as: 'length' });
/** A computed distance, in inches: prints to the eighth on a screen, with decimals for scripts. */
export const dist = (value: number): Quantity => ({ value, as: 'fine-length' });
/** Room that there is, in inches: rounded down on a screen. */
export const gap = (value: number): Quantity => ({ value, as: 'gap' });
/** How far something reaches too far, in inches: rounded up on a screen. */
export const overlap = (value: number): Quantity => ({ value, as: 'overlap' });
/** A probability, 0 to 1. */
export const chance = (value: number): Quantity => ({ value, as: 'chance' });
/** A whole number of things. */
export const count = (value: number): Quantity => ({ value, as: 'count' });
/** A pressure index in psi. */
export const psi = (value: number): Quantity => ({ value, as: 'pressure' });
/** An area in square inches. */
export const area = (value: number): Quantity => ({ value, as: 'area' });
/** A plain ratio. */
export const ratio = (value: number): Quantity => ({ value, as: 'ratio' });

/** "a, b and c". */
export function listed(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1) ?? ''}`;
}

/** "1 order", "2 orders". */
export const plural = (count: number, one: string, many = `${one}s`): string =>
  `${String(count)} ${count === 1 ? one : many}`;

/** Template tag: say`stands ${dist(1.24)} from the elbow`. Cheap: nothing is formatted here. */
export function say(words: TemplateStringsArray, ...values: (Quantity | string)[]): Phrase {
  return { words, values };
}

/** Phrases one after the other: commas, and a semicolon before the last. */
export const joined = (phrases: readonly Phrase[]): Phrase =>
  inARow(phrases, (i) => (i === phrases.length - 1 ? '; ' : ', '));

/** Phrases one after the other, each a sentence, or with what stands before each but the first. */
export function inARow(phrases: readonly Phrase[], before: (i: number) => string = () => ' '): Phrase {
  const words: string[] = [''];
  const values: Phrase['values'][number][] = [];
  phrases.forEach((phrase, i) => {
    words[words.length - 1] = `${words.at(-1) ?? ''}${i === 0 ? '' : before(i)}${phrase.words[0] ?? ''}`;
    phrase.values.forEach((value, j) => {
      values.push(value);
      words.push(phrase.words[j + 1] ?? '');
    });
  });
  return { words, values };
}
