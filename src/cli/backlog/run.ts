/** The loop of a backlog: one order in, one row out. */
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
  /** Told of the bytes of every piece that has been read. */
  readonly took: (bytes: number) => void;
}

/** Rows of all sources, in the order of the input. */
export async function* rowsOfAll(sources: readonly Source[], around: Around): AsyncGenerator<Row> {
  for (const source of sources) {
    for await (const row of rowsIn(source, around)) {
      yield row;
      await new Promise(setImmediate); // a moment for Ctrl-C
    }
  }
}

const linesByName = /\.(?:ndjson|jsonl)$/i;

/** A source that cannot be read, or not to its end, has a row that says so. */
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
