/** `npm run fuzz`: hostile inputs by the million, seeded; failures are kept to run again. */
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { keptCase, keptText, type Case } from './case.ts';
import { figuresText, type Row } from './figures.ts';
import { fuzz } from './fuzz.ts';
import { Bench } from './judge.ts';
import { targets } from './targets/index.ts';
import { watch } from './watch.ts';

const help = `npm run fuzz -- [--target NAME] [--tries N | --minutes M] [--seed S] [--guided N] [--run N] [--jobs N]
npm run fuzz -- --replay FILE...

  --target NAME  one of ${Object.keys(targets).join(', ')} (default: all, by their shares)
  --tries N      tries in all (default: 10000)
  --minutes M    instead: as many as there is time for, one input after the other
  --seed S       start of the random numbers (default: 1)
  --guided N     for so many tries of each input see which of them go new ways, and keep those to go on from (default: 2000)
  --run N        of a hundred inputs, so many go through command lines too, not through their reader alone (default: 100)
  --jobs N       inputs that are tried at the same time, each by a process of its own (default: 1)
  --replay       try again what was kept in files
`;

const print = (text: string): void => {
  process.stdout.write(text);
};

const options = {
  target: { type: 'string' },
  tries: { type: 'string' },
  minutes: { type: 'string' },
  seed: { type: 'string', default: '1' },
  guided: { type: 'string', default: '2000' },
  run: { type: 'string', default: '100' },
  jobs: { type: 'string', default: '1' },
  replay: { type: 'boolean', default: false },
  help: { type: 'boolean', default: false },
} as const;

interface Asked {
  readonly name: string;
  readonly tries: number;
  readonly minutes: number | undefined;
  readonly seed: number;
  readonly guided: number;
  readonly run: number;
}

async function main(): Promise<number> {
  const { values, positionals } = parseArgs({ options, allowPositionals: true });
  const names = values.target === undefined ? Object.keys(targets) : [values.target];
  const numbers = [values.tries, values.minutes, values.seed, values.guided, values.run, values.jobs];
  if (values.replay) return replay(positionals);
  const wrong =
    names.some((name) => targets[name] === undefined) ||
    numbers.some((text) => text !== undefined && !(Number(text) >= 0));
  if (values.help || wrong) {
    print(help);
    return values.help ? 0 : 2;
  }
  const shares = names.reduce((sum, name) => sum + (targets[name]?.share ?? 0), 0);
  const asked = names.map((name): Asked => {
    const part = (targets[name]?.share ?? 0) / shares;
    const minutes = values.minutes === undefined ? undefined : Number(values.minutes) * part;
    const tries = minutes === undefined ? Math.ceil(Number(values.tries ?? 10_000) * part) : Infinity;
    const [seed, guided, run] = [values.seed, values.guided, values.run].map(Number) as [
      number,
      number,
      number,
    ];
    return { name, tries, minutes, seed, guided, run };
  });
  const rows = await inTurn(asked, Number(values.jobs));
  if (values.target === undefined || process.env[mark] === undefined)
    print(figuresText(rows, Number(values.seed)));
  return rows.some(({ failures }) => failures > 0) ? 1 : 0;
}

/** Set in a child with one job, which prints figures as JSON. */
const mark = 'CINCHWRIGHT_FUZZ_JOB';

/** `jobs` at a time; figures in the order asked. */
async function inTurn(asked: readonly Asked[], jobs: number): Promise<Row[]> {
  const rows: Row[] = [];
  let next = 0;
  const worker = async (): Promise<void> => {
    for (let i = next++; i < asked.length; i = next++) {
      const job = asked[i];
      if (job !== undefined) rows[i] = jobs > 1 ? await elsewhere(job) : await here(job);
    }
  };
  await Promise.all(Array.from({ length: Math.max(1, jobs) }, worker));
  return rows;
}

async function here({ name, tries, minutes, ...plan }: Asked): Promise<Row> {
  const target = targets[name]?.make();
  if (target === undefined) throw new Error(`there is no target ${name}`);
  const { before, end } = watch(fileFor(name, 'hung'));
  const until = minutes === undefined ? Infinity : Date.now() + minutes * 60_000;
  const { failures, slow, ...figures } = await fuzz(target, { tries, ...plan, until, before });
  end();
  failures.forEach(({ tried, why }, i) => {
    print(`${keep(tried, why, String(i + 1))}\n  ${why.slice(0, 400)}\n`);
  });
  if (slow !== undefined) keep(slow, `the slowest, ${figures.slowest.toFixed(0)} ms`, 'slowest');
  const row: Row = { ...figures, failures: failures.length };
  print(process.env[mark] === undefined ? `${name}: done\n` : `${mark} ${JSON.stringify(row)}\n`);
  return row;
}

const fileFor = (name: string, what: string): string =>
  path.join(os.tmpdir(), `cinchwright-fuzz-${name}-${what}.json`);

function keep(tried: Case, why: string, what: string): string {
  const file = fileFor(tried.target, what);
  fs.writeFileSync(file, keptText({ tried, why }));
  return file;
}

/** In its own process. @throws when that ends without figures */
function elsewhere({ name, tries, minutes, ...plan }: Asked): Promise<Row> {
  const bound = minutes === undefined ? ['--tries', String(tries)] : ['--minutes', String(minutes)];
  const same = Object.entries(plan).flatMap(([option, value]) => [`--${option}`, String(value)]);
  const args = ['--target', name, ...bound, ...same];
  const child = spawn(process.execPath, [process.argv[1] ?? '', ...args], {
    env: { ...process.env, [mark]: '1' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (said += text));
  return new Promise((resolve, reject) => {
    child.on('close', () => {
      const [others = '', figures] = said.split(`${mark} `);
      print(others + (figures === undefined ? '' : `${name}: done\n`));
      if (figures === undefined) reject(new Error(`${name}: the process ended before its time`));
      else resolve(JSON.parse(figures.split('\n')[0] ?? '') as Row);
    });
  });
}

async function replay(files: readonly string[]): Promise<number> {
  let code = 0;
  for (const file of files) {
    const { tried } = keptCase(fs.readFileSync(file, 'utf8'));
    const target = targets[tried.target]?.make();
    if (target === undefined) throw new Error(`${file}: there is no target ${tried.target}`);
    const bench = new Bench(target);
    const { why, took } = await bench.judge(tried);
    bench.close();
    print(`${file}: ${why ?? `holds (${took.toFixed(0)} ms)`}\n`);
    if (why !== undefined) code = 1;
  }
  return code;
}

void main().then((code) => {
  process.exitCode = code;
});
