/** A terminal of streams with typed keys; and a real one, where there is one. */
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import { PassThrough, Writable } from 'node:stream';
import { run, type Machine, type Ran } from './run-cli.ts';
import { installed, surroundings } from './start.ts';

export interface Talk extends Ran {
  /** Without control sequences. */
  readonly drawn: string;
}

/** Without colors, a new line after each cursor movement. */
const plain = (text: string): string =>
  text.replaceAll(/\u001b\[[\d;]*m/g, '').replaceAll(/\u001b\[[\d;?]*[A-Za-z]/g, '\n');

/** Types ahead; then the terminal ends. */
export async function talk(args: readonly string[], keys: string, machine: Machine = {}): Promise<Talk> {
  const input = new PassThrough();
  let drawn = '';
  const output = new Writable({
    write(part: Buffer, _, done) {
      drawn += part.toString('utf8');
      done();
    },
  });
  input.end(keys);
  const columns = machine.columns ?? 80;
  const terminal = () => ({ input, output: Object.assign(output, { columns }) });
  const ran = await run(args, { ...machine, columns, io: { terminal, ...machine.io } });
  return { ...ran, stdout: plain(ran.stdout), drawn: plain(drawn) };
}

const maker = '/usr/bin/script';
export const hasTerminals = fs.existsSync(maker);

/** Types each key once the words before it are drawn. */
export function onTerminal(
  args: readonly string[],
  {
    keys,
    cwd,
    columns,
  }: { keys: readonly (readonly [after: string, key: string])[]; cwd: string; columns: number },
): Promise<{ code: number | null; drawn: string }> {
  const command = [process.execPath, installed, ...args].map((word) => `'${word}'`).join(' ');
  const line = `stty cols ${columns} rows 24; exec ${command}`;
  const env = { ...surroundings({ TERM: 'xterm' }), SHELL: '/bin/sh' };
  const child = spawn(maker, ['-q', '-e', '-c', line, '/dev/null'], { cwd, env });
  const waiting = [...keys];
  let drawn = '';
  let from = 0;
  child.stdout.on('data', (part: Buffer) => {
    drawn += part.toString('utf8');
    const [next] = waiting;
    const at = next === undefined ? -1 : drawn.indexOf(next[0], from);
    if (next === undefined || at < 0) return;
    from = at + next[0].length;
    waiting.shift();
    child.stdin.write(next[1]);
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      resolve({ code, drawn: plain(drawn) });
    });
  });
}
