/** Starts the built program as a shell would, in a process of its own. */
import { spawn } from 'node:child_process';
import path from 'node:path';
import { repo } from './run-cli.ts';

export interface Started {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Start {
  readonly stdin?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
  /** Another copy of the program. */
  readonly program?: string;
  /** Stops listening after the first piece of output, as "| head" does. */
  readonly hangUp?: boolean;
}

const installed = path.join(repo, 'bin', 'cinchwright');

/** Runs bin/cinchwright to its end; `npm run build` must have run. */
export function start(args: readonly string[], how: Start = {}): Promise<Started> {
  const { stdin, env = {}, cwd = repo, program = installed, hangUp } = how;
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...args], {
      cwd,
      env: { PATH: process.env['PATH'], ...env },
    });
    let stdout = '';
    let stderr = '';
    child.stdout.on('data', (part: Buffer) => {
      stdout += part.toString();
      if (hangUp === true) child.stdout.destroy();
    });
    child.stderr.on('data', (part: Buffer) => {
      stderr += part.toString();
    });
    child.on('error', reject);
    child.on('close', (code, signal) => {
      resolve({ code, signal, stdout, stderr });
    });
    child.stdin.on('error', () => undefined); // a program that does not read its input may end before it is written
    child.stdin.end(stdin ?? '');
  });
}
