/** Where rows go as they come: standard output, or a file that is written beside and put in place when it is whole. */
import fs from 'node:fs';
import path from 'node:path';
import { writeHandle } from '../files.ts';
import { syncFolder } from './journal-file.ts';

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

/**
 * Whether a name is that of a plain file, or of none yet; pipes and devices are written into as they are. What cannot be looked at
 * counts as one: writing it will say why.
 */
export function isPlain(file: string): boolean {
  try {
    return fs.statSync(file, { throwIfNoEntry: false })?.isFile() ?? true;
  } catch {
    return true;
  }
}

/** A file, absolute; an older one stays until the new one is whole. Throws the system's error, also later. */
export function toFile(file: string): Output {
  const old = fs.statSync(file, { throwIfNoEntry: false });
  if (old !== undefined && !old.isFile()) return toDevice(file);
  const target = old === undefined ? file : fs.realpathSync(file);
  if (old !== undefined) fs.accessSync(target, fs.constants.W_OK);
  const beside = path.join(path.dirname(target), `.${path.basename(target)}.part`);
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
