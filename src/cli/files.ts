/** Reading and writing files on the disk, never leaving half a file behind. */
import fs from 'node:fs';
import path from 'node:path';
import { unbroken } from './interrupt.ts';
import type { Standing } from './io.ts';
import { systemCode } from './system-error.ts';

/** A file's bytes, at most one more than the limit, so that a caller sees that it is longer. Pipes and devices are read too. */
export function readUpTo(file: string, limit: number): Buffer {
  const handle = fs.openSync(file, 'r');
  try {
    return readHandle(handle, limit);
  } finally {
    fs.closeSync(handle);
  }
}

/** The last bytes of a plain file, at most so many. */
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

/** The first bytes of a plain file as text; undefined where there is none, or it cannot be read. */
export function startOfPlain(file: string): string | undefined {
  try {
    return fs.statSync(file).isFile() ? readUpTo(file, 16_384).toString('utf8') : undefined;
  } catch {
    return undefined; // whoever writes there will be told why that cannot be done
  }
}

/** All that comes from an open file, at most one byte more than the limit. */
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
      if (code === 'EOF') return 0; // Windows says so at the end of a pipe
      if (code !== 'EAGAIN') throw error;
      pause();
    }
  }
}

/** Writes all of a text or of bytes to an open file, waiting for a slow reader on the other end. */
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

/**
 * Where a path, absolute, leads in the end, so that two names of one file are seen to be one. Itself where nobody can tell, and of a
 * device: a terminal may well be named twice.
 */
export function realName(file: string): string {
  try {
    const stat = fs.statSync(file, { throwIfNoEntry: false });
    if (stat === undefined) return path.join(fs.realpathSync(path.dirname(file)), path.basename(file));
    return stat.isFile() || stat.isDirectory() ? fs.realpathSync(file) : file;
  } catch {
    return file;
  }
}

/** What stands at a path; what cannot be looked at counts as nothing, since writing it will say why. */
export function standsAt(file: string): Standing {
  try {
    return fs.statSync(file).isDirectory() ? 'directory' : 'file';
  } catch {
    return 'nothing';
  }
}

/** Why such a device is not read. */
export const noEnd = 'it is a device that never ends, not a file';

/** Whether this is one of the system's sources of zeros or chance; a terminal and the null device do end. */
export const neverEnds = (stat: fs.Stats): boolean =>
  stat.isCharacterDevice() &&
  ['zero', 'full', 'random', 'urandom'].some(
    (name) => fs.statSync(`/dev/${name}`, { throwIfNoEntry: false })?.rdev === stat.rdev,
  );

/** A pipe that is full or empty for now: give the other end a moment. */
function pause(): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 2);
}

/**
 * Puts a whole file in place at once: written beside, then renamed, so that a reader sees the old file or the new one. What is no
 * plain file (a pipe, /dev/stdout) is written into as it is; a link stays and the file behind it is replaced.
 */
export function replaceFile(named: string, content: string | Uint8Array): void {
  const old = fs.statSync(named, { throwIfNoEntry: false });
  if (old !== undefined && !old.isFile()) {
    fs.writeFileSync(named, content);
    return;
  }
  const target = old === undefined ? named : fs.realpathSync(named);
  // Beside would work in a directory that may be written to even when the file may not.
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

/** Where a file is written before it is put in place; what a run that was killed left there for the same file is removed. */
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
    return []; // writing into it will say why
  }
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return systemCode(error) !== 'ESRCH';
  }
}

/** Makes a folder, and those above it that are not there. */
export function makeFolder(folder: string): void {
  fs.mkdirSync(folder, { recursive: true });
}

/** A file that must not exist yet; a write that fails half-way leaves none. */
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
