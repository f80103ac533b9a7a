/** `draw`: what it shows, where it goes, refusals. */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { ownFolder } from '../support/own-folder.ts';
import { readPdf } from '../support/read-pdf.ts';
import { inLayer, readSvg, type Svg } from '../support/read-svg.ts';
import { run } from '../support/run-cli.ts';
import { start } from '../support/start.ts';

const order = `order: 7
customer: { name: Invented Customer, phone: 555-0100 }
horse: { name: Wren, heart-girth: 73 in }
saddle: { rigging: 7/8 }
wants: { style: straight, strands: 27 }
`;
const none = 'order: 8\nhorse: { heart-girth: 73 in, elbow-room: 1 in }\nsaddle: { rigging: full }\n';
const dir = ownFolder();

const textsOf = (svg: Svg, ...layers: readonly string[]): string =>
  inLayer(svg, ...layers)
    .map(({ text }) => text)
    .filter((text) => text.trim() !== '')
    .join(' ');
const panels = (svg: Svg): Set<string> =>
  new Set(svg.elements.flatMap(({ layers }) => layers.filter((layer) => layer.startsWith('shown-'))));

describe('what is shown', () => {
  test('the best three, with what a picture must say and nothing about the customer', async () => {
    const { code, stdout, stderr } = await run(['draw'], { stdin: order });
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    const svg = readSvg(stdout);
    expect([...panels(svg)]).toEqual(['shown-1', 'shown-2', 'shown-3']);
    expect(textsOf(svg, 'head')).toContain('Order 7: Wren');
    expect(textsOf(svg, 'head')).toContain('DO NOT CUT: ring to ring is not taped.');
    const foot = textsOf(svg, 'foot');
    expect(foot).toContain('Not taped: everything else');
    expect(textsOf(svg, 'legend')).toContain('back of the elbow (assumed)');
    expect(foot).toContain('not a saddle fitting and not veterinary advice');
    expect(textsOf(svg, 'legend')).toMatch(/Scale 1 : [\d.]+, printed at 100%/);
    expect(stdout).not.toContain('Invented Customer');
    expect(stdout).not.toContain('555-0100');
  });
  test('one of them', async () => {
    const svg = readSvg((await run(['draw', '--spec', '2'], { stdin: order })).stdout);
    expect(textsOf(svg, 'shown-1', 'words')).toMatch(/^No\. 2:/);
    expect(panels(svg).size).toBe(1);
  });
  test('a wish that is refused, marked, beside the best; the code says so', async () => {
    const { code, stdout } = await run(['draw', '--wants'], { stdin: order });
    expect(code).toBe(1);
    const svg = readSvg(stdout);
    expect(textsOf(svg, 'shown-1', 'words')).toMatch(/^RULED OUT Asked for: straight, 27 strands/);
    expect(textsOf(svg, 'shown-2', 'words')).toMatch(/^No\. 1:/);
  });
  test('a cinch named here replaces the wish, as in check', async () => {
    const { code, stdout } = await run(['draw', '--strands', '17'], { stdin: order });
    expect(code).toBe(0);
    const words = textsOf(readSvg(stdout), 'shown-1', 'words');
    expect(words).toContain('The cinch asked about: straight, 17 strands');
  });
  test('what is ridden in now, when the order says', async () => {
    const { code, stdout, stderr } = await run(['draw', '--current'], { stdin: order });
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toBe('cinchwright: order 7: it names no cinch under "current"\n');
  });
  test('nothing where nothing passes, but the wish all the same', async () => {
    const ran = await run(['draw'], { stdin: none });
    expect(ran).toMatchObject({ code: 1, stdout: '' });
    expect(ran.stderr).toMatch(/^cinchwright: order 8: no cinch we tie passes here/);
    const wished = await run(['draw', '--style', 'straight', '--strands', '15'], { stdin: none });
    expect(wished.code).toBe(1);
    const words = textsOf(readSvg(wished.stdout), 'shown-1', 'words');
    expect(words).toMatch(/^RULED OUT The cinch asked about.*No cinch we tie passes here/);
  });
  test('a cinch that cannot be laid is said in words', async () => {
    const asked = ['draw', '--style', 'low-flare', '--strands', '17', '--length', '18 in'];
    const { code, stdout } = await run(asked, { stdin: order });
    expect(code).toBe(1);
    expect(textsOf(readSvg(stdout), 'shown-1', 'words')).toContain('there is no room below the buckle');
    const template = await run([...asked, '--template'], { stdin: order });
    expect(template).toMatchObject({ code: 1, stdout: '' });
    expect(template.stderr).toContain('no template');
  });
  test('laid flat, the cinch that the ticket takes', async () => {
    const wish = order.replace('strands: 27', 'strands: 15');
    for (const text of [order, wish]) {
      const ticket = JSON.parse((await run(['ticket', '--format', 'json'], { stdin: text })).stdout) as {
        results: { strands: number }[];
      };
      const { stdout } = await run(['draw', '--view', 'flat'], { stdin: text });
      const { strands } = ticket.results[0]!;
      expect(textsOf(readSvg(stdout), 'words')).toContain(`${strands} strands`);
      expect(inLayer(readSvg(stdout), 'strands')).toHaveLength(strands - 1);
    }
  });
  test('in centimeters', async () => {
    const { stdout } = await run(['draw', '--units', 'cm'], { stdin: order });
    const svg = readSvg(stdout);
    expect(textsOf(svg, 'clearance')).toMatch(/\d\.\d cm/);
    expect(svg.elements.filter(({ text }) => /\d in\b/.test(text)).map(({ text }) => text)).toEqual([]);
  });
});

