/** What a tape or photo might read, and its spread. */
import type { Facts } from '../horse/facts.ts';
import { stationSd } from '../horse/ring.ts';
import { solveEllipse } from '../math/ellipse.ts';
import type { Order } from '../order/types.ts';
import { askingNumbers } from '../numbers/asking-numbers.ts';
import type { Model, ModelKey } from '../numbers/numbers.ts';

export interface Unknown {
  /** Expected now, inches. */
  readonly value: number;
  readonly sd: number;
  /** Spread of the reading. */
  readonly reading: number;
  readonly least: number;
  readonly enter: (order: Order, read: number) => Order;
  /** Undefined where the model averages. */
  readonly spreadKey: ModelKey | undefined;
}

type Lengths = Pick<Unknown, 'value' | 'sd' | 'reading'>;

const inHorse =
  (change: (read: number) => Partial<Order['horse']>): Unknown['enter'] =>
  (order, read) => ({ ...order, horse: { ...order.horse, ...change(read) } });

const inSaddle =
  (change: (read: number) => Partial<Order['saddle']>): Unknown['enter'] =>
  (order, read) => ({ ...order, saddle: { ...order.saddle, ...change(read) } });

/** Never surer than the girth that scales it. */
export function roomUnknown({ room, girth, model }: Facts, reading = model['elbow-room-taped-sd']): Unknown {
  return {
    ...lengths({ value: room.value, sd: Math.hypot(room.sd, room.perGirth * girth.sd), reading }),
    least: 0.5,
    enter: inHorse((elbowRoom) => ({ elbowRoom })),
    spreadKey: 'elbow-room-taped-sd',
  };
}

/** Full position to ring. */
export function setBackUnknown(
  { ring, girth, model }: Facts,
  reading = model['measured-position-sd'],
): Unknown {
  const sd = Math.hypot(ring.setBack.sd, ring.setBackPerGirth * girth.sd);
  return {
    ...lengths({ value: ring.setBack.value, sd, reading }),
    least: -3,
    enter: inSaddle((setBack) => ({ rigging: { kind: 'measured', setBack } })),
    spreadKey: 'measured-position-sd',
  };
}

/** Around the barrel. */
export const girthUnknown = ({ girth, model }: Facts): Unknown => ({
  ...lengths({ value: girth.value, sd: girth.sd, reading: model['girth-taped-sd'] }),
  least: girth.value / 2,
  enter: inHorse((heartGirth) => ({ heartGirth })),
  spreadKey: 'girth-taped-sd',
});

/** Twice the error of one side. */
export const ringToRingUnknown = ({ ring, girth, lengthNeed, model }: Facts): Unknown => ({
  ...lengths({
    value: lengthNeed.ringToRing.value,
    sd: 2 * stationSd(ring, girth),
    reading: model['ring-to-ring-sd'],
  }),
  least: 8,
  enter: inSaddle((ringToRing) => ({ ringToRing })),
  spreadKey: 'ring-to-ring-sd',
});

/** By photo. */
export const dropUnknown = ({ ring, girth }: Facts): Unknown => ({
  ...lengths({
    value: girth.value / 2 - ring.station.value,
    sd: ring.station.sd,
    reading: askingNumbers['photo-drop-sd'].value,
  }),
  least: 2,
  enter: inSaddle((ringDrop) => ({ ringDrop })),
  spreadKey: 'drop-measured-sd',
});

/** By photo; the model averages it with the usual. */
export function depthUnknown({ barrel, girth }: Facts): Unknown {
  const depthAt = (ratio: number): number => 2 * solveEllipse(girth.value, ratio).halfDepth;
  const { value, sd } = barrel.ratio;
  const byRatio = Math.abs(depthAt(value - sd) - depthAt(value + sd)) / 2;
  const depth = depthAt(value);
  return {
    ...lengths({
      value: depth,
      sd: Math.hypot(byRatio, (depth * girth.sd) / girth.value),
      reading: askingNumbers['photo-depth-sd'].value,
    }),
    least: depth / 2,
    enter: inHorse((read) => ({ barrel: { depth: read } })),
    spreadKey: undefined,
  };
}

const lengths = ({ value, sd, reading }: Lengths): Lengths => ({ value, sd, reading });

export interface Read {
  readonly order: Order;
  readonly model: Model;
}

/** Made once: draws change only readings. */
export interface Asked {
  readonly unknowns: readonly Unknown[];
  readonly order: Order;
  /** With the readings' own spreads. */
  readonly readModel: Model;
  /** Averaged with what was expected. */
  readonly believedModel: Model;
}

/** A question's unknowns in an order. */
export function askedOf(unknowns: readonly Unknown[], { order, model }: Read): Asked {
  const withSpreads = (spread: (unknown: Unknown) => number): Model => {
    const known = unknowns.flatMap((unknown) =>
      unknown.spreadKey === undefined ? [] : [[unknown.spreadKey, spread(unknown)] as const],
    );
    return { ...model, ...Object.fromEntries(known) };
  };
  return {
    unknowns,
    order,
    readModel: withSpreads(({ reading }) => reading),
    believedModel: withSpreads(({ sd, reading }) => believedSd(sd, reading)),
  };
}

/** Posterior sd of a normal value. */
const believedSd = (sd: number, reading: number): number =>
  sd === 0 ? 0 : (sd * reading) / Math.hypot(sd, reading);

export interface Drawn {
  /** As read. */
  readonly read: Order;
  /** Averaged with what was expected. */
  readonly believed: Order;
}

/** Enters one reading per unknown, from standard normals. */
export function drawOf({ unknowns, order }: Asked, normals: readonly number[]): Drawn {
  let read = order;
  let believed = order;
  unknowns.forEach(({ value, sd, reading, least, enter }, i) => {
    const total = Math.hypot(sd, reading);
    const found = Math.max(least, value + total * (normals[i] ?? 0));
    read = enter(read, found);
    believed = enter(believed, total === 0 ? value : value + (sd / total) ** 2 * (found - value));
  });
  return { read, believed };
}
