/** What needs the PDF library, as one bundle (bin/build.cjs). */
export { sheetsPdf } from '../pages/pdf/pdf.ts';
export { printedScene } from './printed-scene.ts';
export { templatesPdf } from './template-pdf.ts';
