/**
 * A sentence as a heading begins it.
 * @param text the sentence
 */
export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/**
 * A text as it may stand in HTML, and in a page whose double braces mean something.
 * @param text any text
 */
export function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll('"', "&quot;")
    .replaceAll("{{", "&#123;&#123;");
}
