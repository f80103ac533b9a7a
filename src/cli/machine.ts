/** The real machine: streams, files, environment. */
import fs from 'node:fs';
import path from 'node:path';
import { CliFault, exit } from './fault.ts';
import {
  makeFolder,
  neverEnds,
  noEnd,
  readHandle,
  readUpTo,
  replaceFile,
  standsAt,
  writeHandle,
} from './files.ts';
import type { CliIo } from './io.ts';
import { systemCode } from './system-error.ts';

/** As after "| head": stop quietly. */
export class ReaderGone extends Error {}

const STDIN = 0;
const STDOUT = 1;
const STDERR = 2;

/** By file number, with lazy checks: Node's streams slow every start. */
export function thisMachine(): CliIo {
  const at = (name: string): string => path.resolve(name);
  return {
    stdin: (limit) => Promise.resolve(readHandle(STDIN, limit)),
    stdinParts: () => {
      if (neverEnds(fs.fstatSync(STDIN)))
        throw new CliFault(`standard input: ${noEnd}`, { code: exit.input });
      return process.stdin;
    },
    stdout: (text) => {
      put(STDOUT, text);
    },
    stdoutBytes: (bytes) => {
      put(STDOUT, bytes);
    },
    stderr: (text) => {
      put(STDERR, text);
    },
    terminal: () => ({ input: process.stdin, output: process.stdout }),
    get stdinIsTerminal() {
      return isTerminal(STDIN);
    },
    get stdoutIsTerminal() {
      return isTerminal(STDOUT);
    },
    get stderrIsTerminal() {
      return isTerminal(STDERR);
    },
    get columns() {
      return isTerminal(STDOUT) ? process.stdout.columns : undefined;
    },
    env: process.env,
    today,
    get cwd() {
      return process.cwd(); // fails in a removed folder
    },
    readFile: (name, limit) => readUpTo(at(name), limit),
    standsAt: (name) => standsAt(at(name)),
    replaceFile: (name, content) => {
      replaceFile(at(name), content);
    },
    makeFolder: (name) => {
      makeFolder(at(name));
    },
  };
}

/** Quick checks first; the sure one loads slowly. */
function isTerminal(handle: number): boolean {
  try {
    const stat = fs.fstatSync(handle);
    if (!stat.isCharacterDevice() || stat.rdev === fs.statSync('/dev/null', { throwIfNoEntry: false })?.rdev)
      return false;
    return process.getBuiltinModule('node:tty').isatty(handle);
  } catch {
    return false;
  }
}

/** The shop's day, not UTC. */
function today(): string {
  const now = new Date();
  const two = (count: number): string => String(count).padStart(2, '0');
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function put(stream: number, content: string | Uint8Array): void {
  try {
    writeHandle(stream, content);
  } catch (error) {
    const code = systemCode(error);
    if (code === 'EPIPE' || code === 'EOF') throw new ReaderGone();
    // Nobody is left to tell.
    if (stream === STDERR) return;
    throw error;
  }
}
