/** Elbow room taped on both sides: the tighter decides. */
import { describe, expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import { run } from '../support/run-cli.ts';

const order = (room: string): string => `order: 9
horse: { heart-girth: 73 in, elbow-room: ${room} }
saddle: { rigging: 7/8, ring-to-ring: 44 in }
`;
const sized = (room: string, ...args: string[]) => run(['size', '-', ...args], { stdin: order(room) });
const specs = async (room: string): Promise<unknown> =>
  (JSON.parse((await sized(room, '--format', 'json')).stdout) as { results: { specs: unknown }[] })
    .results[0]!.specs;
const told = async (room: string, ...args: string[]): Promise<string> =>
  (await sized(room, ...args)).stdout.replaceAll(/\s+/g, ' ');

describe('two sides', () => {
  test.each([
    ['{ near: 4 in, off: 4 1/2 in }', 'near', '4 in near side, 4 1/2 in off side'],
    ['{ near: 12 cm, off: 4 in }', 'off', '4 3/4 in near side, 4 in off side'],
  ])('%s is sized on the tighter', async (room, side, both) => {
    expect(await specs(room)).toEqual(await specs('4 in'));
    expect(await told(room)).toContain(`Elbow room is ${both}: sized on the ${side} side, the tighter.`);
    const why = await told(room, '--why');
    expect(why).toContain(both);
    expect(why).toContain(`elbow room 4 in, give or take 0.25 (measured: on the ${side} side, the tighter)`);
    expect(why).toMatch(/E = the smaller of near 4(\.72)? and off 4(\.5)?/);
  });

  test('far apart they are doubted, by more than an inch and not by less', async () => {
    const doubt =
      'Check the tapes: elbow room is 4 in near side, 5 1/8 in off side. Measure both again, horse square';
    expect(await told('{ near: 4 in, off: 5 1/8 in }')).toContain(doubt);
    expect(await told('{ near: 4 in, off: 5 in }')).not.toContain('Check the tapes');
  });

  test('alike they are told like one', async () => {
    expect(await told('{ near: 4 in, off: 4 in }')).toBe(await told('4 in'));
  });

  test.each([
    ['{ near: 4 in }', 'horse.elbow-room.off', 'back of elbow to girth groove, a length'],
    ['{ near: 4 in, of: 4 in, off: 4 in }', 'horse.elbow-room.of', 'a key of horse.elbow-room: near, off'],
    ['{ near: 4 in, off: 45 in }', 'horse.elbow-room.off', 'back of elbow to girth groove from 1 in to 9 in'],
    ['45', 'horse.elbow-room', 'back of elbow to girth groove, a length'],
  ])('%s is told with its key', (room, path, expected) => {
    const [read] = readOrders(order(room), 'o.yaml');
    expect(read?.ok === false && read.problems.map((each) => [each.path, each.expected])).toEqual([
      [path, expect.stringContaining(expected)],
    ]);
  });
});

describe('said', () => {
  const say = (words: string) => run(['size', '--say', `73 in girth, 7/8, ring to ring 44 in, ${words}`]);
  test.each(['room 4 in near 4 1/2 in off', 'near 4 in, off 4 1/2 in', 'room near 4 in, 4 1/2 in off'])(
    '%s',
    async (words) => {
      expect((await say(words)).stdout).toContain('Elbow room is 4 in near side, 4 1/2 in off side');
    },
  );
  test.each([
    ['near 4 in', 'horse.elbow-room.off'],
    ['room 4 in, near 4 1/2 in', '"4 in" already says it'],
    ['near 4 in, off 4 in, room 4 in', 'each thing once'],
  ])('%s is not enough, or too much', async (words, message) => {
    const { code, stderr } = await say(words);
    expect(code).toBe(3);
    expect(stderr).toContain(message);
  });
});
