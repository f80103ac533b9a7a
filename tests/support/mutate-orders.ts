/** Damages an order file as hands, editors, mail programs and attackers do. */
import type { Random } from '../../src/math/random.ts';
import { pick } from './draw.ts';

/** `other` is a file to borrow from. */
type Damage = (text: string, chance: Random, other: string) => string;

const below = (chance: Random, count: number): number => Math.floor(chance.uniform() * count);

const replaceOne =
  (pattern: RegExp, by: (match: string, chance: Random) => string): Damage =>
  (text, chance) => {
    const matches = [...text.matchAll(pattern)];
    const match = matches[below(chance, matches.length)];
    if (match === undefined) return text;
    return text.slice(0, match.index) + by(match[0], chance) + text.slice(match.index + match[0].length);
  };

const onLines = (change: (lines: string[], chance: Random) => void): Damage => {
  return (text, chance) => {
    const lines = text.split('\n');
    change(lines, chance);
    return lines.join('\n');
  };
};

const insertAt = (text: string, at: number, piece: string): string =>
  text.slice(0, at) + piece + text.slice(at);
const insertSome =
  (pieces: readonly string[]): Damage =>
  (text, chance) =>
    insertAt(text, below(chance, text.length + 1), pick(chance, pieces));

const numbers = /(?<![\w.])\d+(?:\.\d+)?/g;
const values = /(?<=: )[^\s#{}[\],][^\n#{}[\],]*/g;
const keys = /(?<=^[ {]*|, )[a-z][a-z-]*(?=:)/gm;
const units = /\b(?:in|cm|mm|hh)\b/g;

const extremes = [
  ...[
    '1e999',
    '-0',
    '0',
    '-1',
    '1e-999',
    '.inf',
    '-.inf',
    '.nan',
    'NaN',
    '99999999999999999999',
    '0x1F',
    '1_000',
  ],
  ...['', '1/0', '0/0', '7/8', '9'.repeat(400), '4.0000000000000001', '01', '1,5', '½', '٣', '--3', '1 / 3'],
];
const words = [
  ...[
    'null',
    '~',
    'true',
    'no',
    '""',
    "''",
    '[]',
    '{}',
    '*x',
    '&x',
    '!!float 1',
    '!<tag:x> y',
    '|',
    '>-',
    '? a',
    '@',
    '`',
  ],
  ...[
    'constructor',
    '__proto__',
    'toString',
    'hasOwnProperty',
    '<<: *x',
    '%TAG',
    '--- x',
    '...',
    'a: b: c',
    '- - -',
  ],
];
const signs = [
  ...[
    '\u0000',
    '\u0007',
    '\u001b[2J',
    '\u001b]0;x\u0007',
    '\u009b31m',
    '\r',
    '\t',
    '\u0085',
    '\u2028',
    '\u202e',
    '\u200b',
  ],
  ...[
    '\ufeff',
    '\ud800',
    '\u{1f40e}',
    'é',
    'e\u0301'.repeat(9),
    '語',
    '\u00a0',
    '\u200d',
    '\ufffd',
    '\u{e0041}',
    '\u00ad',
  ],
];
const quotes = [
  '"',
  "'",
  '#',
  ': ',
  ', ',
  '{',
  '}',
  '[',
  ']',
  '|',
  '\\',
  '\\x',
  '&a ',
  '*a',
  '!',
  '%',
  '---\n',
  '...\n',
  '\n',
];
const flow = (open: string, close: string, depth: number): string => open.repeat(depth) + close.repeat(depth);

/** Many files are still orders after these. */
const mild: readonly Damage[] = [
  replaceOne(units, (_, chance) => pick(chance, ['in', 'cm', 'mm', 'hh', 'ft', '"', 'inches'])),
  replaceOne(numbers, (n, chance) => String(Number(n) + pick(chance, [-2, -1, 1, 2, 7]))),
  replaceOne(numbers, (n, chance) => (Number(n) * (0.6 + 0.8 * chance.uniform())).toFixed(2)),
  replaceOne(values, (v) => `"${v.trim()}"`),
  replaceOne(/\n/g, (_, chance) => pick(chance, ['\r\n', '\n\n', '\n# note\n', ' # note\n', '  \n'])),
  replaceOne(/(?<=name: )[^\n,}]+/g, (v, chance) => `${v.trim()}${pick(chance, signs)}`),
  onLines((lines, chance) => lines.splice(below(chance, lines.length), 1)),
  onLines((lines, chance) => {
    const i = below(chance, lines.length - 1);
    lines.splice(i, 2, lines[i + 1] ?? '', lines[i] ?? '');
  }),
  (text, chance, other) =>
    `${text}${pick(chance, ['---\n', '\n---\n', '...\n---\n', '--- # next\n'])}${other}`,
  (text, chance) => {
    const found = text.match(values) ?? [''];
    return replaceOne(values, () => pick(chance, found))(text, chance, '');
  },
  (text, chance) => {
    const list = [
      'full',
      '7/8',
      '3/4',
      '5/8',
      'center-fire',
      '11/16',
      '{ set-back: -1 in }',
      '{ set-back: 9 in }',
    ];
    return replaceOne(/(?<=rigging: )[^\n}]*/g, () => pick(chance, list))(text, chance, '');
  },
  (text, chance) => {
    const list = ['straight', 'high-flare', 'low-flare'];
    return `${text}wants: { style: ${pick(chance, list)}, strands: ${String(5 + 2 * below(chance, 21))} }\n`;
  },
  (text, chance) => {
    const list = ['elbow-gall', 'buckle-rub', 'saddle-rolls', 'creeps-forward', 'slips-back', 'girthy'];
    return text.replace(
      /^horse:$/m,
      () => `horse:\n  trouble: [${pick(chance, list)}, ${pick(chance, list)}]`,
    );
  },
];

