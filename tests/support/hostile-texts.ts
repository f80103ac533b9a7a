/** Orders, shops and problems with one text wherever a text may stand. */
import type { Problem } from '../../src/yaml/problem.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { demoPhoto } from './photo-scenes.ts';

export function orderWith(text: string): Order {
  return {
    order: text,
    customer: { name: text, phone: text, email: text },
    quantity: 1,
    use: 'roping',
    horse: { name: text, heartGirth: 73, trouble: ['elbow-gall'], barrel: 'round' },
    saddle: { rigging: { kind: 'named', name: text, fraction: 7 / 8 }, ringToRing: 44 },
    wants: { strands: 25, buckle: text },
    current: { style: 'straight', strands: 27, buckle: `no ${text}` },
    colors: { body: [text], accent: [text] },
    photo: { ...demoPhoto, file: text },
    notes: text,
  };
}

export const shopWith = (text: string): Shop => ({
  ...defaultShop,
  name: text,
  buckles: defaultShop.buckles.map((buckle, i) => ({ ...buckle, id: i === 0 ? text : buckle.id + text })),
  cords: defaultShop.cords.map((cord) => ({ ...cord, color: cord.color + text })),
});

export const problemWith = (text: string): Problem => ({
  file: text,
  line: 1,
  column: 1,
  path: text,
  found: text,
  expected: text,
  hint: text,
});
