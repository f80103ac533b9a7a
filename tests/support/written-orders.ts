/** Orders as people may write them: blocks or braces, with or without quotes, remarks, other letters, and ends of lines of Windows. */
import fc from 'fast-check';

type Written = Record<string, string | string[]>;
interface Style {
  quote: number;
  flow: boolean;
  remark: string;
  columns: number;
}

const one = (...texts: string[]): fc.Arbitrary<string> => fc.constantFrom(...texts);
const name = fc.oneof(
  one(
    'Marisol Quint',
    'Søren',
    'Łucja',
    'O’Hara',
    "O'Hara",
    '李雷',
    'Zoë \u{1f40e}',
    'a: b',
    '# 7',
    'no',
    '"x"',
    ' a ',
  ),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
);
const length = one('32 in', '81 cm', '810 mm', '2 ft 8 in', '31 1/2 in', '31½ in', '32"', '32', '32,5 in');
const style = one('straight', 'high-flare', 'low-flare', 'wide');

const horse = fc.record<Written>(
  {
    name,
    height: one('15.1 hh', '155 cm', '61 in', '15 hh', '15.4 hh'),
    'heart-girth': one('73 in', '185 cm', '6 ft 1 in', '73'),
    'elbow-room': one('4 in', '10 cm', '9.5 cm'),
    barrel: one('average', 'round', '{ depth: 27 in }'),
    trouble: fc.subarray(['elbow-gall', 'girthy', 'slips-back']),
  },
  { requiredKeys: ['height'] },
);
const saddle = fc.record<Written>(
  {
    rigging: one('7/8', 'full', 'center-fire', '{ set-back: 2 in }'),
    'ring-to-ring': one('44 in', '110 cm'),
  },
  { requiredKeys: ['rigging'] },
);
const cinch = fc.record<Written>({ style, strands: one('21', '27', '20'), length }, { requiredKeys: [] });
const colors = fc.record<Written>(
  { body: fc.array(name, { maxLength: 3 }), accent: name },
  { requiredKeys: ['accent'] },
);

const writing = fc.record<Style>({
  quote: fc.nat(9),
  flow: fc.boolean(),
  remark: one('', '', ' # as told', '  #', ' '),
  columns: fc.integer({ min: 1, max: 4 }),
});

