/** Starts the built program in its own process. */
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
  readonly program?: string;
}

export const installed = path.join(repo, 'bin', 'cinchwright');
const fixedDay = path.join(repo, 'tests', 'support', 'fixed-day.cjs');

/**
 * For programs that tests start, with `cinchwright` on the path and a fixed day. Tests have no other way to the
 * built program.
 */
export function surroundings(env: Readonly<Record<string, string>> = {}): Record<string, string> {
  const folders = [path.dirname(installed), path.dirname(process.execPath), process.env['PATH'] ?? ''];
  const options = [`--require ${JSON.stringify(fixedDay)}`, env['NODE_OPTIONS'] ?? ''];
  return { PATH: folders.join(path.delimiter), ...env, NODE_OPTIONS: options.join(' ').trim() };
}

/** Leaves it running; needs `npm run build`. */
export function launch(
  args: readonly string[],
  { env, cwd = repo, program = installed }: Pick<Start, 'env' | 'cwd' | 'program'> = {},
): ChildProcessWithoutNullStreams {
  return spawn(process.execPath, [program, ...args], { cwd, env: surroundings(env) });
}

/** A named pipe, which Node cannot make. */
export function makePipe(name: string, cwd: string): void {
  execFileSync('bash', ['-c', 'mkfifo "$0"', name], { cwd });
}

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
    child.stdin.on('error', () => undefined); // it may end without reading its input
    child.stdin.end(stdin ?? '');
  });
}
