/** A backlog of invented orders, one file an order, a thousand files a folder. */
import { seededRandom } from '../../../src/math/random.ts';
import { happens } from './draw.ts';
import { faulty } from './faults.ts';
import { orderText } from './order.ts';

/** A file to write: its name below the folder, and its text. */
export interface BacklogFile {
  readonly name: string;
  readonly text: string;
}

export interface Backlog {
  readonly count: number;
  readonly seed: number;
  /** How many of a hundred have a fault. */
  readonly faultyPercent: number;
}

const perFolder = 1000;
/** Faults are drawn beside the orders, so that a good order is the same with faults around it or without. */
const faultStream = 2 ** 40;

/** The files one after the other; an order does not depend on how many there are. */
export function* backlogFiles({ count, seed, faultyPercent }: Backlog): Generator<BacklogFile> {
  for (let number = 1; number <= count; number++) {
    const text = orderText(seed, number);
    const chance = seededRandom(seed, faultStream + number);
    const broken = happens(chance, faultyPercent / 100);
    yield { name: nameOf(number), text: broken ? faulty(text, chance) : text };
  }
}

/** "0000/order-000001.yaml": names in the order of the numbers. */
function nameOf(number: number): string {
  const folder = Math.floor((number - 1) / perFolder);
  return `${String(folder).padStart(4, '0')}/order-${String(number).padStart(6, '0')}.yaml`;
}
