/** What the build puts beside the program to be read when it is wanted. */
import path from 'node:path';

/** The folder of the build, two floors up from here; the build says where the bundle stands, see bin/build.cjs. */
export const besideProgram = path.join(import.meta.dirname, '..', '..', 'dist');
