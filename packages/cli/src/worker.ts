/** The other end of `threads.ts`: checks the files that it is told to, one at a time. */
import { parentPort, workerData } from "node:worker_threads";
import { type CheckerSettings, checkerFor } from "./checking/checker.js";
import { fileInput } from "./inputs.js";
import type { Order } from "./threads.js";

const settings = workerData as CheckerSettings;
const checker = checkerFor(settings);

parentPort?.on("message", async ({ bytes, name }: Order) => {
  const input = bytes === undefined ? fileInput(name, settings.cwd) : { name, read: async () => bytes };
  parentPort?.postMessage(await (await checker)(input));
});
