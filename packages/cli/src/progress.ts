import type { Io } from "./io.js";

const BAR = 24;
/** Milliseconds between two looks of the bar. */
const PAUSE = 80;

/** How far a run has come, on one line of a terminal that is written over and over. */
export interface Progress {
  /** Shows how many files are done, unless it was shown just now. */
  show(done: number): Promise<void>;
  /** Takes the line away, before anything else is printed and at the end. */
  clear(): Promise<void>;
}

/** A bar on a terminal, where there is more than one file; elsewhere nothing. */
export function progressFor(io: Pick<Io, "stderr" | "stderrIsTerminal" | "env">, files: number): Progress {
  if (!io.stderrIsTerminal || files < 2 || io.env["TERM"] === "dumb") {
    return { show: async () => {}, clear: async () => {} };
  }
  let shown = false;
  let last = Number.NEGATIVE_INFINITY;
  return {
    async show(done) {
      const now = performance.now();
      if (now - last < PAUSE) return;
      last = now;
      shown = true;
      await io.stderr.write(`\r${bar(done, files)}`);
    },
    async clear() {
      if (!shown) return;
      shown = false;
      await io.stderr.write("\r\u001b[K");
    },
  };
}

/** `[######..................] 250 of 1000 files`. */
export function bar(done: number, files: number): string {
  const full = Math.floor((BAR * done) / files);
  return `[${"#".repeat(full)}${".".repeat(BAR - full)}] ${done} of ${files} files`;
}
