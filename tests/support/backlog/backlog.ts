/** Invented orders, one a file, a thousand files a folder. */
import { seededRandom } from '../../../src/math/random.ts';
import { happens } from '../draw.ts';
import { faulty } from './faults.ts';
import { orderText } from './order.ts';

export interface BacklogFile {
  readonly name: string;
  readonly text: string;
}

export interface Backlog {
  readonly count: number;
  readonly seed: number;
  readonly faultyPercent: number;
}

const perFolder = 1000;
/** Apart, so faults leave good orders the same. */
const faultStream = 2 ** 40;

/** An order is the same in any count. */
export function* backlogFiles({ count, seed, faultyPercent }: Backlog): Generator<BacklogFile> {
  for (let number = 1; number <= count; number++) {
    const text = orderText(seed, number);
    const chance = seededRandom(seed, faultStream + number);
    const broken = happens(chance, faultyPercent / 100);
    yield { name: nameOf(number), text: broken ? faulty(text, chance) : text };
  }
}

function nameOf(number: number): string {
  const folder = Math.floor((number - 1) / perFolder);
  return `${String(folder).padStart(4, '0')}/order-${String(number).padStart(6, '0')}.yaml`;
}
