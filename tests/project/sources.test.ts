/** Every cited source exists, and every source is used. */
import { describe, expect, test } from 'vitest';
import { errata } from '../../src/numbers/errata.ts';
import { sources } from '../../src/numbers/sources.ts';
import { citations } from '../support/docs/citations.ts';
import { repoText } from '../support/run-cli.ts';
import { keptFor, namedInWords } from './named-in-words.ts';

const known = Object.keys(sources);
const cited = new Set(citations().map(({ source }) => source));

test('every source that a number, a rule, a fact or an erratum cites is in the list', () => {
  const stray = citations().filter(({ source }) => !known.includes(source));
  expect(stray.map(({ by, name, source }) => `${by} ${name} cites ${source}`)).toEqual([]);
});

test('every source is cited, or named in words, or said to be kept', () => {
  const idle = known.filter((id) => !cited.has(id) && !(id in namedInWords) && !(id in keptFor));
  expect(idle, 'cite it, or say in tests/project/named-in-words.ts where its word is used').toEqual([]);
});

test.each(Object.entries(namedInWords))('%s is named where we say so', (id, [file, words]) => {
  expect(known).toContain(id);
  expect(repoText(file)).toContain(words);
});

test('what is kept is in the list', () => {
  expect(Object.keys(keptFor).filter((id) => !known.includes(id))).toEqual([]);
});

describe('errata', () => {
  test('each has a name of its own, its sources, and says what is done', () => {
    expect(new Set(errata.map(({ id }) => id)).size).toBe(errata.length);
    for (const { id, sources: named, says, here } of errata) {
      expect(named.length, id).toBeGreaterThan(0);
      expect(says.length, id).toBeGreaterThan(20);
      expect(here.length, id).toBeGreaterThan(5);
    }
  });
});
