/**
 * Characters that a terminal obeys instead of showing, and those that turn the direction of a line: a title from a
 * stranger's file must not move the cursor or dress one thing up as another.
 */
const OBEYED = /[\p{Cc}\u2028-\u202e\u2066-\u2069]/gu;

/** One line of text with every such character written as its code, so that it shows and does nothing. */
export function printable(text: string): string {
  return text.replace(OBEYED, code);
}

/** A value as JSON; `JSON.stringify` leaves some of the characters above as they are, here they are codes as well. */
export function toJson(value: unknown, indent?: number): string {
  return JSON.stringify(value, undefined, indent).replace(OBEYED, (character) =>
    character === "\n" ? character : code(character),
  );
}

function code(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;
}
