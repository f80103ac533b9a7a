/** `photo` checks the picture beside the order against the block. */
import fs from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { beforeEach, describe, expect, test } from 'vitest';
import { testFolder } from '../support/own-folder.ts';
import { repoText, run } from '../support/run-cli.ts';

const example = repoText('examples/orders/25-photo.yaml');
let home = '';
beforeEach(() => {
  home = testFolder();
  fs.mkdirSync(path.join(home, 'orders', 'photos'), { recursive: true });
  put('orders/o.yaml', example);
});

const put = (name: string, content: string | Buffer): void => {
  fs.writeFileSync(path.join(home, name), content);
};
const photo = (...args: string[]) => run(['photo', ...args], { cwd: home });

const picture = (width: number, height: number, orientation?: number): Promise<Buffer> => {
  const plain = sharp({ create: { width, height, channels: 3, background: '#806040' } });
  return (orientation === undefined ? plain : plain.withMetadata({ orientation })).jpeg().toBuffer();
};

describe('the picture', () => {
  test('need not be there', async () => {
    const { code, stdout, stderr } = await photo('orders/o.yaml');
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain('file not found');
  });

  test('is there and agrees', async () => {
    put('orders/photos/juniper-side.jpg', await picture(1600, 1200));
    const { code, stdout } = await photo('orders/o.yaml');
    expect(code).toBe(0);
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain('1600 x 1200 pixels; file found, and it agrees (JPEG).');
  });

  test('is stored on its side and agrees when it is shown upright', async () => {
    put('orders/photos/juniper-side.jpg', await picture(1200, 1600, 6));
    const { code, stdout } = await photo('orders/o.yaml', '--format', 'json');
    expect(code).toBe(0);
    expect((JSON.parse(stdout) as { results: { picture: unknown }[] }).results[0]?.picture).toEqual({
      file: 'photos/juniper-side.jpg',
      there: true,
      kind: 'jpeg',
      imageSize: [1600, 1200],
      orientation: 6,
    });
  });

  test('is not written over', async () => {
    const bytes = await picture(1600, 1200);
    put('orders/photos/juniper-side.jpg', bytes);
    const out = 'orders/photos/juniper-side.jpg';
    expect((await photo('orders/o.yaml', '--format', 'json', '--out', out)).code).toBe(2);
    expect(fs.readFileSync(path.join(home, out)).equals(bytes)).toBe(true);
  });

  test('has another size: told at its place, with what it is', async () => {
    put('orders/photos/juniper-side.jpg', await picture(800, 600));
    const { code, stdout, stderr } = await photo('orders/o.yaml');
    expect([code, stdout]).toEqual([3, '']);
    expect(stderr).toContain('orders/o.yaml:15:15: photo.image-size');
    expect(stderr.replaceAll(/\s+/g, ' ')).toContain('[1600, 1200]: expected [800, 600], the size of');
  });

  test('lies on its side in the block: told so', async () => {
    put('orders/photos/juniper-side.jpg', await picture(1600, 1200, 8));
    const { code, stderr } = await photo('orders/o.yaml');
    expect(code).toBe(3);
    expect(stderr.replaceAll(/\s+/g, ' ')).toContain(
      'Width and height are swapped: it is stored on its side, and marks count on the upright picture.',
    );
  });

  test.each([
    [
      'cut off',
      async () => (await picture(1600, 1200)).subarray(0, 700),
      'The picture is cut off: its end is missing.',
    ],
    ['empty', () => Buffer.alloc(0), 'It is empty.'],
  ])('%s: told, exit 3', async (_, bytes, why) => {
    put('orders/photos/juniper-side.jpg', await bytes());
    const { code, stderr } = await photo('orders/o.yaml');
    expect(code).toBe(3);
    expect(stderr).toContain('orders/o.yaml:14:9: photo.file');
    expect(stderr).toContain(why);
  });

  test('a faulty one does not stop the others', async () => {
    put('orders/photos/juniper-side.jpg', 'hello');
    put('other.yaml', example.replace('2425', '2426'));
    const { code, stdout } = await photo('orders/o.yaml', 'other.yaml', '--format', 'csv');
    expect(code).toBe(3);
    expect(stdout).toContain(
      '2425,orders/o.yaml,,,,,,,,,,,"line 14, column 9, photo.file: found photos/juniper-side.jpg; expected a picture that can be read',
    );
    expect(stdout).toContain('2426,other.yaml,photos/juniper-side.jpg,elbow room,');
  });
});

