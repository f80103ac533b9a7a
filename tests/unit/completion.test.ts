/** Completion scripts in real shells, checked against the help. */
import fs from 'node:fs';
import path from 'node:path';
import { Argument, Command, Option } from 'commander';
import { beforeAll, describe, expect, test } from 'vitest';
import { bashScript } from '../../src/cli/completion/bash.ts';
import { definitionOf, valueFlags } from '../../src/cli/completion/definition.ts';
import { fishScript } from '../../src/cli/completion/fish.ts';
import { zshScript } from '../../src/cli/completion/zsh.ts';
import { buildProgram, commandNames } from '../../src/cli/program.ts';
import { rules } from '../../src/rules/registry.ts';
import { bashOffers, fishOffers, zshOffers, type Asked, type Offers } from '../support/completions.ts';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';
import { installed, said } from '../support/shells.ts';

const shells: Readonly<Record<string, { offers: (asked: Asked) => Offers; check: string }>> = {
  bash: { offers: bashOffers, check: '-n' },
  zsh: { offers: zshOffers, check: '-n' },
  fish: { offers: fishOffers, check: '--no-execute' },
};

const dir = ownFolder();
let place = '';
const scriptFile = (shell: string): string => path.join(dir, `script.${shell}`);
const flagsInHelp = new Map<string, string[]>();

async function helpFlags(name: string): Promise<string[]> {
  const { stdout } = await run([name, '--help']);
  const lines = stdout.split('\n').filter((line) => /^ {2}-/.test(line));
  return lines.flatMap((line) => line.match(/(?<=^ {2}|, |\()--?[a-z-]+/g) ?? []).sort();
}

beforeAll(async () => {
  place = path.join(dir, 'place');
  for (const folder of ['orders', 'two words']) fs.mkdirSync(path.join(place, folder), { recursive: true });
  for (const file of ['a.yaml', 'b.yml', 'c.txt', 'my order.yaml', 'st*r.yaml', 'orders/x.yaml'])
    fs.writeFileSync(path.join(place, file), '');
  for (const shell of Object.keys(shells)) {
    const { code, stdout, stderr } = await run(['completion', shell]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    fs.writeFileSync(scriptFile(shell), stdout);
  }
  for (const name of commandNames) flagsInHelp.set(name, await helpFlags(name));
});

const yaml = ['a.yaml', 'b.yml', 'my order.yaml', 'orders', 'st*r.yaml', 'two words'];
const formats = ['csv', 'html', 'json', 'markdown', 'pdf', 'table'];
const cases: readonly (readonly [line: string, offers: readonly string[]])[] = [
  ['cinchwright ', [...commandNames].sort()],
  ['cinchwright si', ['size']],
  ['cinchwright --no-color sc', ['schedule', 'schema']],
  ['cinchwright size ', yaml],
  ['cinchwright size my', ['my order.yaml']],
  ['cinchwright size st', ['st*r.yaml']],
  ['cinchwright size a.yaml b', ['b.yml']],
  ['cinchwright size --form', ['--format']],
  ['cinchwright size --format ', formats],
  ['cinchwright check a.yaml --style lo', ['low-flare']],
  ['cinchwright size --format json ', yaml],
  ['cinchwright size --shop ', yaml],
  ['cinchwright size --out ', [...yaml, 'c.txt'].sort()],
  ['cinchwright size --top ', []],
  ['cinchwright size --say ', []],
  ['cinchwright size --save ', yaml],
  ['cinchwright size --why ', yaml],
  ['cinchwright size --units=c', ['cm']],
  ['cinchwright schema ', ['order', 'shop']],
  ['cinchwright completion ', ['bash', 'fish', 'zsh']],
  ['cinchwright rules --format json elb', ['elbow-clearance']],
  ['cinchwright help ch', ['check']],
  ['cinchwright rules ', rules.map(({ id }) => id).sort()],
];

describe.each(Object.entries(shells))('%s', (shell, { offers, check }) => {
  const there = installed(shell);

  test.skipIf(!there)('reads the script without a fault', () => {
    expect(said(shell, [check, scriptFile(shell)])).toEqual({ code: 0, stdout: '', stderr: '' });
  });

  test.skipIf(!there)('offers what fits, and nothing else', () => {
    const got = offers({ script: scriptFile(shell), cwd: place, lines: cases.map(([line]) => line) });
    // Some shells offer "--units=c" whole, some the end.
    const plain = got.map((list) => list.map((offer) => offer.replace(/^--units=/, '')));
    expect(cases.map(([line], i) => [line, plain[i]])).toEqual(cases);
  });

  test.skipIf(!there)('offers every option that the help shows', () => {
    const lines = commandNames.flatMap((name) => [`cinchwright ${name} -`, `cinchwright ${name} --`]);
    const got = offers({ script: scriptFile(shell), cwd: place, lines });
    commandNames.forEach((name, i) => {
      const both = [...new Set([...(got[2 * i] ?? []), ...(got[2 * i + 1] ?? [])])].sort();
      expect([name, both]).toEqual([name, flagsInHelp.get(name)]);
    });
  });
});

describe('the definition', () => {
  test('an option takes a value everywhere or nowhere, of one kind: scripts rely on it', () => {
    const program = buildProgram({ io: {} as never, code: 0 });
    const definition = definitionOf(program, {});
    const kinds = new Map<string, Set<string>>();
    for (const { flags, takes } of definition.commands.flatMap(({ options }) => options))
      for (const flag of flags) kinds.set(flag, (kinds.get(flag) ?? new Set()).add(takes?.kind ?? 'none'));
    expect([...kinds].filter(([, found]) => found.size > 1).map(([flag]) => flag)).toEqual([]);
    expect([...valueFlags(definition)]).toContain('--shop');
  });

  const odd = new Command('odd')
    .addOption(new Option('--kind <name>', "what's [odd]: `x` $(y) \\").choices(['one', 'two']))
    .addOption(new Option('--secret').hideHelp());
  odd
    .command('do')
    .summary('do: it\'s "odd" [really] $(nothing) `at` all \\')
    .addArgument(new Argument('<which>', 'a: [b]').choices(['p', 'q']));
  const definition = definitionOf(odd, {});

  test('choices of the parser are read, hidden options are not', () => {
    expect(definition.options.flatMap(({ flags }) => flags)).not.toContain('--secret');
    expect(definition.options[0]).toMatchObject({ takes: { kind: 'words', words: ['one', 'two'] } });
    expect(definition.commands[0]?.arguments).toMatchObject([
      { takes: { kind: 'words', words: ['p', 'q'] } },
    ]);
  });

  describe.each([
    ['bash', bashScript],
    ['zsh', zshScript],
    ['fish', fishScript],
  ])('%s', (shell, script) => {
    test.skipIf(!installed(shell))('reads texts with quotes and signs in them', () => {
      const file = path.join(dir, `odd.${shell}`);
      fs.writeFileSync(file, script(definition));
      expect(said(shell, [shells[shell]!.check, file])).toEqual({ code: 0, stdout: '', stderr: '' });
    });
  });
});

test.skipIf(!installed('bash'))('bash: a word half typed, in quotes or with a backslash', () => {
  const ask =
    'source "$1"; COMP_WORDS=(cinchwright size "$2"); COMP_CWORD=2; _cinchwright; echo "${COMPREPLY[@]}"';
  for (const typed of ['my\\ or', '"my or', "'my or"]) {
    const { stdout } = said('bash', ['--norc', '-c', ask, 'bash', scriptFile('bash'), typed], { cwd: place });
    expect([typed, stdout]).toEqual([typed, 'my order.yaml\n']);
  }
});
