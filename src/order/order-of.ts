/** An order as it is written becomes an order as the program knows it. */
import type { WrittenOrder } from './order-schema.ts';
import { photoOf } from './photo-schema.ts';
import type { Order } from './types.ts';

/** From keys as written to the names inside the program; what every order has gets its default here. */
export function orderOf(written: WrittenOrder): Order {
  const { horse, saddle } = written;
  return {
    ...written,
    quantity: written.quantity ?? 1,
    photo: photoOf(written.photo),
    horse: {
      name: horse.name,
      height: horse.height,
      heartGirth: horse['heart-girth'],
      bodyLength: horse['body-length'],
      elbowRoom: horse['elbow-room'],
      barrel: horse.barrel,
      withers: horse.withers,
      condition: horse.condition,
      kind: horse.kind,
      trouble: horse.trouble ?? [],
    },
    saddle: {
      rigging: saddle.rigging,
      style: saddle.style,
      barSpan: saddle['bar-span'],
      ringToRing: saddle['ring-to-ring'],
      ringDrop: saddle['ring-drop'],
      double: saddle.double,
    },
  };
}
