/** Words plus quantities: numbers stay numbers until a printer puts them in the reader's units. */

export interface Quantity {
  readonly value: number;
  readonly as:
    'length' | 'fine-length' | 'gap' | 'overlap' | 'chance' | 'count' | 'pressure' | 'area' | 'ratio';
}

export interface Phrase {
  readonly words: readonly string[];
  readonly values: readonly (Quantity | string)[];
}

/** Finished inches: printed to the quarter. */
export const len = (value: number): Quantity => ({ value, as: 'length' });
/** Computed inches: eighths on a screen, decimals for scripts. */
export const dist = (value: number): Quantity => ({ value, as: 'fine-length' });
/** Inches of room: rounded down on a screen. */
export const gap = (value: number): Quantity => ({ value, as: 'gap' });
/** Inches of overlap: rounded up on a screen. */
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

/** "both", "all 3". */
export const allOf = (count: number): string => (count === 2 ? 'both' : `all ${String(count)}`);

/** Template tag: say`${dist(1.24)} from the elbow`. Formats nothing yet. */
export function say(words: TemplateStringsArray, ...values: (Quantity | string)[]): Phrase {
  return { words, values };
}

/** Commas, and a semicolon before the last. */
export const joined = (phrases: readonly Phrase[]): Phrase =>
  inARow(phrases, (i) => (i === phrases.length - 1 ? '; ' : ', '));

/** Joined by spaces, or by `before`. */
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
