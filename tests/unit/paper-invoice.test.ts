/** Invoices, messages, care cards; papers of several cinches agree. */
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { readOutcomes } from '../../src/order/read-outcomes.ts';
import { ticketSheet } from '../../src/views/ticket-sheet.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { ticketFor } from '../support/papers.ts';
import { run } from '../support/run-cli.ts';

const order = (rest = ''): string =>
  `order: 7\ncustomer: { name: Odo }\ntaken: 2026-11-20\nhorse: { name: Biscuit, heart-girth: 73 in }\nsaddle: { rigging: 7/8, ring-to-ring: 44 in, double: true }\nuse: trail\ncolors: { body: [natural], accent: [rust] }\n${rest}`;
const said = async (args: readonly string[], text = order()) => run(args, { stdin: text });
const quote = ['quote', '-', '--date', '2026-11-20'];

describe('an invoice', () => {
  test('takes the deposit as paid, and says so; what was paid where it is said', async () => {
    const assumed = await said([...quote, '--invoice', '1041']);
    const [, total, paid, due] = /Total \$([\d.]+)\. Paid \$([\d.]+)\. Due \$([\d.]+)\./.exec(
      assumed.stdout,
    )!;
    expect(Number(paid) + Number(due)).toBeCloseTo(Number(total), 9);
    expect(assumed.stderr).toBe(
      `cinchwright: order 7: $${paid!} counted as paid, the deposit; change it with --paid\n`,
    );
    const told = await said([...quote, '--invoice', '1041', '--paid', '12.5']);
    expect(told.stdout).toContain(`Paid $12.50. Due $${(Number(total) - 12.5).toFixed(2)}.`);
    expect([told.stderr, told.code]).toEqual(['', 0]);
    const over = await said([...quote, '--invoice', '1041', '--paid', '9999']);
    expect(over.stdout).toMatch(/Paid \$9999\.00\. Refund due \$\d+\.\d\d\./);
  });
  test('keeps the rush charge of the day the order was taken, and asks for that day where it hangs on it', async () => {
    const due = order('due: 2026-11-30\n');
    const charge = (text: string): string | undefined => /Rush +(\$[\d.]+)/.exec(text)?.[1];
    const quoted = await said(quote, due);
    const later = ['quote', '-', '--invoice', '1', '--date', '2027-01-05'];
    expect(charge(quoted.stdout)).toMatch(/\d/);
    expect(charge((await said(later, due)).stdout)).toBe(charge(quoted.stdout));
    const early = due.replace('2026-11-20', '2026-11-02');
    expect([charge((await said(quote, early)).stdout), charge((await said(later, early)).stdout)]).toEqual([
      undefined,
      undefined,
    ]);
    const open = await said(later, due.replace('taken: 2026-11-20\n', ''));
    expect([open.code, open.stderr]).toEqual([
      3,
      expect.stringContaining('(in the order file, under taken)'),
    ]);
    expect(open.stdout).toContain('It cannot be added up yet.');
  });
  test.each([
    [['--paid', '5'], '--paid goes with --invoice'],
    [['--invoice', '1', '--paid', '$5'], 'not "$5"\nDid you mean 5?'],
    [['--invoice', '1', '--paid', '1.234'], 'not "1.234"'],
  ])('%j is refused', async (more, why) => {
    const { code, stderr } = await said([...quote, ...more]);
    expect([code, stderr]).toEqual([2, expect.stringContaining(why)]);
  });
  test('has one number, and so one order', async () => {
    const two = `${order()}---\n${order().replace('7', '8')}`;
    const { code, stderr } = await said([...quote, '--invoice', '1'], two);
    expect([code, stderr]).toEqual([2, expect.stringContaining('every invoice has its own number')]);
  });
});

describe('a message', () => {
  const examples = ['01-height-only', '08-elbow-gall', '09-buckle-rub', '11-wants-refused', '17-colors'];
  test.each(examples)('of %s is short and carries the caution once', async (name) => {
    const file = `examples/orders/${name}.yaml`;
    const { stdout } = await run(['quote', file, '--format', 'text', '--date', '2026-11-20']);
    for (const message of stdout.split(/^=+$/m)) {
      expect(message.trim().split(/\s+/).length).toBeLessThanOrEqual(120);
      expect(message.replace(/\s+/g, ' ').split('Sizing aid, not veterinary advice')).toHaveLength(2);
      expect(Math.max(...message.split('\n').map((line) => line.length))).toBeLessThanOrEqual(72);
    }
  });
  test('has a sore before the cinch, and that nothing is cut unmeasured', async () => {
    const sore = order()
      .replace('73 in', '73 in, trouble: [elbow-gall]')
      .replace(', ring-to-ring: 44 in', '');
    const { stdout } = await said([...quote, '--format', 'text'], sore);
    const places = ["Don't ride", 'Quote 7', "We won't cut cord", 'Sizing aid'].map((text) =>
      stdout.replace(/\s+/g, ' ').indexOf(text),
    );
    expect(Math.min(...places)).toBeGreaterThan(0);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });
  test('of an invoice says what is due, and nothing of a quote', async () => {
    const { stdout } = await said([...quote, '--invoice', '9', '--paid', '1', '--format', 'text']);
    expect(stdout).toMatch(/Invoice 9 for order 7/);
    expect(stdout).not.toMatch(/Quote|good through|Ready/);
  });
});

