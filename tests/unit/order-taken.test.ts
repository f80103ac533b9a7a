/** Orders that pass the door. */
import { describe, expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import { leastOrder as least, orderIn as order } from '../support/door.ts';

const full = `
order: 0012
customer: { name: Ann Example, phone: 555 0100, email: ann@example.com }
taken: 2026-11-20
due: 2026-12-18
quantity: 2
horse:
  name: 007
  height: 15.1 hh
  heart-girth: 185 cm
  body-length: 67 in
  elbow-room: 4 in
  barrel: { depth: 27 in }
  withers: low
  condition: 6.5
  kind: stock
  trouble: [elbow-gall, girthy, elbow-gall]
saddle:
  rigging: 7/8
  style: flat-plate
  bar-span: 13 in
  ring-to-ring: 44 in
  ring-drop: 14 in
  double: true
use: roping
current: { style: straight, strands: 27, length: 32 in, age: 18 months, buckle: plain 3 }
wants: { style: low-flare, strands: 21, buckle: plain 4, length: 30 in }
colors: { body: natural, accent: [rust, sage] }
options: center dees
notes: |
  first line
  yes
`;

describe('what gets through', () => {
  test('an order with everything in it', () => {
    expect(order(full)).toEqual({
      order: '0012',
      customer: { name: 'Ann Example', phone: '555 0100', email: 'ann@example.com' },
      taken: '2026-11-20',
      due: '2026-12-18',
      quantity: 2,
      horse: {
        name: '007',
        height: 61,
        heartGirth: 9250 / 127,
        bodyLength: 67,
        elbowRoom: 4,
        barrel: { depth: 27 },
        withers: 'low',
        condition: 6.5,
        kind: 'stock',
        trouble: ['elbow-gall', 'girthy'],
      },
      saddle: {
        rigging: { kind: 'named', name: '7/8', fraction: 0.875 },
        style: 'flat-plate',
        barSpan: 13,
        ringToRing: 44,
        ringDrop: 14,
        double: true,
      },
      use: 'roping',
      current: { style: 'straight', strands: 27, length: 32, age: 1.5, buckle: 'plain 3' },
      wants: { style: 'low-flare', strands: 21, buckle: 'plain 4', length: 30 },
      colors: { body: ['natural'], accent: ['rust', 'sage'] },
      options: ['center dees'],
      notes: 'first line\nyes',
    });
  });
  // Henneke et al. 1983, Equine Vet J 15:371: names of the nine scores.
  test.each([
    ['poor', 1],
    ['very thin', 2],
    ['thin', 3],
    ['moderately thin', 4],
    ['Moderate', 5],
    ['moderately-fleshy', 6],
    ['fleshy', 7],
    ['fat', 8],
    ['extremely fat', 9],
    ['6.5', 6.5],
  ])('condition %s', (word, score) => {
    const text = `order: 1\nhorse: { height: 15 hh, condition: ${word} }\nsaddle: { rigging: full }\n`;
    expect(order(text).horse.condition).toBe(score);
  });
  test('the least an order can say', () => {
    expect(order(least)).toMatchObject({ order: '1', quantity: 1, horse: { height: 60, trouble: [] } });
  });
  test.each([
    ['full', 'full', 1],
    ['7/8', '7/8', 0.875],
    ['⅞', '7/8', 0.875],
    ['13/16', '13/16', 0.8125],
    ['1/2', '1/2', 0.5],
    ['center', 'center-fire', 0.5],
    ['center-fire', 'center-fire', 0.5],
  ])('rigging %s', (text, name, fraction) => {
    expect(order(least.replace('full', text)).saddle.rigging).toEqual({ kind: 'named', name, fraction });
  });
  test('a measured rigging', () => {
    expect(order(least.replace('full', '{ set-back: -1 1/2 in }')).saddle.rigging).toEqual({
      kind: 'measured',
      setBack: -1.5,
    });
  });
  test('numbers and words of YAML stay the text they are', () => {
    for (const text of ['15.10', '0x1F', '1_000', 'yes', '7/8', '2026-11-20', '.inf', '012', '1e5']) {
      expect(order(least.replace('order: 1', `order: ${text}`)).order).toBe(text);
    }
  });
  test('a byte order mark, Windows line ends and modest aliases', () => {
    expect(order(`\ufeff${least.replaceAll('\n', '\r\n')}`).horse.height).toBe(60);
    const aliased = `${least}current: &c { style: straight, strands: 17 }\nwants: *c\n`;
    expect(order(aliased).wants).toEqual({ style: 'straight', strands: 17 });
  });
  test('each document of a file, with its line; an empty one is passed over', () => {
    const reads = readOrders(`# backlog\n---\n${least}---\n---\n${least}...\n${least}`, 'b.yaml');
    expect(reads.map((read) => [read.ok, read.line])).toEqual([
      [true, 3],
      [true, 8],
      [true, 12],
    ]);
  });
});