describe('the folder', () => {
  test.each(['../secret.jpg', '/etc/hostname', 'photos/../../secret.jpg'])(
    '%s is not opened',
    async (file) => {
      put('secret.jpg', await picture(1600, 1200));
      put('orders/o.yaml', example.replace('photos/juniper-side.jpg', file));
      const { code, stderr } = await photo('orders/o.yaml');
      expect(code).toBe(3);
      expect(stderr.replaceAll(/\s+/g, ' ')).toContain("It is outside the order file's folder;");
    },
  );

  test('a link that leads out is not followed', async () => {
    put('secret.jpg', await picture(1600, 1200));
    fs.symlinkSync(path.join(home, 'secret.jpg'), path.join(home, 'orders/photos/juniper-side.jpg'));
    expect((await photo('orders/o.yaml')).code).toBe(3);
  });

  test('--photos-from names another, and nothing outside it is opened', async () => {
    put('orders/photos/juniper-side.jpg', 'hello');
    fs.mkdirSync(path.join(home, 'pictures/photos'), { recursive: true });
    put('pictures/photos/juniper-side.jpg', await picture(1600, 1200));
    expect((await photo('orders/o.yaml', '--photos-from', 'pictures')).code).toBe(0);
    put('orders/o.yaml', example.replace('photos/juniper-side.jpg', '../orders/photos/juniper-side.jpg'));
    expect((await photo('orders/o.yaml', '--photos-from', 'pictures')).code).toBe(3);
  });

  test('--photos-from takes a folder', async () => {
    const { code, stderr } = await photo('orders/o.yaml', '--photos-from', 'orders/o.yaml');
    expect([code, stderr]).toEqual([2, expect.stringContaining('--photos-from takes a folder')]);
  });

  test('of a piped order is the current folder', async () => {
    fs.mkdirSync(path.join(home, 'photos'));
    put('photos/juniper-side.jpg', await picture(800, 600));
    const { code, stderr } = await run(['photo', '-'], { cwd: home, stdin: example });
    expect(code).toBe(3);
    expect(stderr).toContain('photo.image-size');
  });
});

interface Row {
  input: string;
  value: number;
  basis: string;
  sd: number;
}

