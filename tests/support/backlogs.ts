/** Many invented orders in a folder, and a disk that fills up. */
import fs from 'node:fs';
import path from 'node:path';

/** Heights and riggings differ, so rows do. */
export function orderText(i: number): string {
  const rigging = ['full', '7/8', '3/4', '5/8', 'center-fire'][i % 5] ?? 'full';
  const horse = `{ name: Horse ${i}, height: ${14 + (i % 3)}.${i % 4} hh, heart-girth: ${68 + (i % 9)} in }`;
  return `order: N-${i}\ncustomer: { name: "Invented, ${i}" }\nhorse: ${horse}\nsaddle: { rigging: ${rigging} }\n`;
}

export const orderLine = (i: number): string =>
  JSON.stringify({
    order: `N-${i}`,
    horse: { name: `Horse ${i}`, height: `${14 + (i % 3)}.${i % 4} hh`, 'heart-girth': `${68 + (i % 9)} in` },
    saddle: { rigging: ['full', '7/8', '3/4'][i % 3] },
  });

/** Every third file has two orders, every seventh a fault; some numbers repeat. */
export function writeOrders(folder: string, files: number): void {
  for (let i = 0; i < files; i++) {
    const at = path.join(folder, `part-${i % 3}`, `${String(i).padStart(4, '0')}.yaml`);
    fs.mkdirSync(path.dirname(at), { recursive: true });
    const one = i % 7 === 5 ? 'order: bad\nhorse: { height: 15.4 hh }\nsaddle: {}\n' : orderText(i);
    fs.writeFileSync(at, i % 3 === 0 ? `${one}---\n${orderText(i + 1)}` : one);
  }
}

/** Loaded before the program: the disk is full after so many bytes. */
export const fullDisk = (room: number): string => `
const fs = require('node:fs');
let left = ${room};
const real = fs.writeSync;
fs.writeSync = (handle, bytes, from = 0, ...rest) => {
  if (handle < 3) return real(handle, bytes, from, ...rest);
  if (left <= 0) throw Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC', syscall: 'write' });
  const done = real(handle, bytes, from, Math.min(left, bytes.length - from));
  left -= done;
  return done;
};
`;
