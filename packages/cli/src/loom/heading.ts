import { oneLine } from "../printable.js";

/** The first line of a list: the file and the title of its recipe. */
export function heading(file: string, title: string | undefined): string {
  return `${oneLine(file)}${title === undefined ? "" : `  ${oneLine(title)}`}`;
}
