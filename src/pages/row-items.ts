/** Table rows as items, for narrow pages. */
import { item, type Page } from './page.ts';
import type { TableBlock } from './sheet.ts';

/** "Natural body cord, 8-ply: how much 61 ft; at 38.00 a pound; ..." */
export function rowItems({ columns: heads, rows, foot = [] }: TableBlock, page: Page): string[] {
  return [...rows, ...foot].flatMap(([name = '', ...cells]) => {
    const named = cells.flatMap((text, i) => (text === '' ? [] : [`${heads[i + 1]?.head ?? ''} ${text}`]));
    return item(page, `${name}: ${named.join('; ')}`);
  });
}