/** Few survive these. */
const rough: readonly Damage[] = [
  replaceOne(numbers, (_, chance) => pick(chance, extremes)),
  replaceOne(values, (_, chance) => pick(chance, extremes)),
  replaceOne(values, (_, chance) => pick(chance, words)),
  replaceOne(keys, (key, chance) => pick(chance, [`${key}s`, key.toUpperCase(), ...words])),
  insertSome(signs),
  insertSome(quotes),
  insertSome(['\t', '    ', '\n\t', '\n ']),
  (text, chance) => text.slice(0, below(chance, text.length)),
  (text, chance) => text.slice(below(chance, text.length)),
  (text, chance) => {
    const at = below(chance, text.length);
    return text.slice(0, at) + text.slice(at + 1 + below(chance, 9));
  },
  onLines((lines, chance) => lines.splice(below(chance, lines.length), 0, pick(chance, lines))),
  onLines((lines, chance) => {
    const i = below(chance, lines.length);
    lines[i] = `${' '.repeat(below(chance, 4))}${(lines[i] ?? '').trim()}`;
  }),
  (text, chance) => {
    const depth = 1 + below(chance, 4000);
    const deep = pick(chance, [
      flow('[', ']', depth),
      flow('{a: ', '}', depth),
      '- '.repeat(depth),
      '['.repeat(depth),
    ]);
    return replaceOne(values, () => deep)(text, chance, '');
  },
  (text, chance) => {
    // Each level doubles the last, up to more than a document may hold.
    const levels = 2 + below(chance, 13);
    const bomb = Array.from(
      { length: levels },
      (_, i) => `x${String(i + 1)}: &x${String(i + 1)} [*x${String(i)}, *x${String(i)}]`,
    );
    return `x0: &x0 [a]\n${bomb.join('\n')}\n${replaceOne(values, () => `*x${String(Math.min(9, levels))}`)(text, chance, '')}`;
  },
  (text, chance, other) =>
    text.slice(0, below(chance, text.length)) + other.slice(below(chance, other.length)),
  (text, chance) =>
    text + 'notes: ' + pick(chance, ['x', 'é', '語', '"', '\\']).repeat(below(chance, 4000)) + '\n',
];

/** May break the encoding. */
function damageBytes(bytes: Buffer, chance: Random): Buffer {
  const damaged = Buffer.from(bytes);
  const at = below(chance, damaged.length);
  damaged[at] = chance.uniform() < 0.5 ? (damaged[at] ?? 0) ^ (1 << below(chance, 8)) : below(chance, 256);
  return damaged;
}

/** One to three damages, mild or rough. */
export function mutate(files: readonly string[], chance: Random): Buffer {
  let text = pick(chance, files);
  const kinds = chance.uniform() < 0.6 ? mild : rough;
  for (let times = 1 + below(chance, 3); times > 0; times -= 1) {
    text = pick(chance, kinds)(text, chance, pick(chance, files));
  }
  const bytes = Buffer.from(text);
  return bytes.length > 0 && chance.uniform() < 0.08 ? damageBytes(bytes, chance) : bytes;
}
