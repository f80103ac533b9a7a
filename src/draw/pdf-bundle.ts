/** All that needs the PDF library, in one bundle: see bin/build.cjs. */
export { sheetsPdf } from '../pages/pdf/pdf.ts';
export { printedScene } from './printed-scene.ts';
export { templatesPdf } from './template-pdf.ts';
