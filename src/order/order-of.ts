/** An order as it is written becomes an order as the program knows it. */
import type { WrittenOrder } from './order-schema.ts';
import { photoOf } from './photo-schema.ts';
import type { Horse, Order, Saddle } from './types.ts';

/** "ring-to-ring" is ringToRing. */
type Camel<S> = S extends `${infer A}-${infer B}` ? `${A}${Capitalize<Camel<B>>}` : S;

/** Every key of a block as written, and of its type: one forgotten here would be read and dropped without a word. */
type Whole<T, W> = { [K in keyof Required<T>]: T[K] } & Record<Camel<keyof W & string>, unknown>;

/** From keys as written to the names inside the program; what every order has gets its default here. */
export function orderOf(written: WrittenOrder): Order {
  return {
    ...written,
    quantity: written.quantity ?? 1,
    wants: saidOf(written.wants),
    current: saidOf(written.current),
    photo: photoOf(written.photo),
    horse: horseOf(written.horse),
    saddle: saddleOf(written.saddle),
  };
}

/** A block in which nothing stands says nothing. */
const saidOf = <B extends object>(block: B | undefined): B | undefined =>
  block === undefined || Object.values(block).every((value) => value === undefined) ? undefined : block;

/** The horse, as orders and outcomes write it. */
export const horseOf = (horse: WrittenOrder['horse']): Whole<Horse, WrittenOrder['horse']> => ({
  name: horse.name,
  height: horse.height,
  heartGirth: horse['heart-girth'],
  bodyLength: horse['body-length'],
  ...elbowOf(horse['elbow-room']),
  barrel: horse.barrel,
  withers: horse.withers,
  condition: horse.condition,
  kind: horse.kind,
  trouble: horse.trouble ?? [],
});

/** A cinch has to clear both elbows: the tighter one decides. */
function elbowOf(
  room: WrittenOrder['horse']['elbow-room'],
): Required<Pick<Horse, 'elbowRoom' | 'elbowSides'>> {
  if (typeof room !== 'object') return { elbowRoom: room, elbowSides: undefined };
  return { elbowRoom: Math.min(room.near, room.off), elbowSides: room };
}

/** The saddle, as orders and outcomes write it. */
export const saddleOf = (saddle: WrittenOrder['saddle']): Whole<Saddle, WrittenOrder['saddle']> => ({
  rigging: saddle.rigging,
  style: saddle.style,
  barSpan: saddle['bar-span'],
  ringToRing: saddle['ring-to-ring'],
  ringDrop: saddle['ring-drop'],
  double: saddle.double,
});
