import process from "node:process";
import { CliError } from "./error.js";
import type { Io, Output } from "./io.js";

/** The terminal, pipes, folder and environment of this process. */
export function processIo(): Io {
  return {
    stdout: output(process.stdout),
    stderr: output(process.stderr),
    get stdin() {
      return process.stdin;
    },
    cwd: process.cwd(),
    isTerminal: process.stdout.isTTY === true,
    width: process.stdout.columns ?? 80,
    env: process.env,
  };
}

/** `drawcord ... | head` closes the pipe early: that is the reader's right and no fault, so nothing is said of it. */
function output(stream: NodeJS.WriteStream): Output {
  let closed = false;
  // A failed write is told by its callback; without a listener it would end the process as well.
  stream.on("error", () => {});
  return {
    write: (chunk) =>
      new Promise((resolve, reject) => {
        if (closed) return resolve();
        stream.write(chunk, (error: NodeJS.ErrnoException | null | undefined) => {
          if (!error) return resolve();
          closed = true;
          if (error.code === "EPIPE" || stream === process.stderr) return resolve();
          reject(
            new CliError("unwritable", `the output could not be written (${error.code ?? error.message})`),
          );
        });
      }),
  };
}
