/** The page's script: listens, and redraws after every change. */
import type { PhotoFile } from '../pick/block.ts';
import { whole, zoomed, type Size } from '../pick/view.ts';
import type { Fields } from '../pick/fields.ts';
import { Desk } from './desk.ts';
import { byId } from './elements.ts';
import { listenToKeys, showAll, zoomBy } from './keys.ts';
import { drawLens, drawMarks } from './marks.ts';
import { showPanel } from './panel.ts';
import { listenToPointers } from './pointers.ts';
import { copyBlock, isTaken, saveBlock } from './take-away.ts';

async function start(): Promise<void> {
  const photo = JSON.parse(byId('facts', HTMLScriptElement).textContent) as PhotoFile;
  const image = byId('photo', HTMLImageElement);
  try {
    await image.decode();
  } catch {
    fail('This browser cannot show the photo: it may be damaged.');
    return;
  }
  // A browser that ignores how the phone was held gives wrong pixels.
  if (image.naturalWidth !== photo.width || image.naturalHeight !== photo.height) {
    fail(
      `This browser shows the photo as ${String(image.naturalWidth)} x ${String(image.naturalHeight)} pixels, and upright it has ${String(photo.width)} x ${String(photo.height)}. The marks would be wrong: use another browser.`,
    );
    return;
  }
  run(photo, image);
}

function fail(why: string): void {
  const told = byId('fault', HTMLElement);
  told.textContent = why;
  told.hidden = false;
  byId('moves', HTMLElement).hidden = true;
}

function run(photo: PhotoFile, image: HTMLImageElement): void {
  const stage = byId('stage', HTMLElement);
  const desk = new Desk(photo, sizeOf(stage));
  const marks = byId('marks', SVGElement);
  const lens = byId('lens', HTMLCanvasElement);
  let due = false;
  let step = desk.session.now.at;
  // One redraw per frame.
  desk.onChange(() => {
    if (due) return;
    due = true;
    requestAnimationFrame(() => {
      due = false;
      const { scale, left, top } = desk.view;
      image.style.transform = `translate(${String(left)}px, ${String(top)}px) scale(${String(scale)})`;
      image.style.imageRendering = scale >= 3 ? 'pixelated' : 'auto';
      drawMarks(marks, desk);
      drawLens(lens, image, desk);
      showPanel(desk);
      if (desk.session.now.at !== step) {
        step = desk.session.now.at;
        toTask();
      }
      byId('where', HTMLElement).textContent = whereText(desk);
    });
  });
  listenToPointers(stage, desk);
  listenToKeys(stage, desk);
  listenToPanel(desk);
  new ResizeObserver(() => {
    resized(desk, sizeOf(stage));
  }).observe(stage);
  // Closing or reloading loses the marks.
  window.addEventListener('beforeunload', (event) => {
    if (desk.session.past.length > 0 && !isTaken()) event.preventDefault();
  });
  desk.tell();
}

/** On a phone the step may be scrolled away. */
function toTask(): void {
  const task = byId('task', HTMLElement);
  const { top, bottom } = task.getBoundingClientRect();
  if (top < 0 || bottom > window.innerHeight) task.scrollIntoView({ block: 'start' });
}

const sizeOf = (stage: HTMLElement): Size => ({
  width: stage.clientWidth,
  height: stage.clientHeight,
});

/** Keeps the zoom when a phone is turned. */
function resized(desk: Desk, window: Size): void {
  const zoom = desk.view.scale / whole(desk.photo, desk.window).scale;
  desk.window = window;
  const all = whole(desk.photo, window);
  desk.view =
    zoom > 1.001 ? zoomed(all, { factor: zoom, x: window.width / 2, y: window.height / 2 }, desk.frame) : all;
  desk.tell();
}

function whereText({ view, look }: Desk): string {
  const zoom = `${String(Math.round(100 * view.scale))}%`;
  return look === undefined ? zoom : `${String(look[0])}, ${String(look[1])} at ${zoom}`;
}

function listenToPanel(desk: Desk): void {
  const onClick = (id: string, deed: () => void): void => {
    byId(id, HTMLButtonElement).addEventListener('click', deed);
  };
  for (const id of ['next', 'back', 'skip', 'undo'] as const) {
    onClick(id, () => {
      desk.do({ do: id });
    });
  }
  onClick('in', () => {
    zoomBy(desk, 1.5);
  });
  onClick('out', () => {
    zoomBy(desk, 1 / 1.5);
  });
  onClick('fit', () => {
    showAll(desk);
  });
  onClick('copy', () => void copyBlock());
  onClick('download', () => {
    saveBlock(desk);
  });
  for (const field of document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[data-field]')) {
    field.addEventListener('input', () => {
      desk.do({ do: 'type', field: field.dataset['field'] as keyof Fields, text: field.value });
    });
  }
  for (const radio of document.querySelectorAll<HTMLInputElement>('input[name="kind"]')) {
    radio.addEventListener('change', () => {
      desk.do({ do: 'kind', kind: radio.value === 'sheet' ? 'sheet' : 'stick' });
    });
  }
}

void start();
