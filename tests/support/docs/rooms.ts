/** The folders of src/, from the tested table of rooms. */
import { list } from '../../../src/pages/markdown.ts';
import { rooms } from '../../project/rooms.ts';

export const roomLines = (): string =>
  list(
    Object.entries(rooms).map(
      ([name, { why, packages = [] }]) =>
        `\`${name}\`: ${why}${packages.length === 0 ? '' : ` Packages: ${packages.join(', ')}.`}`,
    ),
  );
