/** Documents for two readers of YAML to differ over: blocks, lists and texts as orders have them, some with a line or sign that is odd. */
import fc from 'fast-check';

type Lines = string[];

const some = (...texts: string[]): fc.Arbitrary<string> => fc.constantFrom(...texts);
const joined = (...parts: fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc.tuple(...parts).map((texts) => texts.join(''));
const mostly = <T>(usual: fc.Arbitrary<T>, odd: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ weight: 24, arbitrary: usual }, { weight: 1, arbitrary: odd });

/** What has a meaning in YAML or stands near to it, blanks and breaks of all kinds, letters of one unit and of two. */
const sign = some(
  ...' \'":#,-[]{}&*!|>%@`?~\\/=.<_+$^()'.split(''),
  ...['a', 'Z', '0', '7', '½', 'é', '語', '\u{1f40e}', 'e\u0301', '\u00a0', '\u3000', '\u200b', '\u00ad'],
  ...[' ', ' ', ' ', ': ', ' #', ', ', "''", '\\"', '\\\\', '\\n', '\\u0041', '--', '- ', '...', '---', ':a'],
  ...['\t', '\r', '\n', '\n ', '\n\n', '\u0085', '\u2028', '\ufeff', '\u0007', '\ud800'],
);
const scribble = fc.array(sign, { maxLength: 8 }).map((signs) => signs.join(''));

const word = mostly(
  some(
    'a',
    'horse',
    '15.1 hh',
    '7/8',
    '555 0100',
    'true',
    'no',
    '012',
    "O'Brien",
    '5 ft 2"',
    '-1 in',
    'x@y.z',
    'a#b',
    'x:y',
  ),
  some(
    '~',
    'null',
    'x: y',
    'a #b',
    'a:',
    ':a',
    '-a',
    '- a',
    '--- a',
    'a, b',
    '?a',
    '? a',
    '<<',
    '*a',
    '&a b',
    '!t a',
    '',
  ),
);
const key = mostly(
  some('a', 'b', 'c', 'd', 'e', 'heart-girth', 'k1', 'x_y', 'constructor', 'toString', 'null'),
  some(
    '1',
    '"a"',
    "'b'",
    '<<',
    '__proto__',
    '-a',
    'a b',
    '? a',
    'a:b',
    '~',
    '',
    '[a]',
    '{a: b}',
    '*a',
    '&a b',
    '!t c',
  ),
);
const inQuotes = mostly(word, scribble);
const quoted = mostly(
  fc.oneof(joined(some('"'), inQuotes, some('"')), joined(some("'"), inQuotes, some("'"))),
  some('""', "''", '" "', '"a" b', '"a\\qb"', '"null"', "'~'"),
);
const escaped = some("'a''b'", "''' '", '"a\\"b"', '"\\\\"', '"\\"#\\\\: "');
const scalar = fc.oneof(
  { weight: 8, arbitrary: mostly(word, scribble) },
  { weight: 3, arbitrary: quoted },
  { weight: 1, arbitrary: escaped },
);
const colon = mostly(some(': ', ': ', ':  '), some(':', ' : ', ':\t'));
const comma = mostly(some(', ', ', ', ',', ',  '), some(' , ', ',,', ' ', ', , '));
const open = some('', ' ', ' ', '  ');
const end = (sign: string): fc.Arbitrary<string> =>
  mostly(some(sign, ` ${sign}`), some('}', ']', '', `,${sign}`));

const { flowList, flowBlock } = fc.letrec<{ inner: string; flowList: string; flowBlock: string }>((tie) => ({
  inner: fc.oneof({ weight: 6, arbitrary: scalar }, tie('flowList'), tie('flowBlock')),
  flowList: fc
    .tuple(open, fc.array(tie('inner'), { maxLength: 3 }), comma, end(']'))
    .map(([first, entries, between, last]) => `[${first}${entries.join(between)}${last}`),
  flowBlock: fc
    .tuple(open, fc.array(joined(key, colon, tie('inner')), { minLength: 1, maxLength: 3 }), comma, end('}'))
    .map(([first, pairs, between, last]) => `{${first}${pairs.join(between)}${last}`),
}));

