/** A rule in sentences, and on whose word. */
import type { AnyRule, Evidence } from '../rules/rule.ts';
import { sources, type Source } from '../numbers/sources.ts';
import { judgementWords, ruleName } from './words.ts';

/** First keys, each once: "ring" of "ring.x". */
export const firstKeys = (paths: readonly string[]): string[] => [
  ...new Set(paths.map((path) => path.replace(/[.?].*$/, ''))),
];

/** "refused, poor, acceptable or good". */
export const canText = ({ can }: AnyRule): string =>
  can.map((judgement) => judgementWords[judgement].word).join(', ');

/** Whether it can rule a cinch out. */
export const mayRefuse = ({ can }: AnyRule): boolean => can.includes('refuse');

/** Kind, source, content. */
export function evidenceText(evidence: Evidence): string {
  const source = sourceText(evidence.source);
  switch (evidence.basis) {
    case 'published':
      return `published: ${source} (${evidence.where})`;
    case 'practice': {
      const dissent = evidence.dissent === undefined ? '' : `: ${evidence.dissent}`;
      // A title would add nothing to "common practice".
      const from = evidence.source === 'common-practice' ? '' : ` (${source})`;
      return `trade practice, ${evidence.agreement}${dissent}${from}`;
    }
    case 'choice':
      return `our own choice: ${evidence.why}${evidence.source === 'engineering-choice' ? '' : ` (${source})`}`;
  }
}

/** "published, practice". */
export const basisText = ({ evidence }: AnyRule): string =>
  [...new Set(evidence.map(({ basis }) => basis))].join(', ');

function sourceText(id: string): string {
  const known: Readonly<Record<string, Source>> = sources;
  const source = Object.hasOwn(known, id) ? known[id] : undefined;
  if (source === undefined) return ruleName(id);
  const { title, year, where } = source;
  const place = [where, year === undefined ? undefined : String(year)].filter((part) => part !== undefined);
  return place.length === 0 ? title : `${title}, ${place.join(' ')}`;
}
