/** HTML that says what the text says: nothing that came from a file can become a tag, an attribute or a script. */
import { visible } from '../units/clean.ts';

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

export interface HtmlPage {
  readonly title: string;
  /** The page's own style, a text of ours. */
  readonly css: string;
  /** HTML already. */
  readonly body: string;
  /** Class of the body. */
  readonly kind?: string;
  /** Pictures stand in the page as data. */
  readonly pictures?: true;
}

/** A whole file that needs nothing else and may fetch nothing; `title` is text. */
export function htmlPage({ title, css, body, kind, pictures }: HtmlPage): string {
  const images = pictures === true ? ' img-src data:;' : '';
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none';${images} style-src 'unsafe-inline'">
<meta name="generator" content="cinchwright">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${html(title)}</title>
<style>${css}
</style>
</head>
<body${kind === undefined ? '' : ` class="${kind}"`}>
${body}
</body>
</html>
`;
}

/** A list of texts without marks. */
export const plainList = (texts: readonly string[]): string =>
  element(
    'ul',
    texts.map((text) => element('li', html(text))),
    'plain',
  );
