/** `npm run fuzz`: hostile inputs by the million, seeded; what fails is kept in files that can be tried again. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { keptCase, keptText, type Failure } from './case.ts';
import { figuresText } from './figures.ts';
import { fuzz, type Figures } from './fuzz.ts';
import { Bench } from './judge.ts';
import { targets } from './targets/index.ts';
import { watch } from './watch.ts';

const help = `npm run fuzz -- [--target NAME] [--tries N | --minutes M] [--seed S] [--guided PERCENT]
npm run fuzz -- --replay FILE...

  --target NAME     one of ${Object.keys(targets).join(', ')} (default: all, by their shares)
  --tries N         tries in all (default: 10000)
  --minutes M       instead: as many as there is time for
  --seed S          start of the random numbers (default: 1)
  --guided PERCENT  for this part of the tries see which inputs go new ways, and keep them to go on from (default: 10)
  --replay FILE     try again what was kept; any number of files
`;

const print = (text: string): void => {
  process.stdout.write(text);
};

const options = {
  target: { type: 'string' },
  tries: { type: 'string' },
  minutes: { type: 'string' },
  seed: { type: 'string', default: '1' },
  guided: { type: 'string', default: '10' },
  replay: { type: 'boolean', default: false },
  help: { type: 'boolean', default: false },
} as const;

async function main(): Promise<number> {
  const { values, positionals } = parseArgs({ options, allowPositionals: true });
  if (values.help) {
    print(help);
    return 0;
  }
  if (values.replay) return replay(positionals);
  const names = values.target === undefined ? Object.keys(targets) : [values.target];
  if (names.some((name) => targets[name] === undefined)) {
    print(help);
    return 2;
  }
  const shares = names.reduce((sum, name) => sum + (targets[name]?.share ?? 0), 0);
  const all: Figures[] = [];
  for (const name of names) {
    const entry = targets[name];
    if (entry === undefined) continue;
    const part = entry.share / shares;
    const minutes = values.minutes === undefined ? undefined : Number(values.minutes) * part;
    const tries = minutes === undefined ? Math.ceil(Number(values.tries ?? 10_000) * part) : Infinity;
    const found = await one(name, { tries, minutes, seed: Number(values.seed), guided: Number(values.guided) });
    all.push(found);
    print(`${name}: ${String(found.tries)} tries, ${String(found.failures.length)} failures\n`);
  }
  print(figuresText(all, Number(values.seed)));
  return all.some(({ failures }) => failures.length > 0) ? 1 : 0;
}

interface Asked {
  readonly tries: number;
  readonly minutes: number | undefined;
  readonly seed: number;
  readonly guided: number;
}

async function one(name: string, { tries, minutes, seed, guided }: Asked): Promise<Figures> {
  const target = await targets[name]?.make();
  if (target === undefined) throw new Error(name);
  const hung = path.join(os.tmpdir(), `cinchwright-fuzz-${name}-hung.json`);
  const { before, end } = watch(hung);
  const until = minutes === undefined ? Infinity : Date.now() + minutes * 60_000;
  const found = await fuzz(target, { tries, seed, guided: Math.round((Math.min(tries, 50_000) * guided) / 100), until, before });
  end();
  found.failures.forEach(keep);
  return found;
}

function keep(failure: Failure, i: number): void {
  const file = path.join(os.tmpdir(), `cinchwright-fuzz-${failure.tried.target}-${String(i + 1)}.json`);
  fs.writeFileSync(file, keptText(failure));
  print(`${file}\n  ${failure.why.slice(0, 400)}\n`);
}

/** Tries again what was kept. */
async function replay(files: readonly string[]): Promise<number> {
  let code = 0;
  for (const file of files) {
    const { tried } = keptCase(fs.readFileSync(file, 'utf8'));
    const target = await targets[tried.target]?.make();
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
