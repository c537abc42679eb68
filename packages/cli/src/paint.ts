import { styleText } from "node:util";
import type { Io } from "./io.js";

/** How a piece of text is set apart on a terminal; elsewhere it stays as it is. */
export interface Paint {
  strong(text: string): string;
  faint(text: string): string;
  error(text: string): string;
  warning(text: string): string;
  note(text: string): string;
  /** The interlacements a finding speaks of. */
  marked(text: string): string;
}

/** Colour on a terminal only, and not when `NO_COLOR` is set (to anything) or the terminal is `dumb`. */
export function wantsColour(io: Pick<Io, "isTerminal" | "env">): boolean {
  return io.isTerminal && !io.env["NO_COLOR"] && io.env["TERM"] !== "dumb";
}

/** The paint for a terminal, or none. */
export function paintFor(io: Pick<Io, "isTerminal" | "env">): Paint {
  return paintIn(wantsColour(io));
}

/** Paint in colour, or one that leaves text as it is. */
export function paintIn(wanted: boolean): Paint {
  const as = (style: Parameters<typeof styleText>[0]) => (text: string) =>
    wanted && text !== "" ? styleText(style, text, { validateStream: false }) : text;
  return {
    strong: as("bold"),
    faint: as("dim"),
    error: as(["bold", "red"]),
    warning: as(["bold", "yellow"]),
    note: as("bold"),
    marked: as("inverse"),
  };
}
