/** Runs a command line in its own folder, with output in memory. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { makeFolder, readUpTo, replaceFile, standsAt } from '../../src/cli/files.ts';
import { runCli } from '../../src/cli/run.ts';

export interface Ran {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
  readonly bytes: Buffer;
}

/** In memory if possible: every try writes a file. */
const memory = ['/dev/shm'].find((folder) => fs.existsSync(folder));

export class Folder {
  readonly path = fs.realpathSync(fs.mkdtempSync(path.join(memory ?? os.tmpdir(), 'cinchwright-fuzz-')));

  /** Names may include folders. */
  put(files: Readonly<Record<string, Buffer>>): void {
    for (const [name, bytes] of Object.entries(files)) {
      const at = path.join(this.path, name);
      if (name.includes('/')) fs.mkdirSync(path.dirname(at), { recursive: true });
      fs.writeFileSync(at, bytes);
    }
  }

  read(name: string): Buffer | undefined {
    const at = path.join(this.path, name);
    return fs.existsSync(at) ? fs.readFileSync(at) : undefined;
  }

  empty(): void {
    for (const name of fs.readdirSync(this.path)) fs.rmSync(path.join(this.path, name), { recursive: true });
  }

  remove(): void {
    fs.rmSync(this.path, { recursive: true, force: true });
  }

  /** `piped` is standard input. */
  async run(args: readonly string[], piped: Buffer): Promise<Ran> {
    const ran = { stdout: [] as string[], stderr: [] as string[], bytes: [] as Uint8Array[] };
    const at = (name: string): string => path.resolve(this.path, name);
    const code = await runCli(args, {
      stdin: (limit) => Promise.resolve(piped.subarray(0, limit + 1)),
      stdinParts: () => parts(piped),
      stdinIsTerminal: false,
      stdoutIsTerminal: false,
      stderrIsTerminal: false,
      columns: undefined,
      env: {},
      cwd: this.path,
      today: () => '2026-11-20',
      stdout: (text) => ran.stdout.push(text),
      stdoutBytes: (bytes) => ran.bytes.push(bytes),
      stderr: (text) => ran.stderr.push(text),
      readFile: (name, limit) => readUpTo(at(name), limit),
      standsAt: (name) => standsAt(at(name)),
      replaceFile: (name, content) => {
        replaceFile(at(name), content);
      },
      makeFolder: (name) => {
        makeFolder(at(name));
      },
    });
    return {
      code,
      stdout: ran.stdout.join(''),
      stderr: ran.stderr.join(''),
      bytes: Buffer.concat(ran.bytes),
    };
  }
}

async function* parts(bytes: Buffer): AsyncGenerator<Buffer> {
  for (let at = 0; at < bytes.length; at += 1013) yield await Promise.resolve(bytes.subarray(at, at + 1013));
}
