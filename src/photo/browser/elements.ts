/** Finds and makes the page's elements. */

/** Throws when the page has no such element. */
export function byId<E extends Element>(id: string, kind: abstract new () => E): E {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${id}`);
}

/** An SVG element. */
export function drawn(
  name: string,
  attributes: Readonly<Record<string, string | number>>,
  inside: readonly Node[] = [],
): SVGElement {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  element.append(...inside);
  return element;
}

/** An HTML element; its text is never read as markup. */
export function made(name: string, text = ''): HTMLElement {
  const element = document.createElement(name);
  element.textContent = text;
  return element;
}
