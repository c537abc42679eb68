import process from "node:process";
import type { Writable } from "node:stream";
import { CliError } from "./error.js";
import type { Io, Output } from "./io.js";
import { whyUnwritable } from "./why-unwritable.js";

/** The terminal, pipes, folder and environment of this process. */
export function processIo(): { readonly io: Io; settle(): Promise<void> } {
  const stdout = outputTo(process.stdout);
  const stderr = outputTo(process.stderr);
  const io: Io = {
    stdout,
    stderr,
    get stdin() {
      return process.stdin;
    },
    cwd: process.cwd(),
    isTerminal: process.stdout.isTTY === true,
    stderrIsTerminal: process.stderr.isTTY === true,
    width: process.stdout.columns ?? 80,
    env: process.env,
  };
  return {
    io,
    /** Waits for what is being written; what is written from now on waits for ever. */
    async settle() {
      await Promise.all([stdout.settle(), stderr.settle()]);
    },
  };
}

/**
 * Writing to a stream. `drawcord ... | head` closes the pipe early: that is the reader's right and no fault, so from then
 * on what is written is dropped and nothing is said of it.
 */
export function outputTo(stream: Writable): Output & { settle(): Promise<void> } {
  let closed = false;
  let settled = false;
  let last = Promise.resolve();
  // A failed write is told by its callback; without a listener it would end the process as well.
  stream.on("error", () => {});
  const write = (chunk: string | Uint8Array) =>
    new Promise<void>((resolve, reject) => {
      if (settled) return;
      if (closed) return resolve();
      stream.write(chunk, (error: NodeJS.ErrnoException | null | undefined) => {
        if (!error) return resolve();
        closed = true;
        // Nobody is left to tell when the errors themselves cannot be written.
        if (error.code === "EPIPE" || stream === process.stderr) return resolve();
        const reason = whyUnwritable(error.code ?? error.message);
        reject(new CliError("unwritable", `the output cannot be written: ${reason}`));
      });
    });
  return {
    get closed() {
      return closed;
    },
    write(chunk) {
      const written = write(chunk);
      if (!settled) last = written.catch(() => {});
      return written;
    },
    settle() {
      settled = true;
      return last;
    },
  };
}
