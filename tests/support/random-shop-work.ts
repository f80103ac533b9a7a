/** Invented cuts and jobs of a small shop. */
import type { Buyable, Cut, CuttingTask, PutUp } from '../../src/work/cutting/types.ts';
import { seededRandom, type Random } from '../../src/math/random.ts';
import type { Job, ScheduleTask } from '../../src/work/schedule/types.ts';
import { dayNumber, dayOf } from '../../src/units/days.ts';

const foot = 96;
const bodyColors = ['natural', 'charcoal', 'chestnut', 'sorrel', 'buckskin'];
const accentColors = ['natural', 'black', 'rust', 'turquoise', 'sage'];

const below = (random: Random, n: number): number => random.next() % n;
const oneOf = <T>(random: Random, list: readonly T[]): T => list[below(random, list.length)]!;

/**
 * One continuous body cord, eighths: (n s + (n-1) 0.6 + 2 t)/12 feet and 15 %, s = L - 5, t = 2 n pi 0.2, up to a
 * whole inch.
 */
function bodyCord(strands: number, inches: number): number {
  const tail = 2 * strands * Math.PI * 0.2;
  const feet = ((strands * (inches - 5) + (strands - 1) * 0.6 + 2 * tail) / 12) * 1.15;
  return Math.ceil(feet * 12) * 8;
}

/** A body cord in 8-ply, up to two accents in 2-ply; one order in ten is for two cinches. */
export function randomCuts(orders: number, seed: number): Cut[] {
  const random = seededRandom(seed);
  return Array.from({ length: orders }, (_, i): Cut[] => {
    const order = `${1000 + i}`;
    const quantity = below(random, 10) === 0 ? 2 : 1;
    const strands = 13 + 2 * below(random, 10);
    const inches = 26 + below(random, 11);
    const accents = below(random, 3);
    const first = below(random, accentColors.length);
    const body: Cut = {
      id: `${order}-body`,
      order,
      color: oneOf(random, bodyColors),
      ply: 8,
      length: bodyCord(strands, inches),
      quantity,
    };
    const accent = (k: number): Cut => ({
      id: `${order}-accent-${k + 1}`,
      order,
      color: accentColors[(first + k) % accentColors.length]!,
      ply: 2,
      // 4.5 ft per inch of bar, a quarter inch a strand, half for two colors, whole inches.
      length: Math.ceil(((4.5 * 12 * strands * 0.25) / Math.max(1, accents)) * 1) * 8,
      quantity,
    });
    return [body, ...Array.from({ length: accents }, (_, k) => accent(k))];
  }).flat();
}

/** Remnants, 300 ft skeins and 600 ft spools in two dye lots, and more to buy. */
export function randomShelf(seed: number, fill: number): Pick<CuttingTask, 'onHand' | 'buyable'> {
  const random = seededRandom(seed, 7);
  const materials = [
    ...bodyColors.map((color) => ({ color, ply: 8 })),
    ...accentColors.map((color) => ({ color, ply: 2 })),
  ];
  const onHand = materials.flatMap((material): PutUp[] =>
    ['A', 'B'].flatMap((lot) => {
      const name = `${material.color} ${material.ply} ${lot}`;
      const remnants = Array.from({ length: 3 }, (_, i): PutUp => ({
        ...material,
        ...{ id: `${name} remnant ${i + 1}`, lot, length: (20 + below(random, 180)) * foot, count: 1 },
        opened: true,
      }));
      const whole = [300, 600].map((feet): PutUp => ({
        ...material,
        ...{
          id: `${name} ${feet} ft`,
          lot,
          length: feet * foot,
          count: Math.round(fill * (1 + below(random, 6))),
        },
        opened: false,
      }));
      return [...remnants, ...whole];
    }),
  );
  const buyable = materials.flatMap((material) =>
    [300, 600].map((feet): Buyable => ({
      ...material,
      id: `${material.color} ${material.ply} new ${feet} ft`,
      length: feet * foot,
    })),
  );
  return { onHand, buyable };
}

/** Eight-hour weekdays, jobs of one to six hours, half with a due day. */
export function randomJobs(jobs: number, seed: number, benches: number): ScheduleTask {
  const random = seededRandom(seed, 11);
  const start = '2026-11-30';
  const dayAfter = (days: number): string => dayOf(dayNumber(start) + days);
  // About 3.5 hours a job: calendar days for all.
  const through = Math.ceil(((jobs * 210) / (480 * benches)) * (7 / 5));
  return {
    days: { weekdays: [1, 2, 3, 4, 5], holidays: ['2026-12-25', '2027-01-01', '2027-07-04'] },
    start,
    benches: Array.from({ length: benches }, (_, i) => ({
      id: `bench ${i + 1}`,
      minutesADay: i === 0 ? 480 : 420,
    })),
    jobs: Array.from({ length: jobs }, (_, i): Job => {
      const minutes = 60 + 15 * below(random, 21);
      const job = { id: `${1000 + i}`, minutes };
      if (below(random, 2) === 0) return job;
      return { ...job, due: dayAfter(3 + below(random, Math.round(through * 0.45))) };
    }),
  };
}
