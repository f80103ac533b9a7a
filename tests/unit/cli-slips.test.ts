/** Slips on the command line: exit code and nearest right word. */
import { expect, test } from 'vitest';
import { run } from '../support/run-cli.ts';
import { wordsOf } from '../support/words-of.ts';

test.each([
  [
    'check examples/orders/12-wants-passes.yaml --style lowflare',
    2,
    '--style takes straight, high-flare or low-flare, not "lowflare"\nDid you mean low-flare?',
  ],
  ['check', 2, 'name at least one order file, or "-" to type an order in'],
  ['ask examples/orders/03-pony.yaml --draws 3', 2, '--draws takes a whole number from 4 to 100000, not "3"'],
  [
    'ask examples/orders/03-pony.yaml --format txt',
    2,
    '--format takes table, text, markdown, json or csv, not "txt"\nDid you mean text?',
  ],
  ['ask', 2, 'name at least one order file, or "-" to type an order in'],
  ['size order.yaml --top 0', 2, '--top takes a whole number from 1 to 999, not "0"'],
  ['size order.yaml --units inches', 2, '--units takes in or cm, not "inches"'],
  ['size order.yaml --seed 4', 2, '--seed goes with --simulate: nothing else is drawn at random'],
  ['size --simulate order.yaml', 2, '--simulate takes a number of draws, not "order.yaml"'],
  ['help sice', 2, 'there is no command called "sice"\nDid you mean size?'],
  ['completion csh', 2, 'completion takes bash, zsh or fish, not "csh"\nDid you mean zsh?'],
  ['schema', 2, 'missing required argument "kind"'],
  ['schema orders', 2, 'schema takes order or shop, not "orders"\nDid you mean order?'],
  ['rules elbow-clearence', 2, 'there is no rule called "elbow-clearence"\nDid you mean elbow-clearance?'],
  ['draw examples/orders/01-height-only.yaml --out cinch.jpg', 2, 'a JPEG needs a photo: add --on-photo'],
  [
    'draw examples/orders/01-height-only.yaml examples/orders/02-everything-measured.yaml --out cinch.svg',
    2,
    'a file of SVG holds one picture; there are 2 orders',
  ],
  [
    'draw examples/orders/01-height-only.yaml --view flatt',
    2,
    '--view takes side or flat, not "flatt"\nDid you mean flat?',
  ],
  [
    'draw examples/orders/25-photo.yaml --on-photo --out x.svg',
    2,
    '--on-photo makes jpeg, png or html, not svg',
  ],
  [
    'draw examples/orders/13-roping-on-full.yaml --on-photo --out x.jpg',
    2,
    'nothing to draw on: order 2413 has no "photo" block',
  ],
  ['draw examples/orders/10-nothing-passes.yaml', 1, 'order 2410: no cinch we tie passes here; see size'],
  ['learn examples/outcomes.csv --in-place', 2, '--in-place needs the shop file: --shop FILE'],
  ['materials nowhere', 3, 'cannot read nowhere: there is no such file'],
  ['new .', 2, '. is a folder, not a file: nothing was written'],
  ['new nowhere/order.yaml', 3, 'cannot write nowhere/order.yaml: there is no such directory'],
  ['new tests --force', 2, 'tests is a folder, not a file: nothing was written'],
  [
    'ticket examples/orders/01-height-only.yaml --format pdf --paper latter',
    2,
    '--paper takes letter or a4, not "latter"\nDid you mean letter?',
  ],
  ['quote examples/orders/01-height-only.yaml --paper a4', 2, '--paper goes with --format pdf'],
  ['photo --pick nowhere.jpg', 3, 'nowhere.jpg: there is no such file'],
  ['photo --pick a.jpg order.yaml', 2, '--pick makes a page for one picture: leave out the order files'],
  ['photo examples/orders/01-height-only.yaml', 2, 'nothing to measure: order 2401 has no "photo" block'],
  [
    'quote examples/orders/02-everything-measured.yaml --date 20/11/2026',
    2,
    '--date takes a day such as 2026-12-18, not "20/11/2026"\nDid you mean 2026-11-20?',
  ],
  [
    'quote examples/orders/02-everything-measured.yaml --spec 99',
    1,
    'order 2402: there is no rank 99: the last is 17',
  ],
  [
    'quote examples/orders/02-everything-measured.yaml --spec 1 --style straight',
    2,
    '--spec names one spec already: leave out --style and --strands',
  ],
  [
    'schedule examples/orders/02-everything-measured.yaml --from 12/18/2026',
    2,
    '--from takes a day such as 2026-12-18, not "12/18/2026"\nDid you mean 2026-12-18?',
  ],
  [
    'schedule examples/orders/02-everything-measured.yaml --hours 1,5',
    2,
    '--hours takes a number up to 1000, such as 2.5, not "1,5"',
  ],
  [
    'schedule examples/orders/02-everything-measured.yaml --hours 4 --promise examples/orders/05-mule-creeps-forward.yaml',
    2,
    '--promise takes its hours from the order: leave out --hours',
  ],
  ['size order.yaml --shop -', 2, '--shop takes a file; standard input is for orders'],
])('cinchwright %s', async (command, exit, said) => {
  const { code, stdout, stderr } = await run(wordsOf(command));
  expect([code, stdout]).toEqual([exit, '']);
  expect(stderr).toContain(`cinchwright: ${said}\n`);
});
