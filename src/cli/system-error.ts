/** The system's file errors in plain words. */
import { CliFault, exit, printable } from './fault.ts';

const words: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file: a part of the path is not a directory',
  EACCES: 'not allowed',
  EPERM: 'not allowed',
  EISDIR: 'it is a directory',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'the links go in a circle',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is full',
  EFBIG: 'the file is at its size limit',
  EROFS: 'the disk is read-only',
  EMFILE: 'too many files are open',
  EEXIST: 'it already exists',
  EIO: 'the disk reports an error',
};

/** Such as "ENOENT"; undefined for other errors. */
export function systemCode(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('code' in error) || !('syscall' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}

/** undefined for our own bugs. */
export function systemWords(error: unknown): string | undefined {
  const code = systemCode(error);
  if (code === undefined) return undefined;
  if ((error as NodeJS.ErrnoException).syscall === 'uv_cwd')
    return 'the current folder is gone; change to another';
  return words[code] ?? `the system says ${code}`;
}

/** Throws a fault that names the file. */
export function writing(path: string, act: () => void): void {
  try {
    act();
  } catch (error) {
    const why = systemCode(error) === 'ENOENT' ? 'there is no such directory' : systemWords(error);
    if (why === undefined) throw error;
    throw new CliFault(`cannot write ${printable(path)}: ${why}`, { code: exit.input });
  }
}
