import { printable } from "@drawcord/files";

/** Any text as one line that a terminal shows and does not obey: its control characters are written as their codes. */
export function oneLine(text: string): string {
  return printable(text, Number.POSITIVE_INFINITY);
}

/** A value as JSON. `JSON.stringify` leaves some characters that a terminal obeys as they are; here they are escaped. */
export function toJson(value: unknown, indent?: number): string {
  return JSON.stringify(value, undefined, indent).replace(
    /[\u007f-\u009f\u2028-\u202e\u2066-\u2069]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
