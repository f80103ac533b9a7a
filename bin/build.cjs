// Builds dist/cinchwright.cjs, and beside it V8's compiled code for this Node (see bin/cinchwright).
const { execFileSync } = require('node:child_process');
const { readFileSync, renameSync, rmSync, writeFileSync } = require('node:fs');
const { wrap } = require('node:module');
const path = require('node:path');
const { Script } = require('node:vm');

const root = path.join(__dirname, '..');
const bundle = path.join(root, 'dist', 'cinchwright.cjs');
const cache = `${bundle}.cache`;

// One order that goes through most of what a start needs: functions that have run once are kept compiled.
const order = `
order: warm up
horse: { height: 15.1 hh, heart-girth: 73 in, elbow-room: 4 in, trouble: [elbow-gall] }
saddle: { rigging: 7/8, style: flat-plate, ring-to-ring: 44 in }
use: trail
wants: { style: straight, strands: 27, length: 32 in }
`;

// Loading these of Node's modules takes some milliseconds of every start, for things the program never does.
const leaveOut = {
  name: 'leave out',
  setup(build) {
    // Commander can start other programs as its subcommands.
    build.onResolve({ filter: /^node:child_process$/ }, () => ({
      path: 'child_process',
      namespace: 'left-out',
    }));
    // Chalk looks for a terminal that takes colors; src/cli/screen.ts has done so already.
    build.onResolve({ filter: /^#supports-color$/ }, () => ({
      path: 'supports-color',
      namespace: 'left-out',
    }));
    build.onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents: 'export default { stdout: false, stderr: false };',
    }));
  },
};

if (process.argv[2] === '--warm') warm();
else void build();

async function build() {
  // V8 knows a bundle by its length only: code of an older bundle must never stay beside a newer one.
  rmSync(cache, { force: true });
  try {
    await require('esbuild').build({
      absWorkingDir: root,
      entryPoints: ['src/cli/main.ts'],
      outfile: bundle,
      bundle: true,
      minify: true,
      platform: 'node',
      target: 'node20',
      format: 'cjs',
      charset: 'ascii',
      // Asked by a package when it is loaded; a bundle of CommonJS has its own word for where it is.
      define: { 'import.meta.url': '__filename' },
      logLevel: 'warning',
      plugins: [leaveOut],
    });
    execFileSync(process.execPath, [__filename, '--warm'], {
      input: order,
      stdio: ['pipe', 'ignore', 'inherit'],
    });
  } catch {
    process.exitCode = 1; // esbuild or the program has said why
  }
}

function warm() {
  process.argv = [process.argv[0], bundle, 'size'];
  const script = new Script(wrap(readFileSync(bundle, 'latin1')), { filename: bundle });
  process.on('exit', () => {
    const part = `${cache}.${process.pid}`;
    writeFileSync(part, script.createCachedData());
    renameSync(part, cache);
  });
  script.runInThisContext()(exports, require, module, bundle, path.dirname(bundle));
}
