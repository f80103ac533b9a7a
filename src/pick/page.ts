/** The page to click landmarks on: one file with photo, script and style, which fetches nothing. */
import { html } from '../pages/html.ts';
import type { Photo } from './block.ts';
import { pageCss } from './page-css.ts';
import { moves, rest, task, tools } from './page-parts.ts';

export interface PageParts {
  /** Base 64, and the type. */
  readonly base64: string;
  readonly type: 'image/jpeg' | 'image/png';
  /** Built from src/browser. */
  readonly script: string;
  /** SHA-256 in base 64, for the page's content policy. */
  readonly hash: (text: string) => string;
}

/** Names and bytes come from outside: all are escaped, and the policy runs only our script. */
export function pickPage(photo: Photo, { base64, type, script, hash }: PageParts): string {
  const policy = [
    "default-src 'none'",
    'img-src data: blob:',
    `style-src 'sha256-${hash(pageCss)}'`,
    `script-src 'sha256-${hash(script)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const name = html(photo.file);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>Landmarks on ${name}</title>
<style>${pageCss}</style>
</head>
<body>
<header>
<div class="strands"></div>
<h1>Landmarks on the photo</h1>
<p>${name}, ${String(photo.width)} x ${String(photo.height)} pixels. The photo stays on this machine: this page sends nothing.</p>
</header>
<noscript><p>This page needs JavaScript, which is turned off here. Its script is inside the page.</p></noscript>
<p id="fault" role="alert" hidden></p>
<main>
${task}
<section id="photo-part" aria-label="Photo">
<div id="stage" tabindex="0" role="application" aria-label="Photo to click on" aria-describedby="keys">
<img id="photo" alt="The photo to be measured" draggable="false" src="data:${type};base64,${base64}">
<svg id="marks" aria-hidden="true" focusable="false"></svg>
<canvas id="lens" width="288" height="288" aria-hidden="true" hidden></canvas>
</div>
${tools}
</section>
${moves}
${rest}
</main>
<script type="application/json" id="facts">${inScript(photo)}</script>
<script>${script}</script>
</body>
</html>
`;
}

/** JSON that cannot end a script element (HTML, restrictions for contents of script elements). */
const inScript = (value: unknown): string => JSON.stringify(value).replace(/[<>&\u2028\u2029]/g, unicode);
const unicode = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