describe('where it goes', () => {
  test('several orders: a file each in a folder, counted where they share a name', async () => {
    fs.mkdirSync(path.join(dir, 'out'));
    const files = ['a.yaml', 'b.yaml'];
    fs.writeFileSync(
      path.join(dir, 'a.yaml'),
      `${order}---\n${order.replace('order: 7', 'order: "../7 <x>"')}`,
    );
    fs.writeFileSync(path.join(dir, 'b.yaml'), order);
    const refused = await run(['draw', ...files], { cwd: dir });
    expect(refused.code).toBe(2);
    expect(refused.stderr).toMatch(/a file of SVG holds one picture; there are 3 orders\n.*--out-dir/);
    const { code, stderr } = await run(['draw', ...files, '--out-dir', 'out'], { cwd: dir });
    expect(code).toBe(0);
    expect(stderr).toBe(
      'wrote out/order-7.svg\nwrote out/order-7-x.svg\nwrote out/order-7-2.svg\ncinchwright: order 7 is in a.yaml:1 and b.yaml:1\n',
    );
    for (const name of fs.readdirSync(path.join(dir, 'out')))
      readSvg(fs.readFileSync(path.join(dir, 'out', name), 'utf8'));
  });
  test('a page of an order with a photo says which way the horse faces', async () => {
    const { stdout } = await run(['draw', 'examples/orders/25-photo.yaml', '--format', 'html']);
    expect(stdout).toContain('The horse faces left');
  });

  test('a page holds all', async () => {
    const { code, stdout } = await run(['draw', '--format', 'html'], { stdin: `${order}---\n${order}` });
    expect(code).toBe(0);
    // Three cinches and a legend per order.
    expect(stdout.match(/<svg /g)).toHaveLength(8);
    expect(stdout).toContain('Tighten in stages and check again after ten minutes');
    expect(stdout).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
  });
  test('on a telephone every letter of a page is 11 pixels high at least, and nothing is wider than its screen', async () => {
    const { stdout } = await run(['draw', '--format', 'html'], { stdin: order });
    for (const [svg, wide, rest] of stdout.matchAll(/<svg[^>]* width="([\d.]+)pt"[^>]*>([^]*?)<\/svg>/g)) {
      // 390 pixels less 10 points of white per side; a point is 4/3 of a pixel.
      const pixels = Math.min(4 / 3, (390 - (20 * 4) / 3) / Number(wide));
      const sizes = [...rest!.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size) * pixels);
      expect(Math.min(...sizes), svg.slice(0, 200)).toBeGreaterThan(11);
    }
  });
  test('a sore is said before anything is drawn', async () => {
    const svg = readSvg((await run(['draw', 'examples/orders/08-elbow-gall.yaml'])).stdout);
    const head = textsOf(svg, 'head');
    expect(head).toContain('GALLED AT THE ELBOW. Let it heal first.');
    const at = svg.elements.findIndex(({ text }) => text.startsWith('GALLED'));
    expect(at).toBeLessThan(svg.elements.findIndex(({ text }) => text.startsWith('No. 1')));
  });
  test('a folder that is not there is made', async () => {
    const { code, stderr } = await run(['draw', '--out-dir', 'new/pictures'], { stdin: order, cwd: dir });
    expect({ code, stderr }).toEqual({ code: 0, stderr: 'wrote new/pictures/order-7.svg\n' });
    expect(fs.existsSync(path.join(dir, 'new/pictures/order-7.svg'))).toBe(true);
  });
  test('a file is no folder to write into', async () => {
    fs.writeFileSync(path.join(dir, 'taken'), '');
    const { code, stderr } = await run(['draw', '--out-dir', 'taken'], { stdin: order, cwd: dir });
    expect({ code, stderr }).toEqual({
      code: 2,
      stderr: 'cinchwright: --out-dir takes a folder, and "taken" is a file\n',
    });
  });
  test('a folder of orders is taken, and a pattern', async () => {
    fs.mkdirSync(path.join(dir, 'orders'));
    for (const name of ['a', 'b']) fs.writeFileSync(path.join(dir, 'orders', `${name}.yaml`), order);
    for (const named of ['orders', 'orders/*.yaml']) {
      const { code, stdout } = await run(['draw', named, '--format', 'html'], { cwd: dir });
      expect(code).toBe(0);
      expect(stdout.match(/<article /g)).toHaveLength(2);
    }
  });
  test.each([
    [['--out', 'x.csv'], /draw cannot print csv/],
    [['--out', 'x.jpg'], /a JPEG needs a photo: add --on-photo/],
    [['--out', 'x.pdf'], /a PDF needs a template: add --template/],
    [['--template', '--format', 'png'], /a template prints at true size, and png does not/],
    [['--template', '--view', 'side'], /leave out --view/],
    [['--paper', 'a4'], /--paper goes with --format pdf/],
    [['--spec', '2', '--wants'], /--spec names one spec already/],
    [['--strands', '19', '--wants'], /leave out --wants and --current/],
    [['--view', 'flat', '--wants', '--current'], /choose --wants or --current/],
    [['--out', 'x.svg', '--out-dir', '.'], /--out or --out-dir, not both/],
    [['--view', 'top'], /--view takes side or flat/],
    [['--format', 'gif'], /--format takes svg, png, jpeg, html or pdf/],
  ])('%j is refused before anything is read', async (more, message) => {
    const { code, stdout, stderr } = await run(['draw', 'missing.yaml', ...more], { cwd: dir });
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toMatch(message);
  });
  test('a PNG is refused on a terminal, an SVG is text', async () => {
    const png = await run(['draw', '--format', 'png'], { stdin: order, columns: 80 });
    expect([png.code, png.stderr]).toEqual([
      2,
      'cinchwright: a PNG cannot be shown on a terminal: name a file with --out\n',
    ]);
    expect((await run(['draw'], { stdin: order, columns: 80 })).code).toBe(0);
  });
});