describe('six cinches of one order', () => {
  const six = order('quantity: 6\noptions: [center dees]\n');
  test('have their buckles, cord and hours on every paper', async () => {
    const { stdout } = await said(['quote', '-', '--format', 'json'], six);
    const quoted = JSON.parse(stdout) as { results: { lines: { what: string; count: number }[] }[] };
    const { lines } = quoted.results[0]!;
    const count = (what: string): number => lines.find((line) => line.what.includes(what))!.count;
    const materials = parse<Record<string, string>>(
      (await said(['materials', '-', '--format', 'csv'], six)).stdout,
      { columns: true },
    );
    const needed = (list: string, item: string): Record<string, string> =>
      materials.find((row) => row['list'] === list && (row['color'] === item || row['id'] === item))!;
    const feet = (color: string): number => Number(needed('cord', color)['length_in']) / 12;
    expect([count('buckles'), Number(needed('hardware', 'plain 3')['needed'])]).toEqual([12, 12]);
    expect([count('dee 1 1/2'), Number(needed('hardware', 'dee 1 1/2')['needed'])]).toEqual([12, 12]);
    expect([count('natural'), count('rust')]).toEqual([feet('natural'), feet('rust')]);
    const { stdout: schedule } = await said(['schedule', '-', '--format', 'csv'], six);
    const [job] = parse<Record<string, string>>(schedule, { columns: true });
    expect(Math.ceil(count('Tying') * 60 - 1e-6)).toBe(Number(job!['minutes']));
    const { stdout: ticket } = await said(['ticket', '-'], six);
    const flat = ticket.replace(/\s+/g, ' ');
    expect(flat).toContain('Pull 12 plain 3 buckles for all 6');
    expect(flat).toContain(`${count('natural') / 6} x 6 = ${count('natural')}`);
    expect(flat).toContain(
      `Time allowed ${Math.floor(count('Tying'))} h ${Math.ceil((count('Tying') % 1) * 60 - 1e-6)} min for all 6`,
    );
    const { stdout: paper } = await said(quote, six);
    expect(paper.replace(/\s+/g, ' ')).toContain('buckles each, 12 buckles in all');
  });
});

test('two buckles of one width keep the name the shop gave them', async () => {
  const wide = order('wants: { style: straight, strands: 21, buckle: plain 4, length: 32 in }\n');
  for (const more of [[], ['--format', 'text'], ['--invoice', '1']]) {
    const { stdout } = await said([...quote, ...more], wide);
    expect(stdout.replace(/\s+/g, ' ')).toMatch(
      more[0] === undefined ? /two stainless plain 4 buckles/ : /plain 4 buckles/,
    );
  }
});

test('a line of the outcomes file can be typed from a ticket', () => {
  const ticket = ticketFor(orderOf({ order: '41', saddle: { rigging: rigging('3/4'), ringToRing: 44 } }));
  const blocks = ticketSheet(ticket, 'in').blocks;
  const at = blocks.findIndex((block) => block.kind === 'heading' && block.text === 'For the outcomes file');
  const [known, open] = [blocks[at + 1]!, blocks[at + 2]!];
  if (known.kind !== 'text' || open.kind !== 'blanks') throw new Error('other blocks');
  const pairs = known.text
    .replace(', if tied as above.', '')
    .split(', ')
    .map((part) => /^(\S+) (.+)$/.exec(part)!);
  const written = ['32 1/4 in', '41', 'good'];
  const names = [...pairs.map(([, name]) => name), ...open.labels.map((label) => label.split(/[,:]/)[0])];
  const values = [...pairs.map(([, , value]) => value), ...written];
  const read = readOutcomes(`${names.join(',')}\r\n${values.join(',')}\r\n`, 'o.csv', 'csv');
  expect(read.ok && read.outcomes).toMatchObject([
    {
      order: '41',
      days: 41,
      result: 'good',
      tied: { style: ticket.style, strands: ticket.strands, buckle: ticket.buckle.id, length: 32.25 },
    },
  ]);
});

describe('a care card', () => {
  test('has a keeper for double rigging, dees where there are some, and the sore first', async () => {
    const card = async (text: string): Promise<string> =>
      (await said(['ticket', '-', '--care'], text)).stdout.replace(/\s+/g, ' ');
    expect(await card(order())).toContain('connecting strap runs through the keeper');
    expect(await card(order().replace(', double: true', ''))).not.toContain('keeper');
    expect(await card(order())).not.toContain('dees hang down');
    expect(await card(order('options: [center dees]\n'))).toContain('dees hang down');
    const sore = await card(order().replace('73 in', '73 in, trouble: [elbow-gall]'));
    expect(sore.indexOf('GALLED AT THE ELBOW')).toBeLessThan(sore.indexOf('How it goes on'));
  });
  test('is a page, not data', async () => {
    const { code, stderr } = await said(['ticket', '-', '--care', '--format', 'json']);
    expect([code, stderr]).toEqual([2, 'cinchwright: --care is a page: it has no JSON\n']);
  });
});
