/** Everything the program asks of the machine it runs on, so that tests can hand it another one. */

import type { Readable, Writable } from 'node:stream';

export type Standing = 'nothing' | 'directory' | 'file';

/** Where somebody types and reads: keys come in, lines go out. */
export interface Terminal {
  readonly input: Readable & { readonly setRawMode?: (raw: boolean) => unknown };
  readonly output: Writable & { columns?: number };
}

export interface CliIo {
  /** All of standard input, or an error of the system; reads at most one byte more than the limit. */
  readonly stdin: (limit: number) => Promise<Buffer>;
  /** The same as it comes, for more than fits. Throws the system's error. */
  readonly stdinParts: () => AsyncIterable<Buffer>;
  readonly stdinIsTerminal: boolean;
  /** Both streams of a conversation, to be opened where both are a terminal. */
  readonly terminal?: () => Terminal;
  readonly stdout: (text: string) => void;
  /** What is no text, to standard output. */
  readonly stdoutBytes: (bytes: Uint8Array) => void;
  readonly stderr: (text: string) => void;
  readonly stdoutIsTerminal: boolean;
  readonly stderrIsTerminal: boolean;
  /** Width of the terminal; undefined when there is none. */
  readonly columns: number | undefined;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Today on this machine's calendar, as 2026-12-18. */
  readonly today: () => string;
  /** Directory that relative file names start from. */
  readonly cwd: string;
  /** A file's bytes, at most one more than the limit. Throws the system's error. */
  readonly readFile: (path: string, limit: number) => Buffer;
  /** What stands at a path: nothing, a directory, or anything that can be written into. */
  readonly standsAt: (path: string) => Standing;
  /** Puts a whole file in place at once, over an older one if there is one. Throws the system's error. */
  readonly replaceFile: (path: string, content: string | Uint8Array) => void;
  /** Makes a folder, and those above it, as far as they are not there. Throws the system's error. */
  readonly makeFolder: (path: string) => void;
}
