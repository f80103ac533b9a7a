/** Finds an order's picture beside it or in a named folder. */
import fs from 'node:fs';
import path from 'node:path';
import { systemCode, systemWords } from '../system-error.ts';

export type Found =
  | { readonly is: 'there'; readonly path: string }
  | { readonly is: 'absent' }
  | { readonly is: 'fault'; readonly why: string };

/** Errors: a name that leads outside the folder. */
export function besideOrder(file: string, folder: string): Found {
  if (file.includes('\0')) return { is: 'fault', why: 'the name has a character no file name can have' };
  if (path.isAbsolute(file) || path.win32.isAbsolute(file)) return { is: 'fault', why: outside };
  const named = path.resolve(folder, file);
  if (!isInside(named, path.resolve(folder))) return { is: 'fault', why: outside };
  try {
    const real = fs.realpathSync(named);
    return isInside(real, fs.realpathSync(folder))
      ? { is: 'there', path: real }
      : { is: 'fault', why: outside };
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes(systemCode(error) ?? '')) return { is: 'absent' };
    const why = systemWords(error);
    if (why === undefined) throw error;
    return { is: 'fault', why };
  }
}

const outside = "it is outside the order file's folder; name another folder with --photos-from";

function isInside(file: string, folder: string): boolean {
  const from = path.relative(folder, file);
  return from !== '' && from !== '..' && !from.startsWith(`..${path.sep}`) && !path.isAbsolute(from);
}
