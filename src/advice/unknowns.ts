/** What a tape or a photo could read, before anybody has: the value thought of, its spread, and where the reading goes. */
import type { Facts } from '../horse/facts.ts';
import { stationSd } from '../horse/ring.ts';
import { solveEllipse } from '../math/ellipse.ts';
import type { Order } from '../order/types.ts';
import { askingNumbers } from '../numbers/asking-numbers.ts';
import type { Model, ModelKey } from '../numbers/numbers.ts';

/** One length that nobody has measured yet. */
export interface Unknown {
  /** What is thought of it now, and how sure; inches. */
  readonly value: number;
  readonly sd: number;
  /** Spread of the reading itself. */
  readonly reading: number;
  /** No reading is less than this. */
  readonly least: number;
  readonly enter: (order: Order, read: number) => Order;
  /** The number of the model that holds how sure a reading is; undefined where the model has its own way to weigh it. */
  readonly spreadKey: ModelKey | undefined;
}

type Lengths = Pick<Unknown, 'value' | 'sd' | 'reading'>;

const inHorse =
  (change: (read: number) => Partial<Order['horse']>): Unknown['enter'] =>
  (order, read) => ({ ...order, horse: { ...order.horse, ...change(read) } });

const inSaddle =
  (change: (read: number) => Partial<Order['saddle']>): Unknown['enter'] =>
  (order, read) => ({ ...order, saddle: { ...order.saddle, ...change(read) } });

/** Groove to elbow; nobody's guess of it is surer than the girth it is scaled by. */
export function roomUnknown({ room, girth, model }: Facts, reading = model['elbow-room-taped-sd']): Unknown {
  return {
    ...lengths({ value: room.value, sd: Math.hypot(room.sd, room.perGirth * girth.sd), reading }),
    least: 0.5,
    enter: inHorse((elbowRoom) => ({ elbowRoom })),
    spreadKey: 'elbow-room-taped-sd',
  };
}

/** Full position back to the ring. */
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

/** Round the barrel. */
export const girthUnknown = ({ girth, model }: Facts): Unknown => ({
  ...lengths({ value: girth.value, sd: girth.sd, reading: model['girth-taped-sd'] }),
  least: girth.value / 2,
  enter: inHorse((heartGirth) => ({ heartGirth })),
  spreadKey: 'girth-taped-sd',
});

/** Ring to ring under the groove; twice what one side is out by. */
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

/** Spine to ring, as a photo shows it. */
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

/** Depth of the barrel, as a photo shows it; the program weighs it with the average barrel by itself. */
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

/** What the program is told when the tape reads this. */
export interface Read {
  readonly order: Order;
  readonly model: Model;
}

/** What is asked for together, and the model once it is known: made once, since a draw changes only what was read. */
export interface Asked {
  readonly unknowns: readonly Unknown[];
  readonly order: Order;
  /** With readings as sure as such readings are. */
  readonly readModel: Model;
  /** With readings weighed with what was thought before. */
  readonly believedModel: Model;
}

/** The unknowns of a question as they stand in an order. */
export function askedOf(unknowns: readonly Unknown[], { order, model }: Read): Asked {
  const withSpreads = (spread: (unknown: Unknown) => number): Model => {
    const known = unknowns.flatMap((unknown) =>
      unknown.spreadKey === undefined ? [] : [[unknown.spreadKey, spread(unknown)] as const],
    );
    return known.every(([key, sd]) => model[key] === sd) ? model : { ...model, ...Object.fromEntries(known) };
  };
  return {
    unknowns,
    order,
    readModel: withSpreads(({ reading }) => reading),
    believedModel: withSpreads(({ sd, reading }) => believedSd(sd, reading)),
  };
}

/** Of a normal value with a normal prior, once it was read with a normal error. */
const believedSd = (sd: number, reading: number): number =>
  sd === 0 ? 0 : (sd * reading) / Math.hypot(sd, reading);

/** What a draw of standard normal values, one an unknown, makes of an order. */
export interface Drawn {
  /** As the program takes it: the reading as it stands. */
  readonly read: Order;
  /** As it then has to be believed: the reading weighed with what was thought before (normal prior, normal error). */
  readonly believed: Order;
}

/** The reading of each unknown for its standard normal value, entered into the order. */
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
