/** The journal of a backlog: cut anywhere, flipped anywhere, it never says anything that is not so. */
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { finishedLine, type Finished, type Fingerprint } from '../../src/backlog/journal.ts';
import { digest } from '../../src/cli/backlog/digest.ts';
import { JournalFile } from '../../src/cli/backlog/journal-file.ts';
import { seededRandom } from '../../src/geometry/random.ts';
import { newFolder, orderText, writeOrders } from '../support/backlogs.ts';
import { run, type Ran } from '../support/run-cli.ts';

let home = '';
beforeAll(() => {
  home = newFolder();
});
afterAll(() => {
  fs.rmSync(home, { recursive: true });
});

const print = { program: '1', shop: 'a' };
const units = Array.from({ length: 5 }, (_, i) => ({
  id: `orders/${i} "é\u2028".yaml#${i}`,
  hash: String(i).padStart(32, '0'),
  body: JSON.stringify([[`row ${i}`, i]]),
}));

/** The line of something finished, as whoever has done it writes it. */
const lineOf = (finished: Finished, by: Fingerprint): string => finishedLine(finished, by, digest);

function journalOf(name: string): string {
  const file = path.join(home, name);
  const journal = new JournalFile(file, print, false);
  for (const unit of units) journal.add([lineOf(unit, print)]);
  journal.close();
  return file;
}

/** Opens a journal again; what it says of each unit. */
function saidBy(file: string, as = print): { bodies: (string | undefined)[]; journal: JournalFile['found'] } {
  const journal = new JournalFile(file, as, true);
  const bodies = units.map(({ id, hash }) => (journal.hashOf(id) === hash ? journal.bodyOf(id) : undefined));
  // It can be written to: the next opening finds what was added.
  const more = { id: 'more', hash: 'f', body: '[]' };
  journal.add([lineOf(more, as)]);
  journal.close();
  const again = new JournalFile(file, as, true);
  expect([again.hashOf('more'), again.bodyOf('more')]).toEqual(['f', '[]']);
  again.close();
  return { bodies, journal: journal.found };
}

test('cut after every single byte, it keeps the lines that are whole and no other', () => {
  const whole = fs.readFileSync(journalOf('cut'));
  const file = path.join(home, 'cut-short');
  for (let length = 0; length < whole.length; length++) {
    fs.writeFileSync(file, whole.subarray(0, length));
    const lines = whole.subarray(0, length).toString('latin1').split('\n').length - 2;
    const { bodies, journal } = saidBy(file);
    expect(bodies).toEqual(units.map(({ body }, i) => (i < lines ? body : undefined)));
    expect(journal.damaged).toBe(0);
  }
});

test('with any bit flipped, one line is lost, or two where the flip joins them; the others count', () => {
  const whole = fs.readFileSync(journalOf('flip'));
  const file = path.join(home, 'flipped');
  const random = seededRandom(7);
  for (let i = 0; i < 400; i++) {
    const bytes = Buffer.from(whole);
    const at = Math.floor(random.uniform() * bytes.length);
    bytes[at] = bytes[at]! ^ (1 << Math.floor(random.uniform() * 8));
    fs.writeFileSync(file, bytes);
    const { bodies } = saidBy(file);
    const wrong = bodies.filter((body, unit) => body !== undefined && body !== units[unit]!.body);
    expect(wrong, 'nothing false is believed').toEqual([]);
    expect(bodies.filter((body) => body === undefined).length).toBeLessThanOrEqual(2);
  }
});

test('under another shop or program nothing in it counts, and under the first again all of it does', () => {
  const file = journalOf('other');
  const other = saidBy(file, { program: '1', shop: 'b' });
  expect(other.bodies.every((body) => body === undefined)).toBe(true);
  expect(other.journal).toEqual({ finished: 0, damaged: 0, others: ['shop'] });
  expect(saidBy(file).bodies).toEqual(units.map(({ body }) => body));
});

