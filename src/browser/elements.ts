/** Elements of the page, by the name the page gives them. */

/** An element of the page, of the kind that is meant. Throws when the page is not the one this script was made for. */
export function byId<E extends Element>(id: string, kind: abstract new () => E): E {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${id}`);
}

/** Everything that is drawn over the photo is SVG. */
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

/** An element with text in it: text is never read as markup. */
export function made(name: string, text = ''): HTMLElement {
  const element = document.createElement(name);
  element.textContent = text;
  return element;
}
