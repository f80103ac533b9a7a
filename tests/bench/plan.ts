/** Times plans and schedules of a big shop, and bounds how far they are from the best; not a test. */
import { performance } from 'node:perf_hooks';
import { planCuts } from '../../src/work/cutting/plan.ts';
import type { CuttingTask } from '../../src/work/cutting/types.ts';
import { planJobs } from '../../src/work/schedule/plan.ts';
import { randomCuts, randomJobs, randomShelf } from '../support/random-shop-work.ts';

const usable = 20 * 96; // 20 ft

function timed<T>(work: () => T): { seconds: number; result: T } {
  const from = performance.now();
  const result = work();
  return { seconds: (performance.now() - from) / 1000, result };
}

function row(name: string, cells: readonly (string | number)[]): void {
  process.stdout.write(`  ${name.padEnd(34)}${cells.map((cell) => String(cell).padStart(11)).join('')}\n`);
}

function benchCutting(name: string, task: CuttingTask): void {
  const { seconds, result } = timed(() => planCuts(task));
  const of = (part: 'short' | 'bought' | 'opened', side: 'value' | 'bound'): number =>
    result.materials.reduce((sum, { score }) => sum + score[part][side], 0);
  const pair = (part: 'short' | 'bought' | 'opened'): string => `${of(part, 'value')} / ${of(part, 'bound')}`;
  const pieces = task.cuts.reduce((sum, { quantity }) => sum + quantity, 0);
  const waste = result.materials.reduce((sum, { score }) => sum + score.waste.value, 0) / 96;
  const proven = result.materials.filter((material) => material.proven).length;
  row(name, [
    pieces,
    seconds.toFixed(2),
    pair('short'),
    pair('bought'),
    pair('opened'),
    result.gap,
    `${proven} of ${result.materials.length}`,
    waste.toFixed(0),
  ]);
}

/** 500 invented orders, shelves of different fullness. */
function benchCuts(): void {
  process.stdout.write('\ncutting plan of 500 orders (found / bound, summed over colors)\n');
  row('shelf', ['pieces', 'seconds', 'short', 'bought', 'opened', 'gap', 'proven', 'waste, ft']);
  for (const [name, fill] of [
    ['remnants only', 0],
    ['about as much cord as needed', 1],
    ['plenty', 3],
  ] as const) {
    for (const seed of [1, 2, 3]) {
      benchCutting(`${name}, seed ${seed}`, {
        cuts: randomCuts(500, seed),
        ...randomShelf(seed, fill),
        usable,
      });
    }
  }
  const task = { cuts: randomCuts(500, 3), ...randomShelf(3, 1), usable };
  benchCutting('nothing to be bought, seed 3', { ...task, buyable: [] });
}

/** 500 invented jobs. */
function benchJobs(): void {
  process.stdout.write('\nschedule of 500 jobs\n');
  row('benches', ['seconds', 'late', 'bound', 'gap']);
  for (const benches of [1, 2, 4]) {
    const { seconds, result } = timed(() => planJobs(randomJobs(500, benches, benches)));
    const { value, bound } = result.late;
    row(`${benches}`, [seconds.toFixed(2), value, bound, value - bound]);
  }
}

export function benchPlans(): void {
  benchCuts();
  benchJobs();
}
