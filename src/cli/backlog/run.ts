/** One order in, one row out. */
import type { Row } from '../../work/row.ts';
import type { Shop } from '../../order/types.ts';
import type { CliIo } from '../io.ts';
import type { Source } from '../sources.ts';
import { systemWords } from '../system-error.ts';
import { partsOf } from './parts.ts';
import { piecesOf } from './pieces.ts';
import { rowsOf, unreadableRow } from './rows.ts';

interface Around {
  readonly shop: Shop;
  readonly io: CliIo;
  readonly took: (bytes: number) => void;
}

/** In input order. */
export async function* rowsOfAll(sources: readonly Source[], around: Around): AsyncGenerator<Row> {
  for (const source of sources) {
    for await (const row of rowsIn(source, around)) {
      yield row;
      await new Promise(setImmediate); // lets Ctrl-C through
    }
  }
}

const linesByName = /\.(?:ndjson|jsonl)$/i;

/** One row for an unreadable source. */
async function* rowsIn(source: Source, { shop, io, took }: Around): AsyncGenerator<Row> {
  const { label: file, path = '', fault } = source;
  let document = 1;
  if (fault !== undefined) {
    yield unreadableRow(fault, { file, document, line: 1 });
    return;
  }
  try {
    const byLine = linesByName.test(path) ? true : undefined;
    for await (const piece of piecesOf(partsOf(source, io), byLine)) {
      took(piece.bytes.length);
      for (const row of rowsOf(piece, { file, document }, shop)) {
        yield row;
        document += 1;
      }
    }
  } catch (error) {
    const why = systemWords(error);
    if (why === undefined) throw error;
    yield unreadableRow(why, { file, document, line: 1 });
  }
}
