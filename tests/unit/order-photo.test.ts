/** The photo block: every fault at its place. */
import { describe, expect, test } from 'vitest';
import { orderIn, orderProblems, problemLine } from '../support/door.ts';
import { demoPhoto } from '../support/photo-scenes.ts';
import { repoText } from '../support/run-cli.ts';

const example = repoText('examples/orders/25-photo.yaml');
const stick = 'reference: { length: 36 in, from: [644, 640], to: [956, 647] }';
const sheet = (corners: string): string =>
  `reference: { width: 36 in, height: 24 in, corners: [${corners}] }`;

/** Each exchanged text must be there. */
function changed(...exchanges: readonly (readonly [string, string])[]): string {
  let text = example;
  for (const [from, to] of exchanges) {
    expect(text).toContain(from);
    text = text.replace(from, to);
  }
  return text;
}

function photoIn(text: string) {
  return orderIn(text).photo;
}

const told = (text: string): string[] => orderProblems(text).map(problemLine);

describe('taken', () => {
  test('the example, whose marks are those of the demo camera', () => {
    expect(photoIn(example)).toEqual(demoPhoto);
  });
  test('a flat sheet', () => {
    const corners = '[600, 500], [900, 504], [896, 704], [602, 700]';
    expect(photoIn(changed([stick, sheet(corners)]))?.reference).toEqual({
      kind: 'sheet',
      width: 36,
      height: 24,
      corners: [
        [600, 500],
        [900, 504],
        [896, 704],
        [602, 700],
      ],
    });
  });
  test.each([
    ['parts of pixels', [['[696, 673]', '[696.5, 673.25]']], [696.5, 673.25]],
    ['a list below its key', [['elbow: [696, 673]', 'elbow:\n    - 696\n    - 673']], [696, 673]],
    ['places in quotes', [['[696, 673]', '["696", \'673\']']], [696, 673]],
  ] as const)('%s', (_, exchanges, elbow) => {
    expect(photoIn(changed(...exchanges))?.elbow).toEqual(elbow);
  });
  test('without what may be left out', () => {
    const text = example.replace(/^ {2}(?:plumb|spine|underline|fork|cantle|camera-distance):.*\n/gm, '');
    const left = ['plumb', 'spine', 'underline', 'fork', 'cantle', 'cameraDistance'];
    expect(Object.keys(photoIn(text) ?? {}).filter((name) => left.includes(name))).toEqual([]);
  });
  test('an order without a photo has none', () => {
    expect(photoIn(example.replace(/^photo:[^]*/m, ''))).toBeUndefined();
  });
});

