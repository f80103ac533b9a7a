/** Writes rows as they come; a file appears when complete. */
import fs from 'node:fs';
import path from 'node:path';
import { partOf, writeHandle } from '../files.ts';

export interface Output {
  readonly write: (text: string) => void;
  readonly finish: () => void;
  readonly drop: () => void;
}

/** Cannot take back what is printed. */
export const toStream = (write: (text: string) => void): Output => ({
  write: (text) => {
    if (text !== '') write(text);
  },
  finish: () => undefined,
  drop: () => undefined,
});

/** Absolute path. Throws the system's error, also later. */
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

/** A rename lasts only once its folder is synced. */
function syncFolder(file: string): void {
  try {
    const folder = fs.openSync(path.dirname(file), 'r');
    fs.fsyncSync(folder);
    fs.closeSync(folder);
  } catch {
    // Some systems cannot open a folder.
  }
}