describe('a run that goes on', () => {
  const out = ['--format', 'csv', '--out', 'o.csv', '--errors', 'e.csv'];
  const go = (...more: string[]): Promise<Ran> => run(['backlog', 'orders', ...out, ...more], { cwd: home });
  const read = (name: string): string => fs.readFileSync(path.join(home, name), 'utf8');
  let [wanted, journal] = ['', ''];

  /** A journal as a kill just before the end leaves it. */
  beforeAll(async () => {
    writeOrders(path.join(home, 'orders'), 12);
    const kept = path.join(home, 'kept');
    const real = fs.rmSync;
    fs.rmSync = (file, how) => {
      if (String(file).endsWith('.unfinished')) fs.copyFileSync(file, kept);
      real(file, how);
    };
    try {
      expect((await go()).code).toBe(3);
    } finally {
      fs.rmSync = real;
    }
    wanted = read('o.csv');
    journal = read('kept');
  });

  const lay = (text: string | Buffer): void => {
    fs.rmSync(path.join(home, 'o.csv'), { force: true });
    fs.writeFileSync(path.join(home, 'o.csv.unfinished'), text);
  };

  test('takes all from a whole journal, and leaves none behind', async () => {
    lay(journal);
    const { stderr, code } = await go('--resume');
    expect(stderr).toContain('16 orders were taken from the run that was cut short.');
    expect([code, read('o.csv'), fs.existsSync(path.join(home, 'o.csv.unfinished'))]).toEqual([
      3,
      wanted,
      false,
    ]);
  });

  test('ends with the same bytes from a journal cut or flipped anywhere', async () => {
    const random = seededRandom(11);
    const bytes = Buffer.from(journal);
    for (let i = 0; i < 40; i++) {
      const at = Math.floor(random.uniform() * bytes.length);
      const flipped = Buffer.from(bytes);
      flipped[at] = flipped[at]! ^ 4;
      lay(i % 2 === 0 ? bytes.subarray(0, at) : flipped);
      await go('--resume');
      expect(read('o.csv')).toBe(wanted);
    }
  });

  test('notices an order that has changed, and one that has gone', async () => {
    lay(journal);
    const changed = path.join(home, 'orders', 'part-1', '0001.yaml');
    const before = fs.readFileSync(changed);
    fs.writeFileSync(changed, orderText(99));
    const { stderr } = await go('--resume');
    fs.writeFileSync(changed, before);
    expect(stderr).toContain('15 orders were taken');
    expect(stderr).toContain('1 file has changed since, and was done again.');
    expect(read('o.csv')).toContain('\r\nN-99,');
    expect(read('o.csv')).not.toContain('\r\nN-1,"Invented, 1",Horse 1,orders/part-1/0001');
  });

  test('notices another shop', async () => {
    lay(journal);
    const shop = fs.readFileSync(new URL('../../examples/shop.yaml', import.meta.url), 'utf8');
    fs.writeFileSync(
      path.join(home, 'shop.yaml'),
      shop.replace(/^strands:.*$/m, 'strands: { min: 11, max: 15 }'),
    );
    const { stderr } = await go('--resume', '--shop', 'shop.yaml');
    expect(stderr).toContain('o.csv.unfinished is from another shop: every order is done again\n');
    expect(stderr).not.toContain('taken from');
    expect(read('o.csv')).not.toBe(wanted);
  });

  test('is refused without --resume, so that nothing is lost; and without a journal it starts anew', async () => {
    lay(journal);
    const refused = await go();
    expect([refused.code, refused.stderr]).toEqual([
      2,
      'cinchwright: o.csv.unfinished holds what an earlier run has finished\nAdd --resume to go on with that run, or delete the file to start anew.\n',
    ]);
    expect(read('o.csv.unfinished')).toBe(journal);
    fs.rmSync(path.join(home, 'o.csv.unfinished'));
    expect((await go('--resume')).stderr).toMatch(
      /^there is no o\.csv\.unfinished to go on with: starting anew\n/,
    );
    expect(read('o.csv')).toBe(wanted);
  });

  test('needs no --resume while nothing is finished in it: there is nothing to lose', async () => {
    const [header = '', first = ''] = journal.split('\n');
    for (const text of ['', `${header}\n`, `${header}\n${first.slice(0, 40)}`]) {
      lay(text);
      expect([(await go()).code, read('o.csv')]).toEqual([3, wanted]);
    }
    lay(`${header}\n${first}\n`);
    expect((await go()).code).toBe(2);
    fs.rmSync(path.join(home, 'o.csv.unfinished'));
  });

  test('is not left behind when nothing named is there', async () => {
    const { code, stderr } = await run(['backlog', 'nowhere.yaml', '--out', 'none.csv'], { cwd: home });
    expect([code, stderr]).toEqual([
      3,
      'cinchwright: nowhere.yaml: there is no such file or folder\nnothing to write to none.csv\n',
    ]);
    expect(fs.readdirSync(home).filter((name) => name.includes('none'))).toEqual([]);
  });
});
