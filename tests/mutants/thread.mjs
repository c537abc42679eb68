/** The thread that runs the tests: it reads them when they are first asked for, and anew where a change has left a mark. */
import process from "node:process";
import { pathToFileURL } from "node:url";
import { parentPort, workerData } from "node:worker_threads";

/** As Stryker counts how a test ended. */
const PASSED = 0;
const FAILED = 1;

/** What the changed sources ask, among the globals, which change is on. */
globalThis.__stryker__ ??= {};
const space = globalThis.__stryker__;
let tests;
let times = 0;

async function read() {
  const { collect } = await import(`${pathToFileURL(workerData.file).href}?${times++}`);
  tests = new Map((await collect()).map((test) => [test.id, test]));
}

async function runAll() {
  await read();
  const results = [];
  for (const { id, run } of tests.values()) {
    space.currentTestId = id;
    const start = process.cpuUsage();
    const fault = await faultOf(run);
    const { system, user } = process.cpuUsage(start);
    const timeSpentMs = (system + user) / 1000;
    space.currentTestId = undefined;
    const ended = fault === undefined ? { status: PASSED } : { status: FAILED, failureMessage: fault };
    results.push({ id, name: id, timeSpentMs, ...ended });
  }
  return { tests: results, mutantCoverage: space.mutantCoverage };
}

async function runChange({ id, isStatic, limits, names }) {
  if (isStatic) space.activeMutant = id;
  if (isStatic || tests === undefined) await read();
  const first = await runWith(id, names, limits);
  if (first.status === "survived" || isStatic) return first;
  // What this change or one before left behind in a module must not be taken for what it does.
  const [name] = first.killedBy;
  if ((await faultOf(tests.get(name).run)) === undefined) return first;
  await read();
  const again = await runWith(id, names, limits);
  await read();
  return again;
}

async function runWith(id, names, limits) {
  for (const [i, name] of names.entries()) {
    Atomics.store(workerData.at, 0, i);
    Object.assign(space, { activeMutant: id, hitCount: 0, hitLimit: limits[i] });
    const failureMessage = await faultOf(tests.get(name).run);
    const { hitCount } = space;
    Object.assign(space, { activeMutant: undefined, hitCount: undefined });
    const ended = { killedBy: [name], nrOfTests: i + 1 };
    if (hitCount > limits[i])
      return { status: "timeout", reason: `met more than ${limits[i]} times`, ...ended };
    if (failureMessage !== undefined) return { status: "killed", failureMessage, ...ended };
  }
  return { status: "survived", nrOfTests: names.length };
}

/** @param {() => unknown} run @returns {Promise<string | undefined>} */
async function faultOf(run) {
  try {
    await run();
    return undefined;
  } catch (error) {
    return String(error?.message ?? error) || "failed";
  }
}

parentPort.on("message", async (order) => {
  parentPort.postMessage(order.kind === "all" ? await runAll() : await runChange(order));
});