describe('what a tape says', () => {
  const taped = (lines: string): string =>
    example.replace('  heart-girth: 74 in', `  heart-girth: 74 in\n${lines}`);
  const size = async (text: string) => {
    put('orders/o.yaml', text);
    const { stdout } = await run(['size', 'orders/o.yaml', '--format', 'json'], { cwd: home });
    const [result] = (
      JSON.parse(stdout) as { results: [{ room: { inches: number; basis: string }; remarks: string[] }] }
    ).results;
    return result;
  };

  test('beats the photo, and no word is lost where both agree', async () => {
    const { room, remarks } = await size(taped('  elbow-room: 4 1/4 in'));
    expect(room).toMatchObject({ inches: 4.25, basis: 'measured' });
    expect(remarks).toEqual([]);
  });

  test('is doubted where it is further off than both may be', async () => {
    const { room, remarks } = await size(taped('  elbow-room: 7 in'));
    expect(room.inches).toBe(7);
    expect(remarks).toEqual([
      expect.stringMatching(
        /^Tape and photo disagree on elbow room: 7\.00 in by tape, 4\.49 in by photo, give or take 0\.\d\d in\. We used the tape\./,
      ),
    ]);
  });

  test('without one the photo is used, averaged with the usual', async () => {
    const { room } = await size(example);
    expect(room.basis).toBe('measured by photo, averaged with the usual hand');
  });

  test('a rigging whose name does not fit what the photo shows makes the ring less sure, and is told', async () => {
    put('orders/o.yaml', example.replace('rigging: 7/8', 'rigging: center-fire'));
    const { stdout } = await run(['size', 'orders/o.yaml', '--format', 'json'], { cwd: home });
    const [result] = (JSON.parse(stdout) as { results: { assumptions: Row[]; remarks: string[] }[] }).results;
    const setBack = result?.assumptions.find(({ input }) => input === 'ring set-back');
    expect(setBack?.basis).toMatch(
      /^by photo alone, the more cautious: it disagrees with center-fire position/,
    );
    expect(setBack?.sd).toBeGreaterThan(1);
    expect(result?.remarks).toEqual([
      expect.stringMatching(
        /^Rigging and photo disagree on elbow to ring: 8\.\d\d in by the rigging's name, 3\.73 in by photo/,
      ),
    ]);
  });

  // The ring clicked a foot too far back.
  test('a ring far behind where its name says earns no wider cinch', async () => {
    const sized = async (text: string) => {
      put('orders/o.yaml', text);
      const { stdout } = await run(['size', 'orders/o.yaml', '--format', 'json'], { cwd: home });
      const { results } = JSON.parse(stdout) as {
        results: [{ assumptions: Row[]; remarks: string[]; specs: { strands: number }[] }];
      };
      return results[0];
    };
    const right = await sized(example);
    const wrong = await sized(example.replace('ring: [728, 549]', 'ring: [830, 549]'));
    const setBack = wrong.assumptions.find(({ input }) => input === 'ring set-back')!;
    expect(setBack.value).toBeCloseTo(13 / 8, 1);
    expect(setBack.sd).toBeGreaterThan(2);
    expect(wrong.specs[0]!.strands).toBeLessThanOrEqual(right.specs[0]!.strands);
    expect(wrong.remarks.join(' ')).toContain("We used the name's, the more cautious");
    // Too far ahead is more cautious.
    const ahead = await sized(example.replace('ring: [728, 549]', 'ring: [680, 549]'));
    expect(ahead.assumptions.find(({ input }) => input === 'ring set-back')!.value).toBeLessThan(0);
    expect(ahead.remarks.join(' ')).toContain("We used the photo's, the more cautious");
  });

  test('an elbow far ahead of the usual hand earns no room', async () => {
    put('orders/o.yaml', example.replace('elbow: [696, 673]', 'elbow: [666, 673]'));
    const { stdout } = await run(['size', 'orders/o.yaml', '--format', 'json'], { cwd: home });
    const { results } = JSON.parse(stdout) as { results: [{ assumptions: Row[]; remarks: string[] }] };
    expect(results[0].assumptions.find(({ input }) => input === 'elbow room')!.value).toBeCloseTo(
      4 * (74 / 72),
      2,
    );
    expect(results[0].remarks.join(' ')).toContain('We used the usual one, the more cautious');
  });

  test('of a depth, bars and the rings all count', async () => {
    const text = taped('  barrel: { depth: 36 in }')
      .replace('  style: flat-plate', '  style: flat-plate\n  bar-span: 9 in\n  ring-to-ring: 60 in')
      .replace('rigging: 7/8', 'rigging: { set-back: 8 in }');
    const { remarks } = await size(text);
    expect(remarks.flatMap((remark) => /photo disagree on (.*?):/.exec(remark)?.[1] ?? [])).toEqual([
      'set-back',
      'ring height along the skin',
      'barrel depth',
      'bar span',
    ]);
  });
});

test('orders without a photo: a note, and an error when there is nothing else', async () => {
  put('bare.yaml', 'order: 1\nhorse: { height: 15 hh }\nsaddle: { rigging: full }\n');
  expect(await photo('bare.yaml')).toMatchObject({ code: 2, stdout: '' });
  const both = await photo('bare.yaml', 'orders/o.yaml');
  expect(both.code).toBe(0);
  expect(both.stderr).toBe('cinchwright: nothing to measure: order 1 has no "photo" block\n');
});

test('--pick makes no page of a picture that no order takes', async () => {
  put('small.jpg', await picture(199, 400));
  const { code, stderr } = await photo('--pick', 'small.jpg', '--out', 'page.html');
  expect(code).toBe(3);
  expect(stderr).toContain('199 x 400 pixels, and an order takes 200 to 20000 per side');
  expect(fs.existsSync(path.join(home, 'page.html'))).toBe(false);
  const good = await picture(400, 300);
  const elsewhere = testFolder();
  fs.writeFileSync(path.join(elsewhere, 'far.jpg'), good);
  fs.symlinkSync(path.join(elsewhere, 'far.jpg'), path.join(home, 'near.jpg'));
  for (const [name, why] of [
    ['two\nlines.jpg', 'on one line'],
    ['near.jpg', "outside the order file's folder"],
    [String.raw`\a.jpg`, "outside the order file's folder"],
  ] as const) {
    if (name !== 'near.jpg') put(name, good);
    const refused = await photo('--pick', name, '--out', 'page.html');
    expect([refused.code, refused.stderr]).toEqual([3, expect.stringContaining(why)]);
    expect(fs.existsSync(path.join(home, 'page.html'))).toBe(false);
  }
});
