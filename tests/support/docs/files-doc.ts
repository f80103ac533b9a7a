/** docs/files.md: every key of the order file and of the shop file, from the same definition that checks them. */
import { document, escaped } from '../../../src/report/markdown.ts';
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

/** Text of docs/files.md. */
export async function filesDoc(): Promise<string> {
  return document([
    '# Keys of the files',
    'Keys in bold must be there, those of a block where the block is. Lengths take a unit: in, cm, mm, ft, and for heights hands (`15.1 hh`). An editor that knows JSON Schema completes and checks them: `cinchwright schema order` and `cinchwright schema shop` print it.',
    '## Order file',
    'An order needs the height or the heart girth of the horse. Several orders in one file are parted by a line `---`; JSON does as well, also with one order a line.',
    await tableOf('order'),
    '## Shop file',
    'What it leaves out of `model` keeps its default, see [numbers.md](numbers.md). `examples/shop.yaml` is a whole one, the same that is built in.',
    await tableOf('shop'),
  ]);
}

async function tableOf(kind: string): Promise<string> {
  const { stdout } = await run(['schema', kind]);
  const rows = keysOf(JSON.parse(stdout) as Shape, '').map(({ path, needed, shape }) => {
    const name = needed ? `**\`${path}\`**` : `\`${path}\``;
    return `| ${name} | ${escaped(shape.description ?? '')} | ${escaped(valuesOf(shape))} |`;
  });
  return ['| key | what it is | values |', '| --- | --- | --- |', ...rows].join('\n');
}

/** Keys in the order of the schema, those of a block after it; `[]` stands for each entry of a list. */
function keysOf(shape: Shape, before: string): Key[] {
  const { properties = {}, required = [] } = shape;
  return Object.entries(properties).flatMap(([name, inner]) => {
    // The numbers of the model have a page of their own.
    if (before === '' && name === 'model') return [{ path: name, needed: false, shape: inner }];
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
  if (words !== undefined) return words.join(', ');
  if (examples !== undefined) return `such as ${examples.join(', ')}`;
  if (anyOf.length > 0) return [...new Set(anyOf.map(valuesOf).filter((text) => text !== ''))].join('; or ');
  if (items !== undefined) return `a list: ${valuesOf(items) || 'of these'}`;
  if (properties !== undefined) return '';
  if (minimum !== undefined && maximum !== undefined) return `${String(minimum)} to ${String(maximum)}`;
  return plainOf({ type, pattern });
}

function plainOf({ type, pattern }: Pick<Shape, 'type' | 'pattern'>): string {
  if (type === 'boolean') return 'true or false';
  if (pattern?.startsWith(String.raw`^\d{4}-`) === true) return 'a day, such as 2026-12-18';
  return type === undefined ? '' : 'text';
}
