/** Recipes of docs/scripts.md: files to save and commands for a real shell. */
import fs from 'node:fs';
import path from 'node:path';
import { said } from './shells.ts';
import { surroundings } from './start.ts';

export interface FileStep {
  readonly kind: 'file';
  readonly name: string;
  readonly text: string;
}
export interface CommandStep {
  readonly kind: 'command';
  readonly command: string;
  readonly output: string;
  /** In the document: from, and up to but without. */
  readonly lines: readonly [from: number, to: number];
}
export interface Recipe {
  readonly title: string;
  readonly steps: readonly (FileStep | CommandStep)[];
}

/** A machine may lack these. */
const tools = ['jq', 'make', 'awk', 'envsubst', 'python3'];

/** A block is a file when the text before it ends with "... `name`:", or names it in words. */
export function recipesIn(markdown: string): Recipe[] {
  const lines = markdown.split('\n');
  const recipes: { title: string; steps: (FileStep | CommandStep)[] }[] = [];
  let prose = '';
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i]!;
    if (line.startsWith('## ')) recipes.push({ title: line.slice(3), steps: [] });
    const fence = /^```(\S*)/.exec(line);
    if (fence === null) {
      prose = line === '' ? prose : `${lines[i - 1] === '' ? '' : prose} ${line}`;
      continue;
    }
    const end = lines.indexOf('```', i + 1);
    const name = /[Ss]ave .*?as `([^`]+)`|this as `([^`]+)`/.exec(prose);
    const steps = recipes.at(-1)?.steps;
    if (fence[1] === 'shell-session') steps?.push(...commandsIn(lines, i + 1, end));
    else if (name !== null)
      steps?.push({
        kind: 'file',
        name: (name[1] ?? name[2])!,
        text: `${lines.slice(i + 1, end).join('\n')}\n`,
      });
    i = end;
    prose = '';
  }
  return recipes.filter(({ steps }) => steps.length > 0);
}

function commandsIn(lines: readonly string[], from: number, to: number): CommandStep[] {
  const starts = lines.flatMap((line, i) => (i >= from && i < to && line.startsWith('$ ') ? [i] : []));
  return starts.map((start, n) => {
    const end = starts[n + 1] ?? to;
    const output = lines.slice(start + 1, end).join('\n');
    return { kind: 'command', command: lines[start]!.slice(2), output, lines: [start + 1, end] };
  });
}

const textOf = (step: FileStep | CommandStep): string => (step.kind === 'file' ? step.text : step.command);

export function toolsOf({ steps }: Recipe): string[] {
  const text = steps.map(textOf).join('\n');
  return tools.filter((tool) => new RegExp(`(?:^|[|;&{(])\\s*${tool} `, 'm').test(text));
}

export const commandsOf = ({ steps }: Recipe): string[] => [
  ...new Set(
    steps.flatMap((step) => [...textOf(step).matchAll(/\bcinchwright ([a-z]+)/g)].map(([, name]) => name!)),
  ),
];

/** Both streams, from the built program. */
export function typed(command: string, cwd: string): string {
  return said('sh', ['-c', `exec 2>&1; ${command}`], { cwd, env: surroundings() }).stdout;
}

export function save({ name, text }: FileStep, cwd: string): void {
  fs.mkdirSync(path.dirname(path.join(cwd, name)), { recursive: true });
  fs.writeFileSync(path.join(cwd, name), text);
}
