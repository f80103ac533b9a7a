/** HTML that says what the text says: nothing that came from a file can become a tag, an attribute or a script. */
import { visible } from './clean.ts';

const signs: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text for the inside of an element or of a quoted attribute (OWASP, cross-site scripting prevention: the five signs). */
export const html = (text: string): string => visible(text).replace(/[&<>"']/g, (sign) => signs[sign] ?? '');

/** An element around texts that are HTML already. */
export const element = (name: string, inside: string | readonly string[], kind = ''): string =>
  `<${name}${kind === '' ? '' : ` class="${kind}"`}>${typeof inside === 'string' ? inside : inside.join('')}</${name}>`;
