/** Files that `npm run generate` writes and tests/project/docs-fresh.test.ts compares. */
import { format } from 'prettier';
import { defaultShopSource } from '../generate-shop.ts';
import { repoText, run } from '../run-cli.ts';
import { filled } from './blocks.ts';
import { filesDoc } from './files-doc.ts';
import { manPage } from './man-page.ts';
import { numbersDoc } from './numbers-doc.ts';
import { rulesDoc } from './rules-doc.ts';
import { sourcesDoc } from './sources-doc.ts';

export interface Generated {
  /** From the repository's root. */
  readonly file: string;
  readonly text: () => Promise<string>;
}

const notice = (from: string): string => `<!-- Generated from ${from} by \`npm run generate\`. -->\n\n`;

const doc = (name: string, from: string, make: () => string | Promise<string>): Generated => ({
  file: `docs/${name}.md`,
  text: async () => format(notice(from) + (await make()), { parser: 'markdown' }),
});

const style = { singleQuote: true, printWidth: 110 };

/** Written by hand, except its blocks. */
const page = (file: string): Generated => ({
  file,
  text: async () => format(await filled(repoText(file)), { ...style, parser: 'markdown' }),
});

const picture = (name: string, args: readonly string[]): Generated => ({
  file: `docs/pictures/${name}.svg`,
  text: async () => (await run(['draw', ...args])).stdout,
});

/** The shop first: the others are judged with it. */
export const generated: readonly Generated[] = [
  {
    file: 'src/cinch/default-shop.ts',
    text: () => defaultShopSource(repoText('examples/shop.yaml')),
  },
  doc('rules', 'src/rules', rulesDoc),
  doc('sources', 'src/numbers', sourcesDoc),
  doc('numbers', 'src/numbers', numbersDoc),
  doc('files', 'the schemas of order and shop files', filesDoc),
  page('docs/photo.md'),
  page('docs/scripts.md'),
  page('DEVELOPERS.md'),
  {
    file: 'docs/cinchwright.1',
    text: async () => `.\\" Generated from the program's own help by "npm run generate".\n${await manPage()}`,
  },
  picture('wants', ['examples/orders/11-wants-refused.yaml', '--wants']),
  picture('flat', ['examples/orders/07-saddle-rolls.yaml', '--view', 'flat']),
];
