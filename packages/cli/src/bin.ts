import process from "node:process";
import { main } from "./main.js";
import { processIo } from "./process-io.js";

process.exitCode = await main(process.argv.slice(2), processIo());
