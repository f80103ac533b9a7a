/** docs/files.md: every key of order and shop files. */
import { document, escaped, list } from '../../../src/pages/markdown.ts';
import { run } from '../run-cli.ts';

interface Shape {
  readonly type?: string | readonly string[] | undefined;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly enum?: readonly (string | number)[];
  readonly examples?: readonly string[];
  readonly pattern?: string | undefined;
  readonly minimum?: number;
  readonly maximum?: number;
}

interface Key {
  readonly path: string;
  readonly needed: boolean;
  readonly shape: Shape;
}

export async function filesDoc(): Promise<string> {
  return document([
    '# Keys of the files',
    'Keys in bold are required (inside a block: when the block is there); `[]` stands for each entry of a list. In brackets: allowed words, limits, or an example. Lengths take a unit: in, cm, mm, ft; heights also hands (`15.1 hh`). A place on a photo is `[from the left, from the top]` in pixels. For editors: `cinchwright schema order` and `schema shop`.',
    '## Order file',
    'An order needs the height or heart girth of the horse. A line `---` separates orders in one file; JSON works too, also with one order per line. `wants` has the keys of `current`, except `age`.',
    await keysOfFile('order'),
    '## Shop file',
    '`examples/shop.yaml` is the built-in one. `model` sets [numbers](numbers.md); `learned` is written by `cinchwright learn`.',
    await keysOfFile('shop'),
  ]);
}

async function keysOfFile(kind: string): Promise<string> {
  const { stdout } = await run(['schema', kind]);
  return list(
    keysOf(JSON.parse(stdout) as Shape, '').flatMap(({ path, needed, shape }) => {
      if (path.startsWith('wants.')) return [];
      const name = needed ? `**\`${path}\`**` : `\`${path}\``;
      const about = aboutOf(shape);
      const values = valuesOf(shape);
      return `${name}${isSaid(path, about) ? '' : `: ${escaped(about)}`}${values === '' ? '' : ` (${escaped(values)})`}`;
    }),
  );
}

/** Places on the photo are explained once. */
const aboutOf = ({ description = '' }: Shape): string => description.replace(/, as \[from the left.*$/, '');

/** Whether the path has every word of its description, as in "name of the horse". */
function isSaid(path: string, about: string): boolean {
  const little = ['the', 'of', 'a'];
  const said = new Set(path.split(/\W+/).flatMap((word) => [word, `${word}s`, word.replace(/s$/, '')]));
  return about.split(/\W+/).every((word) => little.includes(word) || said.has(word));
}

/** Explained in other documents. */
const elsewhere = ['model', 'learned'];
/** The program names the nearest right words. */
const mostWords = 25;

/** `[]` is each entry of a list. */
function keysOf(shape: Shape, before: string): Key[] {
  const { properties = {}, required = [] } = shape;
  return Object.entries(properties).flatMap(([name, inner]) => {
    if (before === '' && elsewhere.includes(name)) return [{ path: name, needed: false, shape: inner }];
    const path = before === '' ? name : `${before}.${name}`;
    return [{ path, needed: required.includes(name), shape: inner }, ...insideOf(inner, path)];
  });
}

function insideOf(shape: Shape, path: string): Key[] {
  const { items, anyOf = [] } = shape;
  return [
    ...keysOf(shape, path),
    ...(items === undefined ? [] : insideOf(items, `${path}[]`)),
    ...unique(anyOf.flatMap((each) => insideOf(each, path))),
  ];
}

const unique = (keys: readonly Key[]): Key[] => [...new Map(keys.map((key) => [key.path, key])).values()];

function valuesOf({
  enum: words,
  examples,
  anyOf = [],
  items,
  type,
  minimum,
  maximum,
  pattern,
  properties,
}: Shape): string {
  if (words !== undefined)
    return words.length > mostWords ? `${words.slice(0, 3).join(', ')} ...` : words.join(', ');
  if (examples !== undefined) return examples.join(', ');
  if (anyOf.length > 0) return anyOfText(anyOf);
  if (items !== undefined) return listText(items);
  if (properties !== undefined) return '';
  if (minimum !== undefined && maximum !== undefined) return `${String(minimum)}–${String(maximum)}`;
  return plainOf({ type, pattern });
}

/** Values are explained once. */
function anyOfText(shapes: readonly Shape[]): string {
  const single = shapes.map(valuesOf);
  const list = shapes.findIndex(
    ({ items }, i) => items !== undefined && i > 0 && valuesOf(items) === single[i - 1],
  );
  if (list > 0) return [single[list - 1] ?? '', 'or a list'].filter((text) => text !== '').join('; ');
  return [...new Set(single.filter((text) => text !== ''))].join('; or ');
}

/** The description explains numbers, such as pixels. */
function listText(items: Shape): string {
  if (items.minimum !== undefined || items.items !== undefined) return '';
  const inner = valuesOf(items);
  return inner === '' ? '' : `a list: ${inner}`;
}

function plainOf({ type, pattern }: Pick<Shape, 'type' | 'pattern'>): string {
  if (type === 'boolean') return 'true or false';
  if (pattern?.startsWith(String.raw`^\d{4}-`) === true) return '2026-12-18';
  return '';
}
