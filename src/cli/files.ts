/** Reads and writes files, never leaving half a file. */
import fs from 'node:fs';
import path from 'node:path';
import { unbroken } from './interrupt.ts';
import type { Standing } from './io.ts';
import { systemCode } from './system-error.ts';

/** Also pipes and devices. One byte over the limit means too long. */
export function readUpTo(file: string, limit: number): Buffer {
  const handle = fs.openSync(file, 'r');
  try {
    return readHandle(handle, limit);
  } finally {
    fs.closeSync(handle);
  }
}

/** Plain files only. */
export function readEnd(file: string, limit: number): Buffer {
  const handle = fs.openSync(file, 'r');
  try {
    const { size } = fs.fstatSync(handle);
    const part = Buffer.alloc(Math.min(size, limit));
    const length = fs.readSync(handle, part, 0, part.length, size - part.length);
    return part.subarray(0, length);
  } finally {
    fs.closeSync(handle);
  }
}

/** Text of a plain file; undefined when unreadable. */
export function startOfPlain(file: string): string | undefined {
  try {
    return fs.statSync(file).isFile() ? readUpTo(file, 16_384).toString('utf8') : undefined;
  } catch {
    return undefined; // writing will say why
  }
}

/** Up to one byte over the limit. */
export function readHandle(handle: number, limit: number): Buffer {
  const parts: Buffer[] = [];
  let length = 0;
  while (length <= limit) {
    const part = Buffer.allocUnsafe(Math.min(65_536, limit + 1 - length));
    const read = readPart(handle, part);
    if (read === 0) break;
    parts.push(part.subarray(0, read));
    length += read;
  }
  return parts.length === 1 ? (parts[0] as Buffer) : Buffer.concat(parts);
}

function readPart(handle: number, part: Buffer): number {
  for (;;) {
    try {
      return fs.readSync(handle, part);
    } catch (error) {
      const code = systemCode(error);
      if (code === 'EOF') return 0; // Windows' end of a pipe
      if (code !== 'EAGAIN') throw error;
      pause();
    }
  }
}

/** Waits for a slow reader. */
export function writeHandle(handle: number, content: string | Uint8Array): void {
  const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : content;
  let done = 0;
  while (done < bytes.length) {
    try {
      done += fs.writeSync(handle, bytes, done);
    } catch (error) {
      if (systemCode(error) !== 'EAGAIN') throw error;
      pause();
    }
  }
}

/** Follows links, so two names of one file match; devices keep theirs and may be named twice. */
export function realName(file: string): string {
  try {
    const stat = fs.statSync(file, { throwIfNoEntry: false });
    if (stat === undefined) return path.join(fs.realpathSync(path.dirname(file)), path.basename(file));
    return stat.isFile() || stat.isDirectory() ? fs.realpathSync(file) : file;
  } catch {
    return file;
  }
}

/** Unreadable counts as nothing. */
export function standsAt(file: string): Standing {
  try {
    return fs.statSync(file).isDirectory() ? 'directory' : 'file';
  } catch {
    return 'nothing';
  }
}

export const noEnd = 'it is a device that never ends, not a file';

/** Zeros or random bytes; terminals and the null device end. */
export const neverEnds = (stat: fs.Stats): boolean =>
  stat.isCharacterDevice() &&
  ['zero', 'full', 'random', 'urandom'].some(
    (name) => fs.statSync(`/dev/${name}`, { throwIfNoEntry: false })?.rdev === stat.rdev,
  );

/** While a pipe is full or empty. */
function pause(): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 2);
}

/** Renames a temporary file, so readers see old or new. Writes pipes and devices directly; keeps links. */
export function replaceFile(named: string, content: string | Uint8Array): void {
  const old = fs.statSync(named, { throwIfNoEntry: false });
  if (old !== undefined && !old.isFile()) {
    fs.writeFileSync(named, content);
    return;
  }
  const target = old === undefined ? named : fs.realpathSync(named);
  // A folder may be writable when the file is not.
  if (old !== undefined) fs.accessSync(target, fs.constants.W_OK);
  const beside = partOf(target);
  unbroken(() => {
    try {
      writeNew(beside, content, old?.mode);
      fs.renameSync(beside, target);
    } catch (error) {
      fs.rmSync(beside, { force: true });
      throw error;
    }
  });
}

/** Names the temporary file; removes those of killed runs. */
export function partOf(target: string): string {
  const [folder, name] = [path.dirname(target), `.${path.basename(target)}.`];
  for (const old of namesIn(folder)) {
    if (!old.startsWith(name) || !old.endsWith('.part')) continue;
    const pid = old.slice(name.length, -'.part'.length);
    if (/^\d+$/.test(pid) && !isRunning(Number(pid))) fs.rmSync(path.join(folder, old), { force: true });
  }
  return path.join(folder, `${name}${String(process.pid)}.part`);
}

function namesIn(folder: string): readonly string[] {
  try {
    return fs.readdirSync(folder);
  } catch {
    return []; // writing will say why
  }
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return systemCode(error) !== 'ESRCH';
  }
}

/** With its parents. */
export function makeFolder(folder: string): void {
  fs.mkdirSync(folder, { recursive: true });
}

/** Must not exist; a failed write leaves nothing. */
function writeNew(file: string, content: string | Uint8Array, mode = 0o666): void {
  const handle = fs.openSync(file, 'wx', mode & 0o777);
  try {
    writeHandle(handle, content);
    fs.fsyncSync(handle);
  } catch (error) {
    fs.rmSync(file, { force: true });
    throw error;
  } finally {
    fs.closeSync(handle);
  }
}
