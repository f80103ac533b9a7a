/** The source files and their imports, as the compiler reads them. */
import fs from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { repo } from './run-cli.ts';

export interface SourceFile {
  /** From src/, forward slashes. */
  readonly name: string;
  readonly text: string;
  readonly ast: ts.SourceFile;
}

export interface Import {
  readonly from: string;
  /** A package as written; a file from src/. */
  readonly to: string;
  readonly isPackage: boolean;
  /** Gone when the program runs. */
  readonly typeOnly: boolean;
  readonly names: readonly string[];
}

/** Relative to the repository, sorted. */
export function filesBelow(dir: string): string[] {
  return fs
    .readdirSync(path.join(repo, dir), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(repo, path.join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}

export const sourceFiles: readonly SourceFile[] = filesBelow('src')
  .filter((file) => file.endsWith('.ts'))
  .map((file) => {
    const text = fs.readFileSync(path.join(repo, file), 'utf8');
    const ast = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, true);
    return { name: file.slice('src/'.length), text, ast };
  });

export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => {
    walk(child, visit);
  });
}

/** Static, re-exported, dynamic, and `import('...')` in types. */
export function importsOf({ name, ast }: SourceFile): Import[] {
  const found: Import[] = [];
  const add = (node: ts.Node | undefined, typeOnly: boolean, names: readonly string[] = []): void => {
    if (node === undefined || !ts.isStringLiteralLike(node)) return;
    const isPackage = !node.text.startsWith('.');
    const to = isPackage ? node.text : path.posix.join(path.posix.dirname(name), node.text);
    found.push({ from: name, to, isPackage, typeOnly, names });
  };
  walk(ast, (node) => {
    if (ts.isImportDeclaration(node)) {
      add(node.moduleSpecifier, isTypeClause(node.importClause), namesOf(node.importClause));
    } else if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly, ['re-export']);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      add(node.arguments[0], false, ['dynamic']);
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      add(node.argument.literal, true);
    }
  });
  return found;
}

const isTypeClause = (clause: ts.ImportClause | undefined): boolean =>
  clause?.phaseModifier === ts.SyntaxKind.TypeKeyword;

/** Without names marked `type`. */
function namesOf(clause: ts.ImportClause | undefined): string[] {
  if (clause === undefined) return ['side effect'];
  const bindings = clause.namedBindings;
  const named =
    bindings === undefined
      ? []
      : ts.isNamespaceImport(bindings)
        ? ['*']
        : bindings.elements
            .filter((element) => !element.isTypeOnly)
            .map((element) => (element.propertyName ?? element.name).text);
  return clause.name === undefined ? named : ['default', ...named];
}
