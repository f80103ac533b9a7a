/** All the program needs from the machine; tests supply their own. */

import type { Readable, Writable } from 'node:stream';

export type Standing = 'nothing' | 'directory' | 'file';

/** Keys in, lines out. */
export interface Terminal {
  readonly input: Readable & { readonly setRawMode?: (raw: boolean) => unknown };
  readonly output: Writable & { columns?: number };
}

export interface CliIo {
  /** At most one byte over the limit. Throws the system's error. */
  readonly stdin: (limit: number) => Promise<Buffer>;
  /** In chunks. Throws the system's error. */
  readonly stdinParts: () => AsyncIterable<Buffer>;
  readonly stdinIsTerminal: boolean;
  /** Opened when both are a terminal. */
  readonly terminal?: () => Terminal;
  readonly stdout: (text: string) => void;
  /** Bytes, to standard output. */
  readonly stdoutBytes: (bytes: Uint8Array) => void;
  readonly stderr: (text: string) => void;
  readonly stdoutIsTerminal: boolean;
  readonly stderrIsTerminal: boolean;
  /** undefined without a terminal. */
  readonly columns: number | undefined;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** On this machine's calendar, as 2026-12-18. */
  readonly today: () => string;
  /** For relative file names. */
  readonly cwd: string;
  /** At most one byte over the limit. Throws the system's error. */
  readonly readFile: (path: string, limit: number) => Buffer;
  /** Nothing, a directory, or something writable. */
  readonly standsAt: (path: string) => Standing;
  /** Replaces it whole. Throws the system's error. */
  readonly replaceFile: (path: string, content: string | Uint8Array) => void;
  /** With its parents. Throws the system's error. */
  readonly makeFolder: (path: string) => void;
}
