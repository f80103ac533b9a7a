/** Runs the program in the test's process, on streams of strings and a real directory. */
import fs from 'node:fs';
import path from 'node:path';
import { makeFolder, standsAt, readUpTo, replaceFile } from '../../src/cli/files.ts';
import type { CliIo } from '../../src/cli/io.ts';
import { runCli } from '../../src/cli/run.ts';

export interface Machine {
  /** Without it, a terminal where nobody types. */
  readonly stdin?: string | Buffer;
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
  /** Of a terminal; without it, a pipe. */
  readonly columns?: number;
  readonly io?: Partial<CliIo>;
}

export interface Ran {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
  /** Standard output that is no text. */
  readonly bytes: Buffer;
}

/** In every test, also for started programs: no output may depend on the real day. */
export const today = '2026-11-20';

export const repo = new URL('../..', import.meta.url).pathname;

/** A file of the repository. */
export const repoText = (file: string): string => fs.readFileSync(path.join(repo, file), 'utf8');

export async function run(args: readonly string[], machine: Machine = {}): Promise<Ran> {
  let stdout = '';
  let stderr = '';
  let bytes = Buffer.alloc(0);
  const code = await runCli(args, {
    ...machineOf(machine),
    stdout: (text) => {
      stdout += text;
    },
    stdoutBytes: (more) => {
      bytes = Buffer.concat([bytes, more]);
    },
    stderr: (text) => {
      stderr += text;
    },
    ...machine.io,
  });
  // Not enumerable: runs are compared whole, and most write no bytes.
  return Object.defineProperty({ code, stdout, stderr }, 'bytes', { value: bytes }) as Ran;
}

function machineOf({
  stdin,
  env = {},
  cwd = repo,
  columns,
}: Machine): Omit<CliIo, 'stdout' | 'stdoutBytes' | 'stderr'> {
  const at = (name: string): string => path.resolve(cwd, name);
  return {
    stdin: (limit) => Promise.resolve(Buffer.from(stdin ?? '').subarray(0, limit + 1)),
    stdinParts: () => inParts(Buffer.from(stdin ?? '')),
    stdinIsTerminal: stdin === undefined,
    stdoutIsTerminal: columns !== undefined,
    stderrIsTerminal: columns !== undefined,
    columns,
    env,
    cwd,
    today: () => today,
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

/** In parts that end anywhere, as from a pipe. */
async function* inParts(bytes: Buffer): AsyncGenerator<Buffer> {
  const part = 1013;
  for (let at = 0; at < bytes.length; at += part) yield await Promise.resolve(bytes.subarray(at, at + part));
}
