/** All the program needs from the machine; tests replace it. */

import type { Readable, Writable } from 'node:stream';

export type Standing = 'nothing' | 'directory' | 'file';

export interface Terminal {
  readonly input: Readable & { readonly setRawMode?: (raw: boolean) => unknown };
  readonly output: Writable & { columns?: number };
}

export interface CliIo {
  /** Up to one byte over the limit. Throws the system's error. */
  readonly stdin: (limit: number) => Promise<Buffer>;
  /** In chunks. Throws the system's error. */
  readonly stdinParts: () => AsyncIterable<Buffer>;
  readonly stdinIsTerminal: boolean;
  /** If both ends are a terminal. */
  readonly terminal?: () => Terminal;
  readonly stdout: (text: string) => void;
  readonly stdoutBytes: (bytes: Uint8Array) => void;
  readonly stderr: (text: string) => void;
  readonly stdoutIsTerminal: boolean;
  readonly stderrIsTerminal: boolean;
  /** undefined without a terminal. */
  readonly columns: number | undefined;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Local day, as 2026-12-18. */
  readonly today: () => string;
  readonly cwd: string;
  /** Up to one byte over the limit. Throws the system's error. */
  readonly readFile: (path: string, limit: number) => Buffer;
  readonly standsAt: (path: string) => Standing;
  /** The whole file. Throws the system's error. */
  readonly replaceFile: (path: string, content: string | Uint8Array) => void;
  /** With its parents. Throws the system's error. */
  readonly makeFolder: (path: string) => void;
}
