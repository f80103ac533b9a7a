/** A golden case in one file: the command, then parts headed by "== NAME". */

/** In order: "stdin", "file order.yaml", "exit", "stdout", "stderr", "written sizes.csv". */
export type Parts = ReadonlyMap<string, string>;

export interface Case {
  readonly command: string;
  readonly parts: Parts;
}

const open = ' (no newline at the end)';

/** Lines that only look like heads get a backslash. */
const masked = (text: string): string => text.replace(/^(\\*== )/gm, '\\$1');
const unmasked = (text: string): string => text.replace(/^\\(\\*== )/gm, '$1');

export function writeCase({ command, parts }: Case): string {
  const texts = [...parts].map(([name, text]) =>
    text === '' || text.endsWith('\n')
      ? `== ${name}\n${masked(text)}`
      : `== ${name}${open}\n${masked(text)}\n`,
  );
  return `$ cinchwright ${command}\n${texts.join('')}`;
}

export function readCase(text: string): Case {
  const [head = '', ...rest] = text.split(/^== /m);
  const parts = rest.map((part): [string, string] => {
    const end = part.indexOf('\n');
    const [name, body] = [part.slice(0, end), unmasked(part.slice(end + 1))];
    return name.endsWith(open) ? [name.slice(0, -open.length), body.slice(0, -1)] : [name, body];
  });
  return { command: head.replace(/^\$ cinchwright /, '').trim(), parts: new Map(parts) };
}

const coded = ' (base64)';

/** Files that are no text are in base64. */
export const filesOf = ({ parts }: Case): [string, Buffer][] =>
  [...parts].flatMap(([part, text]): [string, Buffer][] => {
    if (!part.startsWith('file ')) return [];
    const name = part.slice('file '.length);
    return name.endsWith(coded)
      ? [[name.slice(0, -coded.length), Buffer.from(text, 'base64')]]
      : [[name, Buffer.from(text)]];
  });
