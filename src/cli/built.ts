/** Where the build puts files for the program. */
import path from 'node:path';

/** Two levels up; see bin/build.cjs. */
export const besideProgram = path.join(import.meta.dirname, '..', '..', 'dist');
