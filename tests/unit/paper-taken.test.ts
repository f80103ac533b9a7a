/** An order is the same cinch on all its papers. */
import { describe, expect, test } from 'vitest';
import { run } from '../support/run-cli.ts';

interface Spec {
  style: string;
  strands: number;
}
interface Paper {
  results: (Spec & { takes?: string; spec?: Spec; cinch?: Spec; cords?: unknown })[];
}

const order = (wants: string): string =>
  `order: w\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8, ring-to-ring: 44 in }\nuse: trail\ncolors: { body: natural, accent: rust }\n${wants}`;
const wish = 'wants: { style: low-flare, strands: 15, buckle: plain 3, length: 32 in }\n';

async function paper(command: string, text: string, more: readonly string[] = []): Promise<string> {
  return (await run([command, '-', '--format', 'json', ...more], { stdin: text })).stdout;
}

async function quoted(text: string, more: readonly string[] = []): Promise<[string | undefined, string]> {
  const [first] = (JSON.parse(await paper('quote', text, more)) as Paper).results;
  return [first?.takes, `${first?.spec?.style ?? ''} ${String(first?.spec?.strands)}`];
}

describe('what the customer asked for', () => {
  test('is quoted, ticketed, pulled and scheduled where it passes', async () => {
    const text = order(wish);
    expect(await quoted(text)).toEqual(['wish', 'low-flare 15']);
    for (const command of ['ticket', 'materials', 'schedule']) {
      const shown = await paper(command, text);
      expect(shown, command).toMatch(/"style": "low-flare",\s+"strands": 15/);
    }
  });
  test('gives way where it is refused, or poor at the elbow', async () => {
    expect(await quoted(order('wants: { style: straight, strands: 25 }\n'))).toEqual([
      'first',
      'straight 17',
    ]);
    expect(await quoted(order('wants: { style: straight, strands: 23 }\n'))).toEqual([
      'first',
      'straight 17',
    ]);
  });
  test('gives way to what somebody chooses', async () => {
    expect(await quoted(order(wish), ['--spec', '1'])).toEqual(['first', 'straight 17']);
    expect(await quoted(order(wish), ['--strands', '15'])).toEqual(['chosen', 'straight 15']);
  });
  test('of a buckle that the shop has not gets a hint and the nearest that passes', async () => {
    const text = order('wants: { style: straight, strands: 17, buckle: 3 plain, length: 32 in }\n');
    const { stdout } = await run(['check', '-'], { stdin: text });
    expect(stdout.replace(/\s+/g, ' ')).toContain('no buckle called 3 plain; did you mean plain 3?');
    expect(stdout).toContain('Smallest change that passes: a straight, 17 strands');
  });
});

describe('a quote', () => {
  test.each([
    ['past', 'due: 2026-11-19\n', 'It was due Nov 19, 2026; that day is past.'],
    ['too soon to keep', 'due: 2026-11-21\nquantity: 12\n', 'It cannot be ready by Nov 21, 2026.'],
  ])('asks nothing for a rush that comes too late: %s', async (_, rest, why) => {
    const { stdout } = await run(['quote', '-', '--date', '2026-11-20'], { stdin: order(rest) });
    expect(stdout).toContain("No rush charge: we can't make that day.");
    expect(stdout.replace(/\s+/g, ' ')).toContain(why);
    expect(stdout).not.toMatch(/^ *Rush /m);
    const { stdout: asked } = await run(['quote', '-', '--date', '2026-11-10'], { stdin: order(rest) });
    expect(asked).toMatch(/^ *Rush /m);
  });
  test('multiplies out: hours as printed times the rate', async () => {
    for (const strands of [11, 15, 17, 19]) {
      const { stdout } = await run(['quote', '-', '--strands', String(strands)], { stdin: order('') });
      const [, hours, rate, amount] = /Labor, ([\d.]+) hours at \$([\d.]+) +\$([\d.]+)/.exec(stdout)!;
      expect(Number(amount)).toBeCloseTo(Number(hours) * Number(rate), 2);
      const { stdout: days } = await run(['schedule', '-'], { stdin: order('') });
      if (strands === 17) expect(days).toContain(` ${hours!} `);
    }
  });
});

test('a file of another kind is told in one line', async () => {
  const { stderr } = await run(['size', 'examples/shop.yaml']);
  expect(stderr).toMatch(/^examples\/shop\.yaml:\d+:1:\n {2}a shop file: expected an order\.\n/m);
  const shop = await run([
    'size',
    'examples/orders/01-height-only.yaml',
    '--shop',
    'examples/orders/03-pony.yaml',
  ]);
  expect(shop.stderr.split('expected').length).toBe(2);
  expect(shop.stderr).toContain('an order: expected a shop.');
});