describe('told', () => {
  test.each([
    // Outside the picture.
    [
      [['ring: [728, 549]', 'ring: [1728, 549]']],
      '18:9 photo.ring | [1728, 549] | a place in the picture, at most [1600, 1200]',
    ],
    [
      [
        ['image-size: [1600, 1200]', 'image-size: [1200, 1600]'],
        ['top: [1137', 'top: [1237'],
      ],
      'is image-size for the picture on its side?',
    ],
    [
      [['ring: [728, 549]', 'ring: [-728, 549]']],
      '18:10 photo.ring[0] | -728 | pixels, a number from 0 to 20000',
    ],
    [
      [['ring: [728, 549]', 'ring: [716.3399999999999, 549]']],
      'at most 6 before and 6 after the point; did you mean "716.34"?',
    ],
    [[['ring: [728, 549]', 'ring: [7e2, 549]']], 'write the number in plain digits'],
    // Out of order.
    [
      [['elbow: [696, 673]', 'elbow: [790, 673]']],
      '23:9 photo.fork | [725, 431] | a fork ahead of the cantle | by elbow and girth-groove the horse faces right',
    ],
    [[['fork: [725, 431]', 'fork: [925, 431]']], '23:9 photo.fork | [925, 431] | a fork ahead of the cantle'],
    [
      [
        ['  fork: [725, 431]\n', ''],
        ['cantle: [830', 'cantle: [530'],
      ],
      '23:11 photo.cantle | [530, 440] | a cantle behind the elbow',
    ],
    [
      [['elbow: [696, 673]', 'elbow: [736, 673]']],
      '19:10 photo.elbow | [736, 673] | a place ahead of the girth groove',
    ],
    [
      [['spine: [741, 475]', 'spine: [741, 775]']],
      '22:14 photo.underline | [736, 698] | a place below the spine: pixels count down',
    ],
    [
      [['ring: [728, 549]', 'ring: [728, 720]']],
      '18:9 photo.ring | [728, 720] | a place above the underline',
    ],
    [
      [['ring: [728, 549]', 'ring: [600, 549]']],
      '18:9 photo.ring | [600, 549] | a ring from 3.0 in ahead of the elbow to 16.0 in behind it; the reference puts it 11.1 in ahead | are elbow and girth-groove swapped?',
    ],
    // Not there, and needed.
    [[['  ring: [728, 549]\n', '']], 'middle of the rigging ring, needed: the cinch hangs here'],
    [[['  elbow: [696, 673]\n', '']], 'back of the elbow, needed: the room starts here'],
    [[['  girth-groove: [736, 698]\n', '']], 'girth groove on the underline, needed: the room ends here'],
    // The reference.
    [
      [['to: [956, 647]', 'to: [700, 647]']],
      '16:53 photo.reference.to | [700, 647] | a reference at least 100 pixels long | it is 56 pixels long: too short for a scale',
    ],
    [
      [[stick, sheet('[600, 500], [900, 500], [600, 700], [900, 700]')]],
      '16:54 photo.reference.corners | a list | corners in order around the sheet, none inside the others | the edges cross',
    ],
    [[[stick, sheet('[600, 500], [900, 500], [700, 560], [600, 700]')]], 'none inside the others'],
    [[[stick, sheet('[600, 500], [600, 700], [900, 700], [900, 500]')]], 'they run counterclockwise'],
    [
      [[stick, sheet('[900, 500], [900, 700], [600, 700], [600, 500]')]],
      'the top left corner of the sheet first',
    ],
    [[[stick, sheet('[600, 500], [640, 500], [640, 700], [600, 700]')]], 'too short for a scale'],
    [
      [[stick, sheet('[600, 500], [900, 500], [900, 700]')]],
      '16:54 photo.reference.corners | a list | four corners, clockwise from the top left of the sheet, as [[x, y], [x, y], [x, y], [x, y]] in pixels | there are 3 entries',
    ],
    [
      [['{ length: 36 in,', '{ length: 36 in, width: 8 in,']],
      '16:14 photo.reference | a block of keys | length, from and to of a stick, or width, height and corners of a flat sheet | one of the two, not both',
    ],
    [[[', to: [956, 647]', '']], '16:14 photo.reference | a block of keys | length, from and to of a stick'],
    [[['length: 36 in', 'length: 36']], 'add a unit'],
    // Sizes that no horse has.
    [
      [['length: 36 in', 'length: 72 in']],
      '19:10 photo.elbow | [696, 673] | back of elbow to girth groove from 1.0 in to 9.0 in; the reference makes it 9.2 in | is the length of the reference right',
    ],
    [
      [['length: 36 in', 'length: 72 in']],
      '21:10 photo.spine | [741, 475] | depth of the barrel from 14.0 in to 36.0 in; the reference makes it 51.4 in',
    ],
    [
      [['heart-girth: 74 in', 'heart-girth: 54 in']],
      '21:10 photo.spine | [741, 475] | spine and underline 14.6 in to 24.8 in apart, for a heart girth of 54.0 in',
    ],
    [
      [
        ['  heart-girth: 74 in\n', ''],
        ['length: 36 in', 'length: 25 in'],
      ],
      'for a height of 62.0 in',
    ],
    // The camera and the string.
    [
      [['12 ft', '5000 ft']],
      '25:20 photo.camera-distance | 5000 ft | camera to the near side of the barrel from 48 in to 720 in',
    ],
    [
      [['12 ft', '4 ft']],
      '25:20 photo.camera-distance | 4 ft | a camera farther away: the picture is 184.6 in wide at the horse | no lens sees 125 degrees wide',
    ],
    [
      [['bottom: [1132, 695]', 'bottom: [1400, 695]']],
      '17:38 photo.plumb.bottom | [1400, 695] | a string that hangs within 20 degrees of upright | it leans by 38 degrees',
    ],
    [
      [['bottom: [1132, 695]', 'bottom: [1132, 295]']],
      '17:38 photo.plumb.bottom | [1132, 295] | a bottom below the top',
    ],
    [[['bottom: [1132, 695]', 'bottom: [1132, 400]']], 'a string at least 100 pixels long'],
    // The way it is written.
    [
      [['ring: [728, 549]', 'ring: [728, 549, 3]']],
      '18:9 photo.ring | a list | middle of the rigging ring, needed: the cinch hangs here, as [from the left, from the top] in pixels | there are 3 entries',
    ],
    [[['ring: [728, 549]', 'ring: 728']], '18:9 photo.ring | 728 | middle of the rigging ring'],
    [
      [['ring: [728, 549]', 'ring: { x: 728, y: 549 }']],
      '18:9 photo.ring | a block of keys | middle of the rigging ring',
    ],
    [[['ring: [728, 549]', 'ring: [left, 549]']], '18:10 photo.ring[0] | left | pixels, a number'],
    [[['girth-groove', 'groove']], '20:3 photo.groove | groove | a key of photo: file'],
    [[['  elbow: [696, 673]\n', '']], 'photo.elbow'],
    [[['[1600, 1200]', '[1600.5, 1200]']], 'photo.image-size[0]'],
  ] as const)('%j', (exchanges, expected) => {
    expect(told(changed(...exchanges)).filter((line) => line.includes(expected))).toHaveLength(1);
  });

  test('one slip is told once, without what follows from it', () => {
    expect(told(changed(['ring: [728, 549]', 'ring: [728, 1549]']))).toHaveLength(1);
    expect(told(changed(['spine: [741, 475]', 'spine: [741, 1775]']))).toHaveLength(1);
    expect(told(changed(['elbow: [696, 673]', 'elbow: [9696, 673]']))).toHaveLength(1);
  });

  test('a fault elsewhere does not hide those of the photo', () => {
    const text = changed(['rigging: 7/8', 'rigging: 9/8'], ['to: [956, 647]', 'to: [700, 647]']);
    expect(told(text).map((line) => line.split(' ')[1])).toEqual(['saddle.rigging', 'photo.reference.to']);
  });
});