const comment = fc.oneof(
  { weight: 6, arbitrary: some('') },
  {
    weight: 2,
    arbitrary: joined(mostly(some(' # ', ' #', '  #'), some('#', '\t#')), mostly(word, scribble)),
  },
  { weight: 1, arbitrary: some(' ', '   ') },
);
const value = fc.oneof(
  { weight: 6, arbitrary: scalar },
  { weight: 1, arbitrary: flowList },
  { weight: 2, arbitrary: flowBlock },
);

const further = (lines: Lines, by: string): Lines => lines.map((line) => (line === '' ? '' : by + line));
const byColumns = some('  ', '  ', ' ', '    ');
const textLine = fc.oneof(
  { weight: 5, arbitrary: mostly(word, scribble) },
  { weight: 1, arbitrary: some('', '# a', 'a: b', '- a', ' further in', '   ', '...', '"', '{', 'a ') },
);
const textBlock = fc
  .tuple(key, mostly(some('|', '>', '|-', '|+', '>-'), some('|2', '>+1', '|-+', '| a', '|#')), comment)
  .chain(([name, mark, after]) =>
    fc
      .tuple(fc.array(textLine, { minLength: 1, maxLength: 4 }), byColumns)
      .map(([lines, by]) => [`${name}: ${mark}${after}`, ...further(lines, by)]),
  );

const { block } = fc.letrec<{ block: Lines; part: Lines; list: Lines }>((tie) => ({
  block: fc.array(tie('part'), { minLength: 1, maxLength: 4 }).map((parts) => parts.flat()),
  list: fc.array(joined(some('- ', '- ', '-  '), mostly(scalar, value), comment), {
    minLength: 1,
    maxLength: 3,
  }),
  part: fc.oneof(
    { maxDepth: 4 },
    { weight: 6, arbitrary: joined(key, colon, value, comment).map((line) => [line]) },
    { weight: 1, arbitrary: textBlock },
    { weight: 1, arbitrary: joined(some('# ', '#', '  # '), scribble).map((line) => [line]) },
    {
      weight: 1,
      arbitrary: mostly(some(''), some('  ', '---', '...', 'a', '%YAML 1.2', '- a')).map((line) => [line]),
    },
    {
      weight: 3,
      arbitrary: fc
        .tuple(key, comment, fc.oneof(tie('block'), tie('list')), mostly(byColumns, some('')))
        .map(([name, after, lines, by]) => [`${name}:${after}`, ...further(lines, by)]),
    },
    {
      weight: 1,
      arbitrary: fc
        .tuple(key, comment, tie('list'))
        .map(([name, after, lines]) => [`${name}:${after}`, ...lines]),
    },
  ),
}));

/** Where, and what: a sign put in or taken out, a line set further in or out, doubled or left out. */
const slip = fc.tuple(fc.nat(10_000), fc.nat(5), sign);

function withSlip(text: string, [where, kind, odd]: [number, number, string]): string {
  const at = where % (text.length + 1);
  if (kind === 0) return text.slice(0, at) + odd + text.slice(at);
  if (kind === 1) return text.slice(0, at) + text.slice(at + 1);
  const lines = text.split('\n');
  const row = where % lines.length;
  const line = lines[row] ?? '';
  if (kind === 2) lines[row] = ` ${line}`;
  if (kind === 3) lines[row] = line.replace(/^ {1,2}/, '');
  if (kind === 4) lines.splice(row, 0, lines[(row * 7) % lines.length] ?? '');
  if (kind === 5) lines.splice(row, 1);
  return lines.join('\n');
}

/** The text of a document of blocks, or of something near to one. */
export const nearlyPlain: fc.Arbitrary<string> = fc
  .tuple(
    block,
    fc.array(slip, { maxLength: 2 }),
    some('\n', '\n', '\n', '\r\n'),
    some('', '', '', '---\n', '--- # x\n', '\n', '  \n', '# x\n'),
    some('\n', '\n', '', '  ', '\n  \n', '\n...\n'),
  )
  .map(([lines, slips, end, before, after]) =>
    (before + slips.reduce(withSlip, lines.join('\n')) + after).replaceAll('\n', end),
  );
