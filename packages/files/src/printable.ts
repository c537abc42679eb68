/** Characters that steer a terminal or hide text: control characters, and the marks that turn the direction of writing. */
export function isControl(code: number): boolean {
  if (code < 32) return code !== 9 && code !== 10 && code !== 13;
  return (
    (code >= 127 && code < 160) ||
    code === 0x2028 ||
    code === 0x2029 ||
    (code >= 0x202a && code <= 0x202e) ||
    (code >= 0x2066 && code <= 0x2069)
  );
}

/** Where the first control character of a text stands, from 0; -1 when there is none. Tabs and line ends are none. */
export function findControl(text: string): number {
  for (let i = 0; i < text.length; i++) if (isControl(text.charCodeAt(i))) return i;
  return -1;
}

/** The name of a character code as people write it. */
export function codeName(code: number): string {
  return `U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
}

/**
 * A piece of a file's text as it is safe to show on one line of a terminal: control characters and line ends by their
 * code, and cut after `most` characters.
 * @param text the text as it was read
 * @param most the most characters that are shown, 60 by default
 * @example printable("moth\u001b[2J") // "moth<U+001B>[2J"
 */
export function printable(text: string, most = 60): string {
  const cut = text.length > most ? `${text.slice(0, most)}…` : text;
  let out = "";
  for (const char of cut) {
    const code = char.charCodeAt(0);
    out += isControl(code) || code < 32 ? `<${codeName(code)}>` : char;
  }
  return out;
}
