/** npm run words: lists every phrase people can read. */
import fs from 'node:fs';
import path from 'node:path';
import ts from 'typescript';

const rooms = [
  'units',
  'yaml',
  'order',
  'horse',
  'rules',
  'advice',
  'work',
  'words',
  'views',
  'draw',
  'pick',
  'cli',
];

/** Keys, paths and ids have no blank between words. */
const isPhrase = (text: string): boolean => /[a-z]{2,} [a-z]/i.test(text);

function phrasesOf(file: string): string[] {
  const source = ts.createSourceFile(file, fs.readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    const text =
      ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)
        ? node.text
        : ts.isTemplateExpression(node)
          ? node.getText(source).slice(1, -1)
          : '';
    if (isPhrase(text)) found.push(text.replace(/\s+/g, ' '));
    if (!ts.isTemplateExpression(node)) ts.forEachChild(node, look);
    else
      node.templateSpans.forEach(({ expression }) => {
        look(expression);
      });
  };
  look(source);
  return found;
}

for (const room of rooms)
  for (const name of fs.readdirSync(path.join('src', room), { recursive: true, encoding: 'utf8' }).sort()) {
    if (!name.endsWith('.ts')) continue;
    const file = path.join('src', room, name);
    const found = phrasesOf(file);
    if (found.length > 0) process.stdout.write(`${file}\n${found.map((text) => `  ${text}\n`).join('')}`);
  }
