/** Which bytes are text, and what is said of others. */
import { describe, expect, test } from 'vitest';
import { mostBytes, textOf } from '../../src/cli/text-file.ts';

const bytes = (...parts: (string | number[])[]): Buffer =>
  Buffer.concat(parts.map((part) => (typeof part === 'string' ? Buffer.from(part) : Buffer.from(part))));

test('UTF-8 is read as it stands', () => {
  for (const text of ['', 'order: 1\n', 'Zoë 🐎 ½', '\ufeffwith a mark']) {
    expect(textOf(Buffer.from(text))).toEqual({ ok: true, text });
  }
});

describe('the first wrong byte is found', () => {
  test.each([
    ['alone', bytes([0xe9]), 1, 1],
    ['at the end', bytes('a\nb\n', [0xff]), 5, 3],
    ['after good signs of several bytes', bytes('é€🐎\n', [0xe9], 'x'), 11, 2],
    ['a sign cut off by the end', bytes('ab', [0xe2, 0x82]), 3, 1],
    ['a sign cut off by another', bytes('ab', [0xf0, 0x9f], 'c'), 3, 1],
    ['a later byte without a first', bytes('ab', [0x80], 'c'), 3, 1],
    ['four later bytes', bytes('ab', [0x80, 0x80, 0x80, 0x80]), 3, 1],
    ['a zero written too long', bytes('ab', [0xc0, 0x80]), 3, 1],
    ['half a pair', bytes('ab', [0xed, 0xa0, 0x80]), 3, 1],
  ])('%s', (...[, data, at, line]) => {
    const read = textOf(data);
    expect(read).toMatchObject({ ok: false, line });
    expect(read.ok ? '' : read.why).toContain(`byte ${String(at)} of the file, on line ${String(line)},`);
  });
});

test('other kinds of files are told apart', () => {
  expect(textOf(Buffer.from('\ufefforder', 'utf16le'))).toMatchObject({
    ok: false,
    why: expect.stringContaining('UTF-16') as string,
  });
  expect(textOf(bytes('GIF\n', [0]))).toMatchObject({ ok: false, line: 2, why: 'it is not a text file' });
  expect(textOf(Buffer.alloc(mostBytes, 'a'))).toMatchObject({ ok: true });
  expect(textOf(Buffer.alloc(mostBytes + 1, 'a'))).toMatchObject({
    ok: false,
    why: expect.stringContaining('too large') as string,
  });
});
