/** docs/errata.md: where sources disagree, and what is done here. */
import { document, escaped, list } from '../../../src/report/markdown.ts';
import { errata } from '../../../src/sources/errata.ts';
import { sources } from '../../../src/sources/sources.ts';

/** Text of docs/errata.md. */
export const errataDoc = (): string =>
  document([
    '# Errata',
    'Where sources disagree with each other or with themselves, and which of them we go by. The [sources](sources.md) keep their own words; nothing is bent to make them agree.',
    ...errata.flatMap(({ id, sources: named, says, here }) => [
      `## ${id}`,
      list([
        `What they say: ${escaped(says)}`,
        `What is done here: ${escaped(here)}`,
        `Sources: ${named.map((name) => `${escaped(sources[name].title)} (\`${name}\`)`).join('; ')}`,
      ]),
    ]),
  ]);
