/** Copies or saves the block; nothing else leaves the page. */
import type { Desk } from './desk.ts';
import { byId } from './elements.ts';

let taken = '';

/** Whether the current block was copied or saved. */
export const isTaken = (): boolean => byId('block', HTMLTextAreaElement).value === taken;

/** Selects the block where the browser forbids copying. */
export async function copyBlock(): Promise<void> {
  const block = byId('block', HTMLTextAreaElement);
  const told = byId('copied', HTMLElement);
  try {
    await navigator.clipboard.writeText(block.value);
    taken = block.value;
    told.textContent = 'Copied.';
  } catch {
    block.focus();
    block.select();
    told.textContent = 'The browser does not let the page copy: press Ctrl+C, the block is selected.';
  }
}

/** Named after the photo. */
export function saveBlock(desk: Desk): void {
  const block = byId('block', HTMLTextAreaElement);
  const place = URL.createObjectURL(new Blob([block.value], { type: 'application/yaml' }));
  const link = document.createElement('a');
  link.href = place;
  link.download = `${desk.photo.file.replace(/\.[^.]*$/, '').replace(/[^\p{L}\p{N}_-]+/gu, '-')}-photo.yaml`;
  link.click();
  taken = block.value;
  byId('copied', HTMLElement).textContent = 'Saved.';
}
