// Builds the program, and V8's compiled code for this Node beside it.
const { execFileSync } = require('node:child_process');
const {
  copyFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} = require('node:fs');
const path = require('node:path');
const { Script } = require('node:vm');

const root = path.join(__dirname, '..');
const bundle = path.join(root, 'dist', 'cinchwright.cjs');
const pdf = path.join(root, 'dist', 'pdf.cjs');
const raster = path.join(root, 'dist', 'raster.cjs');
const pick = path.join(root, 'dist', 'pick.js');
const cache = `${bundle}.cache`;

// Loaded on demand.
const codecs = [
  ['jpeg-decoder.wasm', '@jsquash/jpeg/codec/dec/mozjpeg_dec.wasm'],
  ['jpeg-encoder.wasm', '@jsquash/jpeg/codec/enc/mozjpeg_enc.wasm'],
  ['png.wasm', '@jsquash/png/codec/pkg/squoosh_png_bg.wasm'],
];

// V8 keeps what this order runs compiled.
const order = `
order: warm up
horse: { height: 15.1 hh, heart-girth: 73 in, elbow-room: 4 in, trouble: [elbow-gall] }
saddle: { rigging: 7/8, style: flat-plate, ring-to-ring: 44 in }
use: trail
wants: { style: straight, strands: 27, length: 32 in }
`;

// Unused, but slow every start.
const leaveOut = {
  name: 'leave out',
  setup(build) {
    // For subcommands in other programs.
    build.onResolve({ filter: /^node:child_process$/ }, () => ({
      path: 'child_process',
      namespace: 'left-out',
    }));
    // src/cli/screen.ts decides colors.
    build.onResolve({ filter: /^#supports-color$/ }, () => ({
      path: 'supports-color',
      namespace: 'left-out',
    }));
    build.onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents: 'export default { stdout: false, stderr: false };',
    }));
  },
};

/** Rarely needed, so loaded on demand. "../dist" works from bin/ and dist/. */
const apart = {
  name: 'apart',
  setup(build) {
    build.onResolve({ filter: /\/pdf-bundle\.ts$/ }, () => ({ path: '../dist/pdf.cjs', external: true }));
    build.onResolve({ filter: /\/pixels\/codecs\.ts$/ }, () => ({
      path: '../dist/raster.cjs',
      external: true,
    }));
  },
};

// Native, loaded on demand.
const external = ['@resvg/resvg-js'];

// Only WOFF2 fonts need it.
const withoutBrotli = {
  name: 'without brotli',
  setup(build) {
    build.onResolve({ filter: /^brotli\/decompress/ }, () => ({ path: 'brotli', namespace: 'left-out' }));
    build.onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents: 'module.exports = undefined;',
    }));
  },
};

async function build() {
  rmSync(cache, { force: true });
  try {
    await bundled('src/draw/pdf-bundle.ts', pdf, {
      plugins: [withoutBrotli],
      define: { 'import.meta.url': 'here' }, // looks for files we do not use
      banner: { js: 'const here=require("node:url").pathToFileURL(__filename).href;' },
    });
    await bundled('src/photo/pixels/codecs.ts', raster, {
      define: { 'import.meta.url': 'here' }, // looks for compiled code we hand over
      banner: { js: 'const here=require("node:url").pathToFileURL(__filename).href;' },
    });
    await bundled('src/photo/browser/main.ts', pick, {
      platform: 'browser',
      target: ['chrome109', 'firefox115', 'safari15.6'],
      format: 'iife',
    });
    for (const [, from] of codecs)
      used.add(path.relative(root, require.resolve(from)).match(packageFolder)[0]);
    for (const [name, from] of codecs) copyFileSync(require.resolve(from), path.join(root, 'dist', name));
    await bundled('src/cli/main.ts', bundle, {
      plugins: [leaveOut, apart],
      external,
      supported: { 'dynamic-import': false }, // bin/cinchwright compiles it: only require works
      // Two levels down, like the sources.
      // A package reads the second on loading.
      define: { 'import.meta.dirname': 'here', 'import.meta.url': '__filename' },
      // The function that bin/cinchwright calls.
      banner: { js: '(function(exports,require,module,__filename,__dirname){const here=__dirname+"/_";' },
      footer: { js: '})' },
    });
    onlyAscii(bundle);
    writeFileSync(path.join(root, 'dist', 'licenses.txt'), licenses());
    execFileSync(process.execPath, [__filename, '--warm'], {
      input: order,
      stdio: ['pipe', 'ignore', 'inherit'],
    });
  } catch {
    process.exitCode = 1; // already printed
  }
}

const packageFolder = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/;

const used = new Set();

async function bundled(entry, outfile, more) {
  const { metafile } = await require('esbuild').build({
    absWorkingDir: root,
    metafile: true,
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    charset: 'ascii',
    logLevel: 'warning',
    ...more,
  });
  for (const file of Object.keys(metafile.inputs)) {
    const found = packageFolder.exec(file);
    if (found !== null) used.add(found[0]);
  }
}

/** bin/cinchwright reads latin1; esbuild leaves patterns and raw text alone. */
function onlyAscii(file) {
  const found = /.{0,40}[^\0-\x7f].{0,20}/.exec(readFileSync(file, 'utf8'));
  if (found === null) return;
  process.stderr.write(`${path.relative(root, file)} is not ASCII: write \\u numbers at ${found[0]}\n`);
  throw new Error('not ASCII');
}

function licenses() {
  const parts = [...used].sort().map((folder) => {
    const { name, version, license = 'see below' } = require(path.join(root, folder, 'package.json'));
    const texts = [folder, path.join(folder, 'codec')].flatMap(licenseIn);
    return [`${name} ${version}, ${license}`, ...texts].join('\n\n');
  });
  parts.push(readFileSync(path.join(__dirname, 'codecs.txt'), 'utf8').trim());
  const head = 'Packages whose code is bundled into the program, with their licenses. Fonts: see bin/fonts.';
  return `${[head, ...parts].join('\n\n----\n\n')}\n`;
}

/** Compiled code has its own license. */
function licenseIn(folder) {
  const at = path.join(root, folder);
  if (!existsSync(at)) return [];
  const file = readdirSync(at).find((each) => /^licen[cs]e/i.test(each));
  return file === undefined ? [] : [readFileSync(path.join(at, file), 'utf8').trim()];
}

function warm() {
  process.argv = [process.argv[0], bundle, 'size'];
  const source = readFileSync(bundle);
  const script = new Script(source.latin1Slice(), { filename: bundle });
  process.on('exit', () => {
    const code = script.createCachedData();
    const part = `${cache}.${process.pid}`;
    writeFileSync(part, Buffer.concat([code, code, source]));
    renameSync(part, cache);
  });
  script.runInThisContext()(exports, require, module, bundle, path.dirname(bundle));
}

if (process.argv[2] === '--warm') warm();
else void build();
