/** Orders typed on the command line: run, kept, changed. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const said = '15.2 hh stock, 7/8, ring to ring 44 in, trail, wants straight 25';
const yaml = `order: said
horse: { height: 15.2 hh, kind: stock }
saddle: { rigging: 7/8, ring-to-ring: 44 in }
use: trail
wants: { style: straight, strands: 25 }
`;
const cwd = ownFolder();
beforeEach(() => {
  fs.writeFileSync(path.join(cwd, 'o.yaml'), yaml);
  fs.rmSync(path.join(cwd, 'kept.yaml'), { force: true });
});
const read = (name: string): string => fs.readFileSync(path.join(cwd, name), 'utf8');

const commands = [
  ['size', '--format', 'table'],
  ['size', '--format', 'markdown'],
  ['check', '--format', 'table'],
  ['ask', '--format', 'text', '--draws', '8'],
  ['quote', '--format', 'table'],
  ['ticket', '--format', 'markdown'],
  ['draw', '--format', 'svg'],
];

describe('a said order', () => {
  test.each(commands)('%s prints what it prints of the file', async (...args) => {
    const [command = '', ...rest] = args;
    const file = await run([command, 'o.yaml', ...rest], { cwd });
    expect(await run([command, '--say', said, ...rest], { cwd })).toEqual(file);
    expect(file.stdout).not.toBe('');
  });

  test('is kept as a file that is read as the same order, and never over another', async () => {
    const first = await run(['size', '--say', said, '--save', 'kept.yaml'], { cwd });
    expect(first).toMatchObject({
      code: 0,
      stderr: 'wrote kept.yaml: next time, cinchwright size kept.yaml\n',
    });
    expect(await run(['size', 'kept.yaml'], { cwd })).toEqual({ ...first, stderr: '' });
    const text = read('kept.yaml');
    const again = await run(['size', '--say', '15 hh, full', '--save', 'kept.yaml'], { cwd });
    expect(again).toMatchObject({ code: 2, stdout: '' });
    expect(again.stderr).toContain('kept.yaml already exists: nothing was written');
    expect(read('kept.yaml')).toBe(text);
    expect(
      await run(['size', '--say', '15 hh, full', '--save', 'kept.yaml', '--force'], { cwd }),
    ).toMatchObject({ code: 0 });
    expect(read('kept.yaml')).toContain('rigging: full');
  });

  test('that is not understood is not kept', async () => {
    expect(await run(['size', '--say', '15 hh, slips', '--save', 'kept.yaml'], { cwd })).toMatchObject({
      code: 3,
    });
    expect(fs.existsSync(path.join(cwd, 'kept.yaml'))).toBe(false);
  });

  test('as JSON, with its problems', async () => {
    const { code, stdout } = await run(['check', '--say', '15 hh, 7/8, slips', '--format', 'json'], { cwd });
    expect(code).toBe(3);
    expect(JSON.parse(stdout)).toMatchObject({
      results: [
        {
          order: 'said',
          file: 'said',
          error: { problems: [{ file: 'said', line: 1, column: 13, found: 'slips' }] },
        },
      ],
    });
  });

  test.each([
    [['size', 'o.yaml', '--say', said], '--say is the whole order: leave out o.yaml'],
    [['size', 'o.yaml', '--save', 'kept.yaml'], '--save goes with --say'],
    [['size', '--say', said, '--save', ''], '--save needs the name of a file'],
    [['size', '--say', said, '--save', '.'], '. is a folder'],
    [['size', '--say', said, '--save', 'x.csv', '--out', './x.csv'], '--save and --out name the same file'],
    [
      ['draw', '--say', said, '--on-photo', '--out', 'x.jpg'],
      'an order from --say has no photo: leave out --on-photo',
    ],
  ])('%j is told as a slip of the command line', async (args, message) => {
    const { code, stdout, stderr } = await run(args, { cwd });
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(message);
  });
});

interface Answer {
  whatIf: string | null;
  file: string;
  specs?: unknown[];
  error?: unknown;
}
const answers = ({ stdout }: { stdout: string }): Answer[] =>
  (JSON.parse(stdout) as { results: Answer[] }).results;

describe('an order changed for one run', () => {
  test('each answer is that of a file that says so, and the file stays as it is', async () => {
    const changes = ['3/4, room 4.5 in', 'mutton withers and rolls'];
    const asked = changes.flatMap((change) => ['--what-if', change]);
    const got = await run(['size', 'o.yaml', '--format', 'json', ...asked], { cwd });
    expect(got.code).toBe(0);
    const texts = [
      yaml,
      yaml.replace('7/8', '3/4').replace('kind:', 'elbow-room: 4.5 in, kind:'),
      yaml.replace('kind:', 'withers: low, trouble: saddle-rolls, kind:'),
    ];
    for (const [i, text] of texts.entries()) {
      const file = await run(['size', '-', '--format', 'json'], { cwd, stdin: text });
      expect(answers(got)[i]).toEqual({
        ...answers(file)[0],
        file: 'o.yaml',
        whatIf: changes[i - 1] ?? null,
      });
    }
    expect(read('o.yaml')).toBe(yaml);
  });

  test('a named buckle is the only one to tie with', async () => {
    const got = await run(['size', '--say', said, '--format', 'json', '--what-if', 'plain 3 buckle'], {
      cwd,
    });
    const [, narrowed] = answers(got);
    const buckles = new Set((narrowed!.specs as { buckle: string }[]).map(({ buckle }) => buckle));
    expect([...buckles]).toEqual(['plain 3']);
  });

  test('another horse or saddle comes without what was taped with the old one', async () => {
    const changes = ['another horse, 15 hh round named Wren', 'another saddle 3/4 in-skirt'];
    const asked = changes.flatMap((change) => ['--what-if', change]);
    const got = await run(['size', 'o.yaml', '--format', 'json', ...asked], { cwd });
    const texts = [
      'order: said\nhorse: { name: Wren, height: 15 hh, barrel: round }\nsaddle: { rigging: 7/8 }\n',
      'order: said\nhorse: { height: 15.2 hh, kind: stock }\nsaddle: { rigging: 3/4, style: in-skirt }\n',
    ];
    for (const [i, text] of texts.entries()) {
      const stdin = `${text}use: trail\nwants: { style: straight, strands: 25 }\n`;
      const file = await run(['size', '-', '--format', 'json'], { cwd, stdin });
      expect(answers(got)[i + 1]).toEqual({ ...answers(file)[0], file: 'o.yaml', whatIf: changes[i] });
    }
  });

  test('what is not understood costs its own answer only', async () => {
    const got = await run(['size', 'o.yaml', '--format', 'json', '--what-if', 'slips', '--what-if', '3/4'], {
      cwd,
    });
    expect(got.code).toBe(3);
    expect(answers(got).map(({ whatIf, error }) => [whatIf, error === undefined])).toEqual([
      [null, true],
      ['slips', false],
      ['3/4', true],
    ]);
    expect(got.stderr).toContain('what-if 1:1:1: horse.trouble');
  });

  test('where nothing passes the exit code says so', async () => {
    const got = await run(['size', 'o.yaml', '--what-if', 'full, room 1.5 in'], { cwd });
    expect(got.code).toBe(1);
    expect(got.stdout).toContain('nothing *');
  });

  test.each([60, 80, 120])(
    '%i columns hold it, one table under the other where there is no room',
    async (columns) => {
      for (const count of [1, 2, 3, 5]) {
        const asked = Array.from({ length: count }, () => ['--what-if', 'plain 3 1/2 buckle, 3/4']).flat();
        const { stdout } = await run(['size', 'o.yaml', ...asked], { cwd, columns, env: { NO_COLOR: '1' } });
        const lines = stdout.split('\n');
        expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(columns);
        const tables = lines.filter((line) => /^ {2}tie +straight \d+/.test(line));
        const most = { 60: 3, 80: 4, 120: 4 }[columns]!;
        expect([count, tables.length]).toEqual([count, Math.ceil((count + 1) / most)]);
        if (count < most) expect(lines.length).toBeLessThanOrEqual(25);
      }
    },
  );

  test.each([
    [['size', 'o.yaml', 'o.yaml'], 'not 2 files'],
    [['size', 'o.yaml', 'o.yaml', '--side-by-side'], 'not 2 files'],
    [['size', 'two.yaml'], 'two.yaml holds 2'],
    [['size', 'o.yaml', '--why'], 'leave out --why'],
    [['size', 'o.yaml', '--simulate=100'], 'leave out --simulate'],
  ])('%j cannot be put side by side', async (args, message) => {
    fs.writeFileSync(path.join(cwd, 'two.yaml'), `${yaml}---\n${yaml}`);
    const { code, stdout, stderr } = await run([...args, '--what-if', '3/4'], { cwd });
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(message);
  });

  test.each([
    ['gone.yaml', 'cannot read gone.yaml'],
    ['empty.yaml', 'Nothing here: expected an order.'],
    ['bad.yaml', 'bad.yaml:1:'],
  ])('%s is told as always', async (file, message) => {
    fs.writeFileSync(path.join(cwd, 'empty.yaml'), '# nothing\n');
    fs.writeFileSync(
      path.join(cwd, 'bad.yaml'),
      '{ order: 1, horse: { height: 15 }, saddle: { rigging: 7/8 } }\n',
    );
    for (const format of ['table', 'markdown']) {
      const args = ['size', file, '--what-if', '3/4', '--format', format, '--out', 'x.txt'];
      const { code, stdout, stderr } = await run(args, { cwd });
      expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
      expect(stderr).toContain(message);
      expect(stderr).toContain('nothing to write to x.txt');
    }
  });
});

describe('orders side by side', () => {
  const beside = async (columns: number, ...args: string[]) => {
    const ran = await run(['size', ...args, '--side-by-side'], { cwd, columns, env: { NO_COLOR: '1' } });
    const lines = ran.stdout.split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(columns);
    return { ...ran, lines };
  };
  const other = (order: string, from: string, to: string) => {
    const text = yaml.replace('order: said', `order: ${order}`).replace(from, to);
    fs.writeFileSync(path.join(cwd, `${order}.yaml`), text);
  };

  test('each column is the answer of its own order, and only what differs is marked', async () => {
    other('wren', 'height: 15.2 hh', 'name: Wren, height: 14 hh');
    const { lines, stdout, code } = await beside(80, 'o.yaml', 'wren.yaml');
    expect(code).toBe(0);
    const single = await run(['size', 'wren.yaml', '--format', 'json'], { cwd });
    const [first] = answers(single)[0]!.specs as { style: string; strands: number }[];
    const tie = lines.find((line) => line.startsWith('  tie'))!;
    expect(tie).toMatch(new RegExp(`^  tie +straight \\d+ +${first!.style} ${first!.strands}( \\*)?$`));
    expect(stdout).toMatch(
      /^2 orders: answers side by side; \* marks what differs from said\.\n\n +said +wren Wren\n/,
    );
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain('The same in all: rigging 7/8;');
    const marked = lines.filter((line) => /^ {2}(?:tie|width|chance|clears) /.test(line));
    for (const line of marked) expect(line).toMatch(/ \*$/);
  });

  test.each([
    [60, 3],
    [80, 4],
  ])('%i columns and 24 lines hold %i of them', async (columns, count) => {
    const names = ['3/4', '5/8', 'full'].slice(0, count - 1).map((rigging, i) => {
      other(`s${i}`, '7/8', rigging);
      return `s${i}.yaml`;
    });
    const { lines } = await beside(columns, 'o.yaml', ...names);
    expect(lines.length - 1).toBeLessThanOrEqual(24);
    expect(lines.filter((line) => line.startsWith('  tie'))).toHaveLength(1);
  });

  test('a sore is told before all else, and whose it is', async () => {
    other('sore', 'kind: stock', 'kind: stock, trouble: elbow-gall');
    expect((await beside(80, 'o.yaml', 'sore.yaml')).stdout).toMatch(
      /^2 orders: sore: GALLED AT THE ELBOW\. Let it heal first\. Answers side by side/,
    );
  });

  test('one that cannot be read is told, and the others stand', async () => {
    other('bad', '7/8', '9/8');
    const { code, stdout, stderr } = await beside(80, 'o.yaml', 'bad.yaml');
    expect(code).toBe(3);
    expect(stdout).toMatch(/^1 order: /);
    expect(stderr).toContain('bad.yaml:3:');
  });

  test('JSON is that of size', async () => {
    const args = ['size', 'o.yaml', 'o.yaml', '--format', 'json'];
    expect(await run([...args, '--side-by-side'], { cwd })).toEqual(await run(args, { cwd }));
    const { code, stderr } = await run(['size', 'o.yaml', '--side-by-side', '--why'], { cwd });
    expect({ code, stderr }).toEqual({
      code: 2,
      stderr: 'cinchwright: --side-by-side puts answers side by side: leave out --why\n',
    });
  });
});
