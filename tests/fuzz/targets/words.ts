/** The command line: every option, with good, nearly good and bad words. */
import type { Command, Option } from 'commander';
import type { WordReader } from '../../../src/cli/options.ts';
import { buildProgram, commandNames } from '../../../src/cli/program.ts';
import type { Random } from '../../../src/math/random.ts';
import { happens, pick, whole } from '../../support/draw.ts';
import { misspelled, strangeText } from '../damage/texts.ts';
import { kept } from '../seeds.ts';
import type { Target } from '../target.ts';

const files = [
  'o.yaml',
  'o.yaml',
  'o.yaml',
  'two.yaml',
  'x.csv',
  'shop.yaml',
  'photos',
  '.',
  '-',
  '*.yaml',
  'gone.yaml',
  '',
];
const places = [
  'out.txt',
  'out.csv',
  'out.json',
  'out.html',
  'out.svg',
  'out.md',
  '-',
  'o.yaml',
  'new.yaml',
  'photos',
  '',
];
const numbers = [
  '1',
  '2',
  '19',
  '21',
  '20',
  '0',
  '-1',
  '999',
  '1000',
  '1e3',
  '2.5',
  '0x10',
  ' 7',
  '1000000000',
];
const lengths = [
  '32 in',
  '81 cm',
  '32',
  '31 1/2 in',
  '0 in',
  '-4 in',
  '99999 in',
  '1e9 cm',
  '3 ft 2 in',
  '15.2 hh',
];
const days = ['2026-12-18', '1969-12-31', '9999-12-31', '2026-02-30', 'tomorrow', '18.12.2026'];
const said = [
  '15.2 hh stock, 7/8 in-skirt, round, rolls, trail, wants straight 25',
  '15-2 full double now straight 27 32 in for Ann',
  '3/4',
  'room 4.5 in',
  'plain 2 1/2 buckle',
  'slips, average, 73 in',
  '',
];
const columns = ['order', 'order,style,strands', 'help', 'order,,x', 'all', 'order,order'];

/** By the name of an option's value. */
const valuesOf: Readonly<Record<string, readonly string[]>> = {
  file: [...files, ...places],
  folder: ['photos', '.', 'gone', 'new-folder'],
  path: files,
  paths: files,
  n: numbers,
  rank: numbers,
  hours: numbers,
  draws: ['1', '3', '20', '0', '-1', 'x'],
  day: days,
  length: lengths,
  names: columns,
  words: said,
  picture: ['photos/juniper-side.jpg', 'o.yaml', 'gone.jpg'],
};

/** Bounds the work of a run. */
const bounded: Readonly<Record<string, readonly string[]>> = {
  '--draws': ['4', '4', '5', '0', '-1', 'x'],
  '--simulate': ['100', '100', '0', 'x'],
};

function valueFor({ long, flags, parseArg }: Option, chance: Random): string {
  const only = bounded[long ?? ''];
  if (only !== undefined) return pick(chance, only);
  if (happens(chance, 0.1)) return strangeText(chance);
  const { words = [] } = (parseArg ?? {}) as Partial<WordReader>;
  if (words.length > 0) {
    const word = pick(chance, words);
    return happens(chance, 0.8) ? word : misspelled(word, chance);
  }
  const kind = /[<[]([a-z]+)/.exec(flags)?.[1] ?? '';
  return pick(chance, valuesOf[kind] ?? [...numbers, ...lengths, 'plain 3', 'straight', '19']);
}

function optionWords(option: Option, chance: Random): string[] {
  const long = option.long ?? option.short ?? '';
  const name = happens(chance, 0.03) ? misspelled(long, chance) : long;
  if (!option.required && !option.optional) return [name];
  if (happens(chance, 0.03)) return [name];
  const value = valueFor(option, chance);
  return happens(chance, 0.3) ? [`${name}=${value}`] : [name, value];
}

/** As a shell passes them: no zero byte, no way out of the run's folder. */
const handed = (word: string): string =>
  word
    .replaceAll('\0', '')
    .replace(/(^|[=\\/])(?:\.\.?[\\/]|[\\/])+/g, '$1')
    .replace(/\.\.+/g, '.')
    .slice(0, 3000);

function lineOf(commands: readonly Command[], chance: Random): string[] {
  const command = pick(chance, commands);
  const words = [happens(chance, 0.03) ? misspelled(command.name(), chance) : command.name()];
  for (let times = whole(chance, 0, 4); times > 0; times -= 1) {
    if (command.options.length > 0) words.push(...optionWords(pick(chance, command.options), chance));
  }
  const named = command.name() === 'learn' ? ['x.csv', 'x.csv', 'o.yaml'] : files;
  const others = ['help', 'completion', 'schema'].includes(command.name())
    ? ['size', 'bash', 'zsh', 'fish', 'order', 'shop', 'sizes']
    : named;
  for (let times = pick(chance, [0, 1, 1, 1, 2, 3]); times > 0; times -= 1) {
    words.splice(
      whole(chance, 1, words.length),
      0,
      happens(chance, 0.1) ? strangeText(chance) : pick(chance, others),
    );
  }
  // By default ask draws a lot.
  if (command.name() === 'ask' && !words.some((word) => word.startsWith('--draws')))
    words.push('--draws', '4');
  if (happens(chance, 0.05)) words.unshift(pick(chance, ['--no-color', '--version', '-h', '--', '-x', '']));
  return words.map(handed);
}

const wordsOf = (input: Buffer): string[] => JSON.parse(input.toString('utf8')) as string[];

export function wordsTarget(): Target {
  const machine = { stdout: () => undefined, stderr: () => undefined, env: {}, columns: undefined };
  const session = { io: machine as unknown as Parameters<typeof buildProgram>[0]['io'], code: 0 as const };
  const { commands } = buildProgram(session);
  const orders = ['02-everything-measured', '25-photo'].map((name) =>
    kept(`examples/orders/${name}.yaml`).toString(),
  );
  return {
    name: 'words',
    file: 'words.json',
    beside: {
      'o.yaml': kept('examples/orders/25-photo.yaml'),
      'two.yaml': Buffer.from(orders.join('---\n')),
      'x.csv': Buffer.from(kept('examples/outcomes.csv').toString().split('\n').slice(0, 9).join('\n')),
      'shop.yaml': kept('examples/shop.yaml'),
      'photos/juniper-side.jpg': kept('examples/orders/photos/juniper-side.jpg'),
    },
    seeds: commandNames.map((name) => Buffer.from(JSON.stringify([name]))),
    change: (parents, chance) => {
      if (happens(chance, 0.7)) return Buffer.from(JSON.stringify(lineOf(commands, chance)));
      const words = wordsOf(pick(chance, parents));
      const at = whole(chance, 0, words.length);
      const other = pick(chance, wordsOf(pick(chance, parents)));
      words.splice(
        at,
        happens(chance, 0.5) ? 1 : 0,
        happens(chance, 0.5) ? other : misspelled(words[at] ?? '', chance),
      );
      return Buffer.from(JSON.stringify(words.map(handed)));
    },
    look: () => 'good',
    lines: (_, input) => [wordsOf(input)],
    onlyRuns: true,
    writes: true,
  };
}
