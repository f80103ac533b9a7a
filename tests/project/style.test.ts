/** House habits that neither the compiler nor the linter checks. */
import fs from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { repo, repoText } from '../support/run-cli.ts';
import { filesBelow, sourceFiles, type SourceFile } from '../support/source-tree.ts';

const linesOf = (text: string): number => text.replace(/\n$/, '').split('\n').length;
const longest = 300;
const usual = 70;

/** Not what tools write. */
const written = [
  ...['src', 'tests', 'docs', 'bin', 'examples', '.ci'].flatMap(filesBelow),
  ...fs.readdirSync(repo, { withFileTypes: true }).flatMap((entry) => (entry.isFile() ? [entry.name] : [])),
].filter((file) => !/^(package-lock\.json|.*\.(png|jpe?g|tgz))$/.test(file));

function headerFault({ name, text }: SourceFile): string | undefined {
  const header = /^\/\*\* (.+) \*\/\n/.exec(text)?.[1];
  if (header === undefined) return `src/${name} does not open with a line of the form "/** What it is. */"`;
  if (!/^[A-Z0-9`"].{8,}[.?!]$/.test(header)) return `src/${name}: "${header}" is no sentence`;
  return undefined;
}

test('every source file opens with a sentence', () => {
  expect(sourceFiles.flatMap((file) => headerFault(file) ?? [])).toEqual([]);
});

test('no file is longer than 300 lines, tests and scripts too', () => {
  const code = written.filter((file) => /\.(ts|cjs|mjs|js)$/.test(file) || file.startsWith('.ci/'));
  const long = code
    .map((file) => ({ file, lines: linesOf(repoText(file)) }))
    .filter(({ lines }) => lines > longest);
  expect(long).toEqual([]);
});

test('half of the source files have 70 lines or fewer', () => {
  const sorted = sourceFiles.map(({ text }) => linesOf(text)).sort((a, b) => a - b);
  expect(sorted[Math.floor((sorted.length - 1) / 2)]).toBeLessThanOrEqual(usual);
});

/** In all written files but this one, which names the patterns. */
const linesWith = (pattern: RegExp): string[] =>
  written
    .filter((file) => file !== 'tests/project/style.test.ts')
    .flatMap((file) =>
      repoText(file)
        .split('\n')
        .flatMap((line, i) => (pattern.test(line) ? [`${file}:${i + 1}: ${line.trim().slice(0, 100)}`] : [])),
    );

test('nothing is left to do in a comment', () => {
  expect(linesWith(/\b(TODO|FIXME|XXX|HACK)\b/)).toEqual([]);
});

test('no path of a machine is written anywhere', () => {
  expect(linesWith(/(?<![\w.])\/(work|home|root|Users|mnt)\/\w|\b[A-Z]:\\\w/)).toEqual([]);
});

test('no test is skipped or run alone', () => {
  expect(linesWith(/\b(test|it|describe)\.(only|skip|todo)\b/)).toEqual([]);
});

/** Ours is found only in surroundings of support/start.ts, on a fixed day. */
const starters = [
  'tests/bench/backlog.ts', // no output is checked
  'tests/bench/main.ts',
  'tests/fuzz/main.ts', // itself
  'tests/project/package.test.ts', // npm
  'tests/project/scripts-doc.test.ts', // Python
  'tests/support/shells.ts', // ours only with surroundings
  'tests/support/start.ts',
  'tests/support/terminal.ts',
  'tests/unit/machine-faults.test.ts',
];

test('programs are started in few places, so that no output depends on today', () => {
  const found = written.filter(
    (file) => /^tests\/.*\.[cm]?[jt]s$/.test(file) && /['"](?:node:)?child_process['"]/.test(repoText(file)),
  );
  expect(found.sort(), 'start, launch or surroundings of tests/support/start.ts are on a fixed day').toEqual(
    starters,
  );
});

test('nothing of a merge is left', () => {
  expect(linesWith(/^\s*(<{7} \w|={7}$|>{7} \w|(> ){6}> \w)/)).toEqual([]);
});

test('documents speak American, as the program does', () => {
  const british = /\b(centre|colour|grey|metre|neighbour|licence|behaviour|favour|programme|per cent)/i;
  expect(linesWith(british).filter((line) => /^(docs\/(?!pictures)|examples\/|\w+\.md)/.test(line))).toEqual(
    [],
  );
});

interface Exported {
  readonly name: string;
  readonly node: ts.Node;
}

/** Also arrow functions in constants. */
function exportedFunctions({ ast }: SourceFile): Exported[] {
  return ast.statements.flatMap((node): Exported[] => {
    const modifiers = ts.canHaveModifiers(node) ? ts.getModifiers(node) : undefined;
    if (modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) !== true) return [];
    if (ts.isFunctionDeclaration(node)) return [{ name: node.name?.text ?? 'default', node }];
    if (!ts.isVariableStatement(node)) return [];
    return node.declarationList.declarations
      .filter(({ initializer }) => initializer !== undefined && ts.isArrowFunction(initializer))
      .map(({ name }) => ({ name: name.getText(), node }));
  });
}

/** The file's header does not count. */
const bare = (file: SourceFile): string[] =>
  exportedFunctions(file)
    .filter(({ node }) => !ts.getJSDocCommentsAndTags(node).some((doc) => ts.isJSDoc(doc) && doc.pos > 0))
    .map(({ name }) => `src/${file.name}: ${name}`);

test('every exported function says what it is for', () => {
  expect(sourceFiles.flatMap(bare)).toEqual([]);
});

test('a bare function and a bare file are found', () => {
  const text =
    '/** x */\n\nexport const f = (): number => 1;\n/** Said. */\nexport function g() {}\nexport function h() {}\n';
  const file = { name: 'x.ts', text, ast: ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2023, true) };
  expect(bare(file)).toEqual(['src/x.ts: f', 'src/x.ts: h']);
  expect(headerFault(file)).toContain('is no sentence');
});
