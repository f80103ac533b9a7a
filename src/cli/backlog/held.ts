/** One run at a time writes a file: while it does, a small file beside it says which process that is. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { CliFault, printable } from '../fault.ts';
import { pause, realName, writeHandle } from '../files.ts';
import { systemCode, writing } from '../system-error.ts';
import { isPlain } from './output.ts';

/** Who writes: a process of a machine. A number is given again to later processes, so when it began counts too. */
interface Holder {
  readonly host: string;
  readonly process: number;
  /** As the system counts; undefined where it does not tell. */
  readonly began: string | undefined;
}

/** The file that says so. */
const holdOf = (out: string): string => path.join(path.dirname(out), `.${path.basename(out)}.running`);

/**
 * Holds an output, absolute, until the returned function lets go of it. A hold left by a run that was killed does not
 * count. Errors: another run writes that file; it cannot be written.
 */
export function hold(out: string, name: string): () => void {
  if (!isPlain(out)) return () => undefined;
  const file = holdOf(realName(out)); // two names may lead to one file
  const own = { host: os.hostname(), process: process.pid, began: beganAt(process.pid) };
  writing(name, () => {
    while (!made(file, own)) removeIfLeft(file, name);
  });
  return () => {
    const holder = read(file);
    if (typeof holder === 'object' && isSame(holder, own)) fs.rmSync(file, { force: true });
  };
}

function made(file: string, own: Holder): boolean {
  let handle: number;
  try {
    handle = fs.openSync(file, 'wx');
  } catch (error) {
    if (systemCode(error) === 'EEXIST') return false;
    throw error;
  }
  try {
    writeHandle(handle, JSON.stringify(own));
    return true;
  } catch (error) {
    fs.rmSync(file, { force: true });
    throw error;
  } finally {
    fs.closeSync(handle);
  }
}

/** Pauses, about half a second in all. */
const WAITS = 200;

/** Takes away the hold of a run that is no more. */
function removeIfLeft(file: string, name: string): void {
  let holder = read(file);
  // It may be written this very moment, or its run may just be ending: one that was killed takes a while to be gone.
  for (let wait = 0; wait < WAITS && mayPass(holder); wait++) {
    pause();
    holder = read(file);
  }
  if (holder === 'gone') return;
  if (holder === 'torn' || !counts(holder)) {
    fs.rmSync(file, { force: true });
    return;
  }
  throw new CliFault(`${whoOf(holder)} is writing ${printable(name)} just now`, {
    hint: `Wait for it, or write another file. If there is no such run, delete ${printable(path.basename(file))} beside it.`,
  });
}

function whoOf(holder: Holder): string {
  const run = isHere(holder) ? 'another run' : `a run on ${printable(holder.host)}`;
  return `${run} (process ${String(holder.process)})`;
}

type Found = Holder | 'gone' | 'torn';

/** Torn when whoever made it was killed before it was written. */
function read(file: string): Found {
  try {
    const {
      host,
      process: number,
      began,
    } = JSON.parse(fs.readFileSync(file, 'utf8')) as Record<string, unknown>;
    if (typeof host !== 'string' || typeof number !== 'number') return 'torn';
    return { host, process: number, began: typeof began === 'string' ? began : undefined };
  } catch (error) {
    return systemCode(error) === 'ENOENT' ? 'gone' : 'torn';
  }
}

const isHere = ({ host }: Holder): boolean => host === os.hostname();

/** Of a run on another machine nobody can tell: it counts. */
const counts = (holder: Holder): boolean => !isHere(holder) || runs(holder);

const mayPass = (holder: Found): boolean =>
  holder === 'torn' || (holder !== 'gone' && isHere(holder) && runs(holder));

const isSame = (a: Holder, b: Holder): boolean =>
  a.host === b.host && a.process === b.process && a.began === b.began;

/** Whether that process is still there, and not another one that was given its number. */
function runs({ process: number, began }: Holder): boolean {
  try {
    process.kill(number, 0); // sends nothing, asks whether it could
  } catch (error) {
    if (systemCode(error) === 'ESRCH') return false;
  }
  const [state = '', now] = aboutProcess(number);
  // Dead, and nobody has asked yet how it ended: so it may stay in a container for as long as that runs.
  if (/^[ZXx]/.test(state)) return false;
  return began === undefined || now === undefined || began === now;
}

const beganAt = (number: number): string | undefined => aboutProcess(number)[1];

/** State and beginning of a process, where the system shows them as Linux does: the 3rd and the 22nd word about it (proc(5)). */
function aboutProcess(number: number): [state?: string | undefined, began?: string | undefined] {
  try {
    const about = fs.readFileSync(`/proc/${String(number)}/stat`, 'utf8');
    // The second one is a name in brackets, which may hold blanks and brackets.
    const words = about.slice(about.lastIndexOf(')') + 2).split(' ');
    return [words[0], words[19]];
  } catch {
    return [];
  }
}
