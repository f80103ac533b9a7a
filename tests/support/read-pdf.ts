/** PDFs read back by PDF.js, independent of our printer. */
import { getDocumentProxy } from 'unpdf';

export interface Item {
  readonly text: string;
  /** Points from the left edge; from the top down to the baseline. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Of the letters. */
  readonly size: number;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
  readonly annotations: number;
  /** Figures give their alternative text. */
  readonly roles: readonly string[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly info: Readonly<Record<string, unknown>>;
  readonly fonts: readonly string[];
  readonly scripts: unknown;
  /** For programs that read aloud. */
  readonly marked: boolean;
  readonly language: unknown;
}

type Proxy = Awaited<ReturnType<typeof getDocumentProxy>>;

/** @throws when it is no PDF */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocumentProxy(new Uint8Array(bytes));
  const pages: ReadPage[] = [];
  for (let n = 1; n <= document.numPages; n += 1) pages.push(await readPage(document, n));
  const { info } = await document.getMetadata();
  const marks = (await document.getMarkInfo()) as { Marked?: boolean } | null;
  return {
    pages,
    info: info as Record<string, unknown>,
    fonts: [
      ...new Set(
        Buffer.from(bytes)
          .toString('latin1')
          .match(/(?<=\/BaseFont \/)\S+/g) ?? [],
      ),
    ],
    scripts: await document.getJSActions(),
    marked: marks?.Marked === true,
    language: (info as Record<string, unknown>)['Language'],
  };
}

async function readPage(document: Proxy, number: number): Promise<ReadPage> {
  const page = await document.getPage(number);
  const { width, height } = page.getViewport({ scale: 1 });
  const content = await page.getTextContent({ disableNormalization: true });
  const items = content.items.flatMap((item): Item[] => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [, , , size, x, y] = item.transform as [number, number, number, number, number, number];
    return [{ text: item.str, x, y: height - y, width: item.width, size }];
  });
  const annotations = (await page.getAnnotations()).length;
  return { width, height, items, annotations, roles: rolesOf((await page.getStructTree()) as Branch | null) };
}

interface Branch {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Branch[];
}

function rolesOf(branch: Branch | null): string[] {
  if (branch === null) return [];
  const own =
    branch.role === undefined ? [] : [`${branch.role}${branch.alt === undefined ? '' : `: ${branch.alt}`}`];
  return [...own, ...(branch.children ?? []).flatMap(rolesOf)];
}

/** One line for each line of a page. */
export async function textOfPdf(bytes: Uint8Array): Promise<string> {
  const { pages } = await readPdf(bytes);
  return pages
    .map(({ width, height, items }, i) => {
      const head = `--- page ${i + 1}, ${width.toFixed(2)} x ${height.toFixed(2)} pt`;
      return [head, ...linesOf(items).map((line) => line.map(({ text }) => text).join('  '))].join('\n');
    })
    .join('\n')
    .concat('\n');
}

/** Left to right, from the top. */
export function linesOf(items: readonly Item[]): Item[][] {
  const lines: Item[][] = [];
  for (const item of [...items].sort((a, b) => a.y - b.y)) {
    const last = lines.at(-1);
    if (last !== undefined && Math.abs((last[0] as Item).y - item.y) < 1) last.push(item);
    else lines.push([item]);
  }
  return lines.map((line) => line.sort((a, b) => a.x - b.x));
}
