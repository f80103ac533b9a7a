/** Rooms import downward only, packages stay in their rooms, and only cli touches the machine. */
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { importsOf, sourceFiles, walk, type Import, type SourceFile } from '../support/source-tree.ts';
import { rooms, type Room } from './rooms.ts';

const names = Object.keys(rooms);

/** The file itself when it is in no room. */
const roomOf = (name: string): string =>
  names.find((room) => name === `${room}.ts` || name.startsWith(`${room}/`)) ?? name;

describe('the table itself', () => {
  test('every room of src/ stands in it', () => {
    const missing = [...new Set(sourceFiles.map(({ name }) => roomOf(name)))].filter(
      (room) => !names.includes(room),
    );
    expect(missing, 'say in tests/project/rooms.ts what the room may import, and why').toEqual([]);
  });

  test.each(Object.entries(rooms))(
    '%s looks only at rooms above it, so nothing can go in circles',
    (name, room) => {
      const above = names.slice(0, names.indexOf(name));
      expect([...room.uses, ...(room.types ?? [])].filter((other) => !above.includes(other))).toEqual([]);
    },
  );

  test('every function that may be called past a wall is called', () => {
    const all = sourceFiles.flatMap(importsOf);
    const idle = Object.entries(rooms).flatMap(([name, { calls = {} }]) =>
      Object.entries(calls).flatMap(([file, functions]) =>
        functions.filter(
          (called) =>
            !all.some(
              (entry) => roomOf(entry.from) === name && entry.to === file && entry.names.includes(called),
            ),
        ),
      ),
    );
    expect(idle).toEqual([]);
  });
});

function fault(entry: Import, room: Room): string | undefined {
  const wrong = entry.isPackage ? packageFault(entry, room) : roomFault(entry, room);
  if (wrong === undefined) return undefined;
  return `src/${entry.from} imports ${entry.isPackage ? entry.to : `src/${entry.to}`}: ${wrong}. ${room.why}`;
}

function packageFault({ to }: Import, { packages = [] }: Room): string | undefined {
  const base = to.startsWith('node:') ? 'node:*' : packageOf(to);
  return packages.includes(base) ? undefined : 'that package has no place in this room';
}

function roomFault(entry: Import, { uses, types = [], calls = {} }: Room): string | undefined {
  if (entry.to.startsWith('../')) return 'that is outside src/';
  const target = roomOf(entry.to);
  if (target === roomOf(entry.from) || uses.includes(target)) return undefined;
  if (!types.includes(target)) return 'it may not know that room';
  if (entry.typeOnly) return undefined;
  const called = calls[entry.to] ?? [];
  const stray = entry.names.filter((name) => !called.includes(name));
  // `import { type A }` still loads the file: it must be `import type`.
  if (stray.length === 0 && entry.names.length > 0) return undefined;
  return `it may know only the types there, this is code (${stray.join(', ')})`;
}

const packageOf = (name: string): string =>
  name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/');

test.each(names)('%s imports what its line of the table allows', (name) => {
  const room = rooms[name]!;
  const own = sourceFiles.filter((file) => roomOf(file.name) === name);
  expect(own.flatMap(importsOf).flatMap((entry) => fault(entry, room) ?? [])).toEqual([]);
});

describe('the walls hold', () => {
  const entry = (to: string, more: Partial<Import> = {}): Import => ({
    from: 'rules/stock.ts',
    to,
    isPackage: false,
    typeOnly: false,
    names: ['x'],
    ...more,
  });
  test.each([
    ['a room it may not know', entry('cli/io.ts')],
    ['code where only types may go', entry('horse/facts.ts')],
    ['a package', entry('zod/mini', { isPackage: true })],
    ['a module of Node', entry('node:fs', { isPackage: true })],
    ['something outside src/', entry('../tests/support/within.ts')],
    ['types without "import type"', entry('horse/facts.ts', { names: [] })],
  ])('%s is found, and the message says why', (_, wrong) => {
    expect(fault(wrong, rooms['rules']!)).toMatch(/^src\/rules\/stock\.ts imports .+: .+/);
  });
  test('types may go where the table says so', () => {
    expect(fault(entry('horse/facts.ts', { typeOnly: true, names: [] }), rooms['rules']!)).toBeUndefined();
  });
});

const machine = new Map(
  Object.entries({
    Date: 'the clock',
    performance: 'the clock',
    process: 'the process',
    console: 'the screen',
    fetch: 'the network',
    setTimeout: 'the clock',
    setInterval: 'the clock',
    require: 'the module loader',
    globalThis: 'everything',
  }),
);
const methods = new Map(
  Object.entries({
    'Math.random': 'chance without a seed',
    localeCompare: "the machine's language",
    toLocaleString: "the machine's language",
    toLocaleUpperCase: "the machine's language",
    toLocaleLowerCase: "the machine's language",
  }),
);

function touches({ name, ast }: SourceFile): string[] {
  const found: string[] = [];
  const add = (node: ts.Node, what: string, why: string): void => {
    const line = ast.getLineAndCharacterOfPosition(node.getStart()).line + 1;
    found.push(`src/${name}:${line} uses ${what}, ${why}: take it as a value; only cli touches the machine`);
  };
  walk(ast, (node) => {
    if (ts.isPropertyAccessExpression(node)) {
      const full = `${node.expression.getText()}.${node.name.text}`;
      const why = methods.get(full) ?? methods.get(node.name.text);
      if (why !== undefined) add(node, full, why);
    }
    if (!ts.isIdentifier(node)) return;
    const why = machine.get(node.text);
    if (why === undefined) return;
    const { parent } = node;
    if (ts.isPropertyAccessExpression(parent) && parent.name === node) return;
    if (ts.isPropertyAssignment(parent) && parent.name === node) return;
    add(node, node.text, why);
  });
  return found;
}

test('no clock, no chance without a seed, no process outside cli', () => {
  expect(sourceFiles.filter(({ name }) => roomOf(name) !== 'cli').flatMap(touches)).toEqual([]);
});

test('such uses are found', () => {
  const text =
    'const a = Date.now() + Math.random(); const b = { Date: 1 }.Date; ["b"].sort((x, y) => x.localeCompare(y));';
  const ast = ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2023, true);
  expect(touches({ name: 'x.ts', text, ast })).toHaveLength(3);
});

test('no source reaches for the network, another program, or code made of text', () => {
  const reaching =
    /['"](?:node:)?(?:https?|http2|net|dns|tls|dgram|vm|repl|child_process|cluster|inspector)(?:\/\w+)?['"]|\b(?:fetch|eval|WebSocket|XMLHttpRequest|EventSource)\(|new Function\(/;
  const found = sourceFiles.filter(({ text: code }) => reaching.test(code)).map(({ name }) => name);
  expect(found).toEqual([]);
});