/** A value as it may stand; where the plain text could not, in the quotes that it needs. */
function valueOf(text: string, { quote, flow }: Style): string {
  if (text.startsWith('{')) return text;
  const isSafe = /^[\p{L}\d][\p{L}\d /.½’'-]*$/u.test(text) && text.trim() === text;
  if (isSafe && quote < 7) return text;
  const single = quote % 2 === 0 || (!flow && text.includes('\\'));
  return single ? `'${text.replaceAll("'", "''")}'` : `"${text.replaceAll(/["\\]/g, String.raw`\$&`)}"`;
}

function listOf(entries: readonly string[], style: Style): string {
  return `[${entries.map((entry) => valueOf(entry, { ...style, flow: true })).join(', ')}]`;
}

function section(key: string, written: Written, style: Style): string[] {
  const pairs = Object.entries(written);
  if (pairs.length === 0) return [];
  const inline = (value: string | string[]): string =>
    Array.isArray(value) ? listOf(value, style) : valueOf(value, style);
  if (style.flow) {
    return [
      `${key}: { ${pairs.map(([name, value]) => `${name}: ${inline(value)}`).join(', ')} }${style.remark}`,
    ];
  }
  const by = ' '.repeat(style.columns);
  const rows = pairs.flatMap(([name, value]) =>
    Array.isArray(value) && value.length > 0 && style.quote > 3
      ? [`${name}:${style.remark}`, ...value.map((entry) => `- ${valueOf(entry, style)}`)]
      : [`${name}: ${inline(value)}${style.remark}`],
  );
  return [`${key}:${style.remark}`, ...rows.map((row) => by + row)];
}

const sectionOf = (key: string, written: fc.Arbitrary<Written>): fc.Arbitrary<string[]> =>
  fc.tuple(written, writing).map(([values, style]) => section(key, values, style));
const maybe = (part: fc.Arbitrary<string[]>): fc.Arbitrary<string[]> =>
  fc.oneof(part, fc.constant<string[]>([]));

/** Two numbers, in each of the ways a list may be written; some lie outside of what the picture or a horse can have. */
const place = (x: number, y: number): fc.Arbitrary<string> =>
  fc
    .tuple(fc.integer({ min: x - 4, max: x + 4 }), fc.integer({ min: y - 4, max: y + 4 }), fc.nat(99))
    .map(([right, down, way]) => {
      const [a, b] = [String(right), String(down)];
      const ways = [
        `[ ${a} ,${b} ]`,
        `["${a}", '${b}']`,
        `[${a}.5, ${b}]`,
        `[${a},${b}]`,
        `[-${a}, ${b}]`,
        `[${a}]`,
      ];
      return ways[way] ?? `[${a}, ${b}]`;
    });
const onLinesOfItsOwn = (text: string): string =>
  `\n    - ${text.slice(1, -1).trim().split(/ *, */).join('\n    - ')}`;

const photo = fc
  .record(
    {
      file: one('side.jpg', 'photos/side 1.jpg', '"a: b.png"'),
      'image-size': one('[1600, 1200]', '[ 1600, 1200 ]', '[1600, 1200, 3]'),
      reference: fc
        .tuple(place(644, 640), place(956, 647))
        .map(([from, to]) => `{ length: 36 in, from: ${from}, to: ${to} }`),
      plumb: fc
        .tuple(place(1137, 362), place(1132, 695))
        .map(([top, bottom]) => `{ top: ${top}, bottom: ${bottom} }`),
      ring: place(728, 549),
      elbow: place(696, 673),
      'girth-groove': place(736, 698),
      spine: fc.oneof(place(741, 475), place(741, 475).map(onLinesOfItsOwn)),
      underline: place(736, 698),
      fork: place(725, 431),
      cantle: place(830, 440),
      'camera-distance': one('12 ft', '4 m', '366 cm'),
    },
    {
      requiredKeys: [
        'file',
        'image-size',
        'reference',
        'ring',
        'elbow',
        'girth-groove',
        'spine',
        'underline',
      ],
    },
  )
  .map((pairs) => ['photo:', ...Object.entries(pairs).map(([key, value]) => `  ${key}: ${value}`.trimEnd())]);

const notes = fc
  .tuple(
    one('|', '|-', '>', '|+', '|  # told'),
    fc.array(fc.oneof(name, one('', 'a: b', '# not a remark', '- a', '---'))),
  )
  .map(([mark, lines]) => [
    `notes: ${mark}`,
    ...lines.map((line) => (line.trim() === '' ? '' : `   ${line}`)),
    '',
  ]);

const written = fc
  .tuple(
    fc.tuple(name, writing).map(([text, style]) => [`order: ${valueOf(text, style)}${style.remark}`]),
    maybe(sectionOf('customer', fc.record<Written>({ name, phone: one('555 0100', '+1 555 0100') }))),
    maybe(
      one('taken: 2026-11-20', 'due: "2026-12-18"', 'quantity: 2', '# due: soon', '', 'use: roping').map(
        (row) => [row],
      ),
    ),
    sectionOf('horse', horse),
    sectionOf('saddle', saddle),
    maybe(sectionOf('wants', cinch)),
    maybe(sectionOf('colors', colors)),
    fc.oneof({ weight: 3, arbitrary: fc.constant<string[]>([]) }, { weight: 1, arbitrary: photo }),
    maybe(notes),
  )
  .map((parts) => parts.flat().join('\n'));

/** One to three orders of one file; about half of the orders are good. */
export const writtenOrders: fc.Arbitrary<string> = fc
  .tuple(
    fc.array(written, { minLength: 1, maxLength: 3 }),
    one('\n---\n', '\n--- # next\n', '\n...\n---\n'),
    one('\n', '\n', '\r\n'),
    one('', '---\n', '# first\n\n', '\ufeff'),
  )
  .map(([orders, between, end, before]) => before + (orders.join(between) + '\n').replaceAll('\n', end));
