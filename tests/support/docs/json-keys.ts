/** The JSON keys of each command on the examples. */
import { jsonPrinted } from '../json-printed.ts';

/** A list joins its entries' keys. */
type Keys = Map<string, { readonly under: Keys; isList: boolean }>;

/** `a` is a value, `a[]` a list, `a {b c}` has keys; a spec is written out once. */
export async function jsonKeys(): Promise<string> {
  const commands = new Map<string, Keys>();
  for (const [command, document] of await jsonPrinted()) {
    const keys = commands.get(command) ?? (new Map() as Keys);
    commands.set(command, keys);
    gather(keys, document);
    keys.delete('schema');
  }
  const told = new Map<string, string>();
  const lines = [...commands].map(([command, keys]) => {
    const text = keysText(keys, told);
    return `${command}: ${text.replaceAll(/style strands layers [^{}]*\{\.\.\.\}/g, '(a spec)')}`;
  });
  return ['```text', ...lines.flatMap(wrapped), '```'].join('\n');
}
function gather(keys: Keys, value: unknown): void {
  if (Array.isArray(value)) for (const each of value) gather(keys, each);
  else if (typeof value === 'object' && value !== null)
    for (const [name, inner] of Object.entries(value)) {
      const at = keys.get(name) ?? { under: new Map(), isList: false };
      at.isList ||= Array.isArray(inner);
      keys.set(name, at);
      // The same everywhere, so told once.
      if (name !== 'error') gather(at.under, inner);
    }
}

/** Known blocks with the same keys are not repeated. */
function keysText(keys: Keys, told: Map<string, string>): string {
  const one = ([name, { under, isList }]: [string, { readonly under: Keys; isList: boolean }]): string => {
    const head = `${name}${isList ? '[]' : ''}`;
    if (under.size === 0) return head;
    const inner = keysText(under, told);
    if (told.get(name) === inner && under.size > 2) return `${head} {...}`;
    told.set(name, inner);
    return `${head} {${inner}}`;
  };
  return [...keys].map(one).join(' ');
}

/** Later lines are indented. */
const wrapped = (line: string): string[] =>
  line.match(/(?=\S).{1,108}(?=\s|$)/g)?.map((part, i) => (i === 0 ? part : `  ${part}`)) ?? [];
