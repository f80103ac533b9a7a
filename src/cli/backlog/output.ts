/** Where rows go as they come: standard output, or a file that is written beside and put in place when it is whole. */
import fs from 'node:fs';
import path from 'node:path';
import { partOf, writeHandle } from '../files.ts';

export interface Output {
  readonly write: (text: string) => void;
  /** All is written: put in place. */
  readonly finish: () => void;
  /** It will not be finished: leave nothing behind. */
  readonly drop: () => void;
}

/** Rows on standard output are gone as soon as they are printed. */
export const toStream = (write: (text: string) => void): Output => ({
  write: (text) => {
    if (text !== '') write(text);
  },
  finish: () => undefined,
  drop: () => undefined,
});

/** A file, absolute; an older one stays until the new one is whole. Throws the system's error, also later. */
export function toFile(file: string): Output {
  const old = fs.statSync(file, { throwIfNoEntry: false });
  if (old !== undefined && !old.isFile()) return toDevice(file);
  const target = old === undefined ? file : fs.realpathSync(file);
  if (old !== undefined) fs.accessSync(target, fs.constants.W_OK);
  const beside = partOf(target);
  const handle = fs.openSync(beside, 'w', (old?.mode ?? 0o666) & 0o777);
  const close = onceClosing(handle);
  return {
    write: (text) => {
      writeHandle(handle, text);
    },
    finish: () => {
      fs.fsyncSync(handle);
      close();
      fs.renameSync(beside, target);
      syncFolder(target);
    },
    drop: () => {
      close();
      fs.rmSync(beside, { force: true });
    },
  };
}

function toDevice(file: string): Output {
  const handle = fs.openSync(file, 'w');
  const close = onceClosing(handle);
  return {
    write: (text) => {
      writeHandle(handle, text);
    },
    finish: close,
    drop: close,
  };
}

function onceClosing(handle: number): () => void {
  let open = true;
  return () => {
    if (open) fs.closeSync(handle);
    open = false;
  };
}

/** A file is in place for good only when its folder is on the disk too. */
function syncFolder(file: string): void {
  try {
    const folder = fs.openSync(path.dirname(file), 'r');
    fs.fsyncSync(folder);
    fs.closeSync(folder);
  } catch {
    // Not every system lets a folder be opened.
  }
}
