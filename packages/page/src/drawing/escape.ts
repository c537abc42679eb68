/**
 * What XML 1.0 cannot hold at all (control characters, halves of surrogate pairs), and the marks that turn the direction of
 * the text around them.
 */
const UNFIT = /[^\P{Cc}\t\n\r]|[\p{Cs}\ufffe\uffff\u2028-\u202e\u2066-\u2069]/gu;

/** Text without the characters that no page can show: each becomes U+FFFD. */
export function showable(text: string): string {
  return text.replace(UNFIT, "\ufffd");
}

/**
 * Text made safe for XML and HTML, within an element or a quoted attribute.
 * @example escapeText("<Moth & \"lantern\">") // "&lt;Moth &amp; &quot;lantern&quot;&gt;"
 */
export function escapeText(text: string): string {
  return showable(text)
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}
