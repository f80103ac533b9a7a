/** Finds an order's picture on the disk and reads it. */
import fs from 'node:fs';
import path from 'node:path';
import { no } from '../../photo/pixels/header.ts';
import { pictureLimits, pictureOf, type PictureRead } from '../../photo/pixels/picture.ts';
import { readHandle } from '../files.ts';
import { systemCode, systemWords } from '../system-error.ts';

/** Plain files only: a pipe could block. Errors: missing, too large, not JPEG or PNG, cut off, malformed. */
export function readPhoto(file: string, limits = pictureLimits): PictureRead {
  try {
    if (!fs.statSync(file).isFile()) return no('it is not a plain file');
    const handle = fs.openSync(file, fs.constants.O_RDONLY | fs.constants.O_NONBLOCK);
    try {
      return pictureOf(readHandle(handle, limits.bytes), limits);
    } finally {
      fs.closeSync(handle);
    }
  } catch (error) {
    const why = systemWords(error);
    if (why === undefined) throw error;
    return no(why);
  }
}

type Found =
  | { readonly is: 'there'; readonly path: string }
  | { readonly is: 'absent' }
  | { readonly is: 'fault'; readonly why: string };

/** Next to the order file, or in a named folder. Errors: a name that leads outside the folder. */
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
