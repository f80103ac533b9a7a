/** The journal of a run: made for a new one, opened again for one that was cut short. */
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { readHeader, type Fingerprint } from '../../backlog/journal.ts';
import type { Shop } from '../../order/types.ts';
import { listed } from '../../units/phrase.ts';
import { plural } from '../../units/phrase.ts';
import { CliFault, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { writing } from '../system-error.ts';
import { version } from '../version.ts';
import { digest } from './digest.ts';
import { JournalFile, journalOf, type Found } from './journal-file.ts';
import { isPlain } from './output.ts';
import { isFile } from './outputs.ts';
import { bundlePath } from './pool.ts';

interface Asked {
  readonly out?: string;
  readonly resume?: true;
}

/**
 * The journal, if the rows go to a plain file. Errors: there is one already and nobody said --resume, since starting anew would lose
 * what stands in it; it cannot be written.
 */
export function openJournal({ out, resume }: Asked, shop: Shop, io: CliIo): JournalFile | undefined {
  if (!isFile(out) || !isPlain(path.resolve(io.cwd, out))) return undefined;
  const name = journalOf(out);
  const file = path.resolve(io.cwd, name);
  const before = fs.existsSync(file);
  if (before && resume !== true && !holdsNothing(file)) {
    throw new CliFault(`${printable(name)} holds what an earlier run has finished`, {
      hint: 'Add --resume to go on with that run, or delete the file to start anew.',
    });
  }
  let journal: JournalFile | undefined;
  writing(name, () => {
    journal = new JournalFile(file, fingerprintOf(shop), before);
  });
  if (resume === true)
    io.stderr(
      before
        ? foundText(name, journal?.found)
        : `there is no ${printable(name)} to go on with: starting anew\n`,
    );
  return journal;
}

/** A run that ended before anything was finished has left the first line at most: nothing is lost by starting anew. */
function holdsNothing(file: string): boolean {
  const { size } = fs.statSync(file);
  if (!isPlain(file) || size > MOST_HEADERS) return false;
  // What follows the last end of a line is torn, and counts for nothing.
  const lines = fs.readFileSync(file, 'utf8').split('\n').slice(0, -1);
  return lines.every((line) => readHeader(line, digest) !== undefined);
}

/** More than some lines of that kind take. */
const MOST_HEADERS = 4096;

function foundText(name: string, found: Found | undefined): string {
  if (found === undefined) return '';
  const { finished, damaged, others } = found;
  const lines = [
    damaged > 0
      ? `${plural(damaged, 'damaged line', 'damaged lines')} of ${printable(name)} ${damaged === 1 ? 'does' : 'do'} not count`
      : '',
    finished === 0 && others.length > 0
      ? `${printable(name)} is from another ${listed(others)}: every order is done again`
      : '',
  ];
  return lines
    .filter((line) => line !== '')
    .map((line) => `${line}\n`)
    .join('');
}

/** Rows depend on the code and on the shop. From its sources the program knows only its version. */
function fingerprintOf(shop: Shop): Fingerprint {
  const bundle = bundlePath();
  const code = bundle === undefined ? '' : ` ${hash(fs.readFileSync(bundle))}`;
  return { program: version + code, shop: hash(JSON.stringify(shop)) };
}

const hash = (contents: string | Buffer): string =>
  createHash('sha256').update(contents).digest('hex').slice(0, 32);
