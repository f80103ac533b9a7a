/** docs/rooms.md: the folders of src/ from the ground up, from the table that the walls are tested by. */
import { rooms } from '../../project/rooms.ts';
import { document, table } from '../../../src/report/markdown.ts';

const listed = (names: readonly string[] = []): string => names.join(', ');

const passes = Object.entries(rooms).flatMap(([name, { calls = {} }]) =>
  Object.entries(calls).map(([file, functions]) => `\`${name}\` ${functions.join(', ')} of \`${file}\``),
);

/** Text of docs/rooms.md. */
export const roomsDoc = (): string =>
  document([
    '# Rooms',
    'The folders of `src`, from the ground up. A room imports only rooms above it: those it uses, and the types of some more. Packages stay in their rooms. `tests/project/walls.test.ts` holds all of it; a change belongs into `tests/project/rooms.ts`.',
    table(
      ['Room', 'Why', 'Uses', 'Types only', 'Packages'],
      Object.entries(rooms).map(([name, { why, uses, types, packages }]) => [
        `\`${name}\``,
        why,
        listed(uses),
        listed(types),
        listed(packages),
      ]),
    ),
    `Past a wall, single functions may be called: ${passes.join('; ')}.`,
  ]);
