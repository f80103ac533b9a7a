/** Follows a recipe in its own folder, and can update its document. */
import fs from 'node:fs';
import { playground } from './console.ts';
import { save, typed, type Recipe } from './recipes.ts';

/** Editors strip trailing blanks. */
export const tidy = (text: string): string => text.replace(/[ \t\r]+$/gm, '').trimEnd();

export interface Shown {
  readonly lines: readonly [number, number];
  readonly output: string;
}

export function follow({ steps }: Recipe): { shown: Shown[]; got: string[][]; wanted: string[][] } {
  const cwd = playground();
  const shown: Shown[] = [];
  const got: string[][] = [];
  const wanted: string[][] = [];
  try {
    for (const step of steps) {
      if (step.kind === 'file') {
        save(step, cwd);
        continue;
      }
      const output = tidy(typed(step.command, cwd));
      shown.push({ lines: step.lines, output });
      got.push([step.command, output]);
      wanted.push([step.command, tidy(step.output)]);
    }
  } finally {
    fs.rmSync(cwd, { recursive: true });
  }
  return { shown, got, wanted };
}

/** From the end, so line numbers hold. */
export function rewrite(file: string, shown: readonly Shown[]): void {
  const lines = fs.readFileSync(file, 'utf8').split('\n');
  for (const {
    lines: [from, to],
    output,
  } of [...shown].sort((a, b) => b.lines[0] - a.lines[0]))
    lines.splice(from, to - from, ...(output === '' ? [] : output.split('\n')));
  fs.writeFileSync(file, lines.join('\n'));
}
