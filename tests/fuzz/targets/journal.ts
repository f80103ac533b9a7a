/** The journal of a backlog that was cut short: whatever has happened to it, the table that comes of --resume is the same. */
import fs from 'node:fs';
import type { Random } from '../../../src/geometry/random.ts';
import { happens, pick, whole } from '../../support/backlog/draw.ts';
import { damagedBytes } from '../damage/damage.ts';
import { Folder } from '../machine.ts';
import { kept } from '../seeds.ts';
import { hold, type Target } from '../target.ts';

const names = [
  '02-everything-measured',
  '10-nothing-passes',
  '16-several-orders',
  '17-colors',
  'faulty-20-hands',
  '15-metric',
];
const out = 't.csv';
const line = ['backlog', 'orders', '--out', out];

/** The journal of a whole run, which that run would have taken away at its end; and what the run came to. */
async function wholeRun(beside: Readonly<Record<string, Buffer>>) {
  const folder = new Folder();
  const { rmSync } = fs;
  try {
    folder.put(beside);
    fs.rmSync = (file, options) => {
      if (!String(file).endsWith('.unfinished')) rmSync(file, options);
    };
    const { code } = await folder.run(line, Buffer.alloc(0));
    const [journal, table] = [`${out}.unfinished`, out].map((name) => folder.read(name));
    if (journal === undefined || table === undefined) throw new Error('the backlog left no journal');
    return { code, journal, table };
  } finally {
    fs.rmSync = rmSync;
    folder.remove();
  }
}

function damagedJournal(parents: readonly Buffer[], chance: Random): Buffer {
  const rows = pick(chance, parents).toString('latin1').split('\n');
  if (happens(chance, 0.6)) return damagedBytes(Buffer.from(rows.join('\n'), 'latin1'), chance);
  for (let times = whole(chance, 1, 4); times > 0; times -= 1) {
    const at = whole(chance, 0, rows.length - 1);
    const other = whole(chance, 0, rows.length - 1);
    pick(chance, [
      () => rows.splice(at, 1),
      () => rows.splice(other, 0, rows[at] ?? ''),
      () => rows.splice(at, 2, rows[at + 1] ?? '', rows[at] ?? ''),
      () => (rows[at] = `${(rows[other] ?? '').slice(0, 17)}${(rows[at] ?? '').slice(17)}`),
      () => (rows[at] = (rows[at] ?? '').replace(/\d/, '7')),
      () => (rows[at] = `${rows[at] ?? ''}${rows[other] ?? ''}`),
    ])();
  }
  return Buffer.from(rows.join('\n'), 'latin1');
}

export async function journalTarget(): Promise<Target> {
  const beside = Object.fromEntries(
    names.map((name) => [`orders/${name}.yaml`, kept(`examples/orders/${name}.yaml`)] as const),
  );
  const { code, journal, table } = await wholeRun(beside);
  return {
    name: 'journal',
    file: `${out}.unfinished`,
    beside,
    seeds: [journal],
    change: damagedJournal,
    look: () => 'good',
    lines: () => [[...line, '--resume']],
    after: (ran, read) => {
      hold(
        ran.code === code,
        () => `it ends with ${String(ran.code)}, and with ${String(code)} from the start`,
      );
      hold(read(out)?.equals(table) === true, () => 'the table is another one than from the start');
      hold(read(`${out}.unfinished`) === undefined, () => 'the journal is still there');
    },
    writes: true,
  };
}
