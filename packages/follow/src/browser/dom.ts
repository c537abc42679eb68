/** A few words for the page's own parts. */

/** The part of the page with an id. */
export function byId<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no part "${id}"`);
  return found as Kind;
}

/** A new part of the page, with its text or its parts inside. */
export function made<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  inside: string | readonly Node[] = "",
  className = "",
): HTMLElementTagNameMap[Name] {
  const part = document.createElement(name);
  if (typeof inside === "string") part.textContent = inside;
  else part.append(...inside);
  if (className !== "") part.className = className;
  return part;
}

/** A new part of a drawing. */
export function drawn(name: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const part = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) part.setAttribute(key, `${value}`);
  return part;
}

/** Sets a text only where it is another, so that nothing is read out twice. */
export function say(id: string, text: string): void {
  const part = byId(id);
  if (part.textContent !== text) part.textContent = text;
  part.hidden = text === "";
}