/** RFC 2083: eight bytes, then the chunk IHDR. */
function sizeOfPng(bytes: Buffer): [number, number] {
  expect(bytes.subarray(0, 8).toString('latin1')).toBe('\x89PNG\r\n\x1a\n');
  expect(bytes.subarray(12, 16).toString('latin1')).toBe('IHDR');
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

test('a PNG has 200 dots to an inch of paper, is the same every time, and tells of letters it lacks', async () => {
  const asked = ['draw', '--format', 'png'];
  const { code, bytes, stderr } = await run(asked, { stdin: order });
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  const svg = readSvg((await run(['draw'], { stdin: order })).stdout);
  expect(sizeOfPng(bytes)).toEqual(svg.viewBox.slice(2).map((points) => Math.round((points / 72) * 200)));
  expect((await run(asked, { stdin: order })).bytes.equals(bytes)).toBe(true);
  const foreign = await run(asked, { stdin: order.replace('Wren', '\u99ac') });
  expect(foreign.code).toBe(0);
  expect(foreign.stderr).toMatch(/the fonts of the picture lack these letters .*: \u99ac/);
});

test('templates of several orders are one PDF', async () => {
  const ran = await run(['draw', '--template', '--format', 'pdf', '--paper', 'a4'], {
    stdin: `${order}---\n${order}`,
  });
  expect(ran.code).toBe(0);
  const { pages, info } = await readPdf(ran.bytes);
  expect(info['Title']).toBe('2 templates');
  expect(pages.length % 2).toBe(0);
  expect(Math.max(pages[0]!.width, pages[0]!.height)).toBeCloseTo(841.89, 1);
});

test('the installed program draws a PNG and a template, from its own folder of type', async () => {
  fs.writeFileSync(path.join(dir, 'one.yaml'), order);
  const png = await start(['draw', 'one.yaml', '--out', 'one.png'], { cwd: dir });
  expect(png.code).toBe(0);
  expect(sizeOfPng(fs.readFileSync(path.join(dir, 'one.png')))[0]).toBe(2100);
  const pdf = await start(['draw', 'one.yaml', '--template', '--out', 'one.pdf'], {
    cwd: dir,
  });
  expect(pdf.code).toBe(0);
});
