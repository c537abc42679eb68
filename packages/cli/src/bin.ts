import process from "node:process";
import { main } from "./main.js";
import { processIo } from "./process-io.js";

const { io, settle } = processIo();

// Ctrl-C: what is being written comes to its end, and nothing more is begun. A second one ends the process where it stands.
process.once("SIGINT", async () => {
  await settle();
  process.exit(130);
});

process.exitCode = await main(process.argv.slice(2), io);
