import type { Io } from "./io.js";

const BAR = 24;
/** Milliseconds between two looks of the bar. */
const PAUSE = 80;
/** Milliseconds that a search in one file takes before it is shown. */
const PATIENCE = 2000;

/** How far a run has come, on one line of a terminal that is written over and over. */
export interface Progress {
  /** Shows how many files are done, unless it was shown just now. */
  show(done: number): Promise<void>;
  /** Shows how many edits of so many a search in the only file has tried, once it takes long; it runs on without a pause. */
  readonly search: (tried: number, of: number) => void;
  /** Takes the line away, before anything else is printed and at the end. */
  clear(): Promise<void>;
}

/** A bar on a terminal: of the files where there are several, of the search in it where there is one; elsewhere nothing. */
export function progressFor(io: Pick<Io, "stderr" | "stderrIsTerminal" | "env">, files: number): Progress {
  if (!io.stderrIsTerminal || io.env["TERM"] === "dumb") {
    return { show: async () => {}, search: () => {}, clear: async () => {} };
  }
  let shown = false;
  let last = files < 2 ? performance.now() + PATIENCE - PAUSE : Number.NEGATIVE_INFINITY;
  const isTime = () => {
    const now = performance.now();
    if (now - last < PAUSE) return false;
    last = now;
    shown = true;
    return true;
  };
  return {
    async show(done) {
      if (files > 1 && isTime()) await io.stderr.write(`\r${bar(done, files, "files")}`);
    },
    search(tried, of) {
      // Nothing waits for the terminal while a search runs on.
      if (files === 1 && isTime()) void io.stderr.write(`\r\u001b[K${bar(tried, of, "edits tried")}`);
    },
    async clear() {
      if (!shown) return;
      shown = false;
      await io.stderr.write("\r\u001b[K");
    },
  };
}

/** `[######..................] 250 of 1000 files`. */
export function bar(done: number, of: number, what: string): string {
  const full = Math.floor((BAR * Math.min(done, of)) / of);
  return `[${"#".repeat(full)}${".".repeat(BAR - full)}] ${done} of ${of} ${what}`;
}
