/** HTML in which text can't become a tag, attribute or script. */
import { visible } from '../units/clean.ts';

const signs: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escapes five signs (OWASP, cross-site scripting prevention), for quoted attributes too. */
export const html = (text: string): string => visible(text).replace(/[&<>"']/g, (sign) => signs[sign] ?? '');

/** `inside` is already HTML. */
export const element = (name: string, inside: string | readonly string[], kind = ''): string =>
  `<${name}${kind === '' ? '' : ` class="${kind}"`}>${typeof inside === 'string' ? inside : inside.join('')}</${name}>`;

export interface HtmlPage {
  readonly title: string;
  readonly css: string;
  /** Already HTML. */
  readonly body: string;
  readonly kind?: string;
  /** Embedded as data. */
  readonly pictures?: true;
}

/** Loads nothing; `title` is plain text. */
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

/** Without bullets. */
export const plainList = (texts: readonly string[]): string =>
  element(
    'ul',
    texts.map((text) => element('li', html(text))),
    'plain',
  );
