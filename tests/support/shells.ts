/** Shells and tools of the machine, and what they print. */
import { spawnSync } from 'node:child_process';
import { repo } from './run-cli.ts';

/** Missing ones are named on standard error: their tests are left out. */
export function installed(program: string): boolean {
  const { error } = spawnSync(program, ['--version'], { stdio: 'ignore', timeout: 20_000 });
  const there = (error as NodeJS.ErrnoException | undefined)?.code !== 'ENOENT';
  if (!there) process.stderr.write(`\nSKIPPED: ${program} is not installed here, its tests are left out.\n`);
  return there;
}

export interface Said {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

interface How {
  readonly cwd?: string;
  readonly stdin?: string;
  readonly env?: Readonly<Record<string, string>>;
}

export function said(
  program: string,
  args: readonly string[],
  { cwd = repo, stdin = '', env = {} }: How = {},
): Said {
  const { status, stdout, stderr, error } = spawnSync(program, args, {
    cwd,
    input: stdin,
    encoding: 'utf8',
    timeout: 100_000,
    env: { PATH: process.env['PATH'], HOME: cwd, LC_ALL: 'C.UTF-8', ...env },
  });
  if (error !== undefined) throw error;
  return { code: status, stdout, stderr };
}
