/** Starts the built program as a shell would, in a process of its own. */
import { execFileSync, spawn, type ChildProcessWithoutNullStreams } from 'node:child_process';
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
}

/** The program as it is started from a shell. */
export const installed = path.join(repo, 'bin', 'cinchwright');
const fixedDay = path.join(repo, 'tests', 'support', 'fixed-day.cjs');

/**
 * The environment of a program that tests start, with `cinchwright` to be found in it. Nothing of ours comes into it but the path, and
 * the real day does not either. Tests have no other way to the program, so none can be made that holds on one day only.
 */
export function surroundings(env: Readonly<Record<string, string>> = {}): Record<string, string> {
  const folders = [path.dirname(installed), path.dirname(process.execPath), process.env['PATH'] ?? ''];
  const options = [`--require ${JSON.stringify(fixedDay)}`, env['NODE_OPTIONS'] ?? ''];
  return { PATH: folders.join(path.delimiter), ...env, NODE_OPTIONS: options.join(' ').trim() };
}

/** Starts bin/cinchwright and leaves it running; `npm run build` must have run. */
export function launch(
  args: readonly string[],
  { env, cwd = repo, program = installed }: Pick<Start, 'env' | 'cwd' | 'program'> = {},
): ChildProcessWithoutNullStreams {
  return spawn(process.execPath, [program, ...args], { cwd, env: surroundings(env) });
}

/** A pipe with a name, which Node cannot make. */
export function makePipe(name: string, cwd: string): void {
  execFileSync('bash', ['-c', 'mkfifo "$0"', name], { cwd });
}

/** Runs it to its end. */
export function start(args: readonly string[], how: Start = {}): Promise<Started> {
  const { stdin } = how;
  return new Promise((resolve, reject) => {
    const child = launch(args, how);
    let stdout = '';
    let stderr = '';
    child.stdout.on('data', (part: Buffer) => {
      stdout += part.toString();
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
