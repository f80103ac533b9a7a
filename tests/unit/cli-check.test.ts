/** `check`: what is judged, the exit code. */
import { describe, expect, test } from 'vitest';
import { run } from '../support/run-cli.ts';

const order = (rest: string): string =>
  `order: 7\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8 }\n${rest}`;
const fine = '{ style: straight, strands: 17, length: 32 in }';
const wide = '{ style: straight, strands: 31, length: 32 in }';

interface Results {
  results: { checked?: { which: string; standing: string }[] }[];
}

async function check(
  stdin: string,
  ...options: string[]
): Promise<{ code: number; which: string[]; stderr: string }> {
  const { code, stdout, stderr } = await run(['check', '--format', 'json', ...options], { stdin });
  const { results } = stdout === '' ? { results: [] } : (JSON.parse(stdout) as Results);
  const which = results.flatMap(({ checked = [] }) => checked.map((one) => `${one.which} ${one.standing}`));
  return { code, which, stderr };
}

describe('what is judged', () => {
  test.each([
    ['a wish that passes', `wants: ${fine}\n`, [], 0, ['wants passes']],
    ['a wish that does not', `wants: ${wide}\n`, [], 1, ['wants refused']],
    ['both', `wants: ${fine}\ncurrent: ${wide}\n`, [], 1, ['wants passes', 'current refused']],
    ['the command line instead', `wants: ${wide}\n`, ['--strands', '17'], 0, ['command line passes']],
    ['only a length', '', ['--length', '81 cm'], 0, ['command line passes']],
    ['a buckle by its name', '', ['--buckle', 'plain 3', '--strands', '17'], 0, ['command line passes']],
  ])('%s', async (...[, rest, options, code, which]) => {
    expect(await check(order(rest), ...options)).toEqual({ code, which, stderr: '' });
  });
});

describe('parts on the command line replace those of the wish', () => {
  const wants = 'wants: { style: low-flare, strands: 15, buckle: plain 3, length: 31 in }\n';
  const asked = async (...options: string[]): Promise<unknown> => {
    const { stdout } = await run(['check', '--format', 'json', ...options], { stdin: order(wants) });
    return (JSON.parse(stdout) as { results: { checked: { asked: unknown }[] }[] }).results[0]?.checked[0]
      ?.asked;
  };
  const all = { style: 'low-flare', strands: 15, buckle: 'plain 3', length: 31 };
  test.each([
    [['--strands', '17'], { ...all, strands: 17, buckle: null }],
    [['--style', 'straight'], { ...all, style: 'straight' }],
    [['--length', '30 in'], { ...all, length: 30 }],
    [['--buckle', 'plain 4'], { ...all, buckle: 'plain 4' }],
    [['--strands', '19', '--buckle', 'plain 4'], { ...all, strands: 19, buckle: 'plain 4' }],
  ])('%j', async (options, expected) => {
    expect(await asked(...options)).toEqual(expected);
  });

  test('the screen tells the two apart', async () => {
    const { stdout } = await run(['check', '--strands', '17'], { stdin: order(wants) });
    expect(stdout.replace(/\s+/g, ' ')).toContain(
      'The cinch named, the rest as in the order (a low flare, 17 strands, 31 in long; we filled in',
    );
  });
});

test('orders with nothing to judge are named; without any other it is an error', async () => {
  const some = await check(`${order(`wants: ${fine}\n`)}---\n${order('').replace('7', 'bare')}`);
  expect(some.code).toBe(0);
  expect(some.stderr).toBe(
    'cinchwright: nothing to check: order bare names no cinch under "wants" or "current"\n',
  );
  const none = await check(order(''));
  expect(none.code).toBe(2);
  expect(none.which).toEqual([]);
});

test('an unreadable order decides the exit code over one with nothing to judge', async () => {
  const ran = await check(`${order('')}---\norder: broken\n`);
  expect(ran.code).toBe(3);
  expect(ran.stderr).toContain('nothing to check');
});

describe('parts on the command line that are wrong', () => {
  test.each([
    [['--strands', '18'], /odd whole number.*"18"\nCounts are odd/],
    [['--strands', '47'], /odd whole number from 5 to 45, not "47"\n$/],
    [['--length', '32 cm'], /--length takes 16 in to 44 in/],
    [['--length', '81,5 cm'], /Did you mean "81.5 cm"\?/],
    [['--length', ''], /--length takes/],
    [['--buckle', 'silver concho'], /no buckle called "silver concho"\nIt has: /],
  ])('%j', async (options, message) => {
    const ran = await check(order(''), ...options);
    expect(ran.code).toBe(2);
    expect(ran.stderr).toMatch(message);
  });
});
