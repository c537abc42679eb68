import process from "node:process";
import { main } from "./main.js";
import { processIo } from "./process-io.js";

const { io, settle } = processIo();

// Ctrl-C, or told to end: what is being printed comes to its end, nothing more is begun, and no file is left half-written.
// A second time ends the process where it stands.
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
  process.once(signal, async () => {
    await settle();
    process.exit(130);
  });
}

process.exitCode = await main(process.argv.slice(2), io);
