// Bundles the fuzz like bin/build.cjs, since tsx slows every closure; uses the files beside the program.
const path = require('node:path');

const apart = {
  name: 'apart',
  setup(build) {
    build.onResolve({ filter: /\/pdf-bundle\.ts$/ }, () => ({ path: './pdf.cjs', external: true }));
    build.onResolve({ filter: /\/pixels\/codecs\.ts$/ }, () => ({ path: './raster.cjs', external: true }));
  },
};

require('esbuild').build({
  absWorkingDir: path.join(__dirname, '..', '..'),
  entryPoints: ['tests/fuzz/main.ts'],
  outfile: 'dist/fuzz.cjs',
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  logLevel: 'warning',
  plugins: [apart],
  external: ['@resvg/resvg-js'],
  define: { 'import.meta.dirname': 'here', 'import.meta.url': '__filename' },
  banner: { js: 'const here=__dirname+"/_";' },
});
