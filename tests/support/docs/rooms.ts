/** The folders of src/ from the ground up, from the table that the walls are tested by. */
import { list } from '../../../src/pages/markdown.ts';
import { rooms } from '../../project/rooms.ts';

/** One room a line: why it is apart, and the packages that only it may import. */
export const roomLines = (): string =>
  list(
    Object.entries(rooms).map(
      ([name, { why, packages = [] }]) =>
        `\`${name}\`: ${why}${packages.length === 0 ? '' : ` Packages: ${packages.join(', ')}.`}`,
    ),
  );
