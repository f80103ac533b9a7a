/** JSON of every command on the examples, with every name. */
import fs from 'node:fs';
import path from 'node:path';
import { newFolder } from './folder.ts';
import { run } from './run-cli.ts';

const orders = 'examples/orders';
const runs: readonly (readonly string[])[] = [
  [
    'size',
    `${orders}/01-height-only.yaml`,
    `${orders}/08-elbow-gall.yaml`,
    `${orders}/10-nothing-passes.yaml`,
    `${orders}/11-wants-refused.yaml`,
    `${orders}/25-photo.yaml`,
    `${orders}/faulty-20-hands.yaml`,
    '--why',
    '--simulate',
    '100',
  ],
  ['size', '--say', 'girth 76 in, room 3.3 in, set-back -2 in, round'],
  ['size', `${orders}/01-height-only.yaml`, '--what-if', '3/4'],
  ['check', `${orders}/08-elbow-gall.yaml`, `${orders}/12-wants-passes.yaml`],
  ['photo', `${orders}/25-photo.yaml`],
  ['ask', `${orders}/03-pony.yaml`, '--draws', '8'],
  ['quote', `${orders}/11-wants-refused.yaml`, `${orders}/12-wants-passes.yaml`, `${orders}/17-colors.yaml`],
  ['ticket', `${orders}/02-everything-measured.yaml`, `${orders}/07-saddle-rolls.yaml`],
  ['materials', orders],
  ['schedule', `${orders}/10-nothing-passes.yaml`, `${orders}/16-several-orders.yaml`, '--hours', '3'],
  ['learn', 'examples/outcomes.csv'],
  ['backlog', orders],
  ['rules'],
];

const orderDue = (due: string): string => `order: '${due}'
due: ${due}
horse: { height: 15.2 hh, heart-girth: 74 in, elbow-room: 4 in }
saddle: { rigging: 7/8, ring-to-ring: 44 in }
colors: { body: [natural] }
`;

const fewCord = `shop: Few (invented)
strands: { min: 11, max: 25 }
lengths: { min: 24 in, max: 36 in, step: 2 in }
buckles:
  - { id: plain 3, bar: 3 in, frame-width: 3 3/4 in, frame-height: 2 1/2 in, double: { min: 19, max: 19 }, on-hand: 9, orderable: true }
cord: [{ color: natural, ply: 8, put-ups: [{ lot: A, feet: 60, count: 1 }], orderable: true, lead-days: 7 }]
labor: { set-up-minutes: 15, minutes-a-strand: 1.5, minutes-an-inch-of-bar: 9 }
benches: [{ name: window, hours: 6, days: [mon, tue, wed, thu, fri] }]
`;

type Documents = readonly [command: string, document: object][];
let printed: Promise<Documents> | undefined;

/** In the documented order; printed once. */
export const jsonPrinted = (): Promise<Documents> => (printed ??= printAll());

async function printAll(): Promise<Documents> {
  const home = newFolder();
  try {
    const learned = path.join(home, 'shop.yaml');
    await run(['learn', 'examples/outcomes.csv', '--shop', 'examples/shop.yaml', '--write', learned]);
    // An order that takes all the cord delays another's promise.
    const few = path.join(home, 'few.yaml');
    fs.writeFileSync(few, fewCord);
    fs.writeFileSync(path.join(home, 'waits.yaml'), orderDue('2026-12-04'));
    fs.writeFileSync(path.join(home, 'first.yaml'), orderDue('2026-12-03'));
    const all = [
      ...runs,
      [
        'schedule',
        path.join(home, 'waits.yaml'),
        ...['--promise', path.join(home, 'first.yaml'), '--shop', few, '--from', '2026-11-30'],
      ],
      ['size', `${orders}/01-height-only.yaml`, '--shop', learned],
    ];
    const ran = await Promise.all(all.map((args) => run([...args, '--format', 'json'])));
    return ran.map(({ stdout }, i) => [all[i]![0]!, JSON.parse(stdout) as object]);
  } finally {
    fs.rmSync(home, { recursive: true });
  }
}
