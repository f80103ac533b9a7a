/** Who cites which source: model numbers, rules, the girth fit, errata. */
import { errata } from '../../../src/numbers/errata.ts';
import { askingNumbers } from '../../../src/numbers/asking-numbers.ts';
import { benchNumbers } from '../../../src/numbers/bench-numbers.ts';
import { girthByCondition, heightGirthFit } from '../../../src/numbers/girth-fit.ts';
import { learningNumbers } from '../../../src/numbers/learning-numbers.ts';
import { modelNumbers } from '../../../src/numbers/numbers.ts';
import { rules } from '../../../src/rules/registry.ts';

export interface Citation {
  readonly source: string;
  readonly by: 'numbers' | 'rules' | 'facts' | 'errata';
  readonly name: string;
}

export function citations(): Citation[] {
  return [
    ...Object.entries(modelNumbers).map(([name, { basis }]): Citation => ({
      source: basis.source,
      by: 'numbers',
      name,
    })),
    ...Object.entries({ ...askingNumbers, ...learningNumbers }).map(([name, { basis }]): Citation => ({
      source: basis.source,
      by: 'numbers',
      name,
    })),
    ...Object.entries(benchNumbers).map(([name, { basis }]): Citation => ({
      source: basis.source,
      by: 'numbers',
      name,
    })),
    ...rules.flatMap((rule) =>
      rule.evidence.map(({ source }): Citation => ({ source, by: 'rules', name: rule.id })),
    ),
    { source: heightGirthFit.source, by: 'facts', name: 'girth from height' },
    { source: heightGirthFit.individuals, by: 'facts', name: 'girth from height' },
    { source: girthByCondition.source, by: 'facts', name: 'girth by condition' },
    ...errata.flatMap(({ id, sources }) =>
      sources.map((source): Citation => ({ source, by: 'errata', name: id })),
    ),
  ];
}
