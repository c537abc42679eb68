/**
 * Runs the tests of one package for Stryker: they are read once, and what a change costs is then the tests that reach it and
 * not a new start of everything. They run in a thread, so that a change that makes them endless ends with it; their time is
 * that of the processor, which other work on the machine does not lengthen. `DRAWCORD_MUTANTS` names the package.
 */
import process from "node:process";
import { Worker } from "node:worker_threads";
import { bundleTests } from "./bundle.mjs";

/** How often a change may be met in a test, for each time that the sources as they are met it. */
const TIMES = 20;
/** What a test may take with a change, in ms of the processor's time: this, and so much for each ms that it takes without. */
const LEAST_TIME = 2000;
const EACH_TIME = 5;

class PackageRunner {
  #bundle;
  #thread;
  /** Which of the tests in hand is running. */
  #at = new Int32Array(new SharedArrayBuffer(4));
  /** How long each test takes, in ms, and how often it meets each change. */
  #lengths = new Map();
  #met = {};

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.#bundle = await bundleTests(process.env.DRAWCORD_MUTANTS);
  }

  async dryRun() {
    const { tests, mutantCoverage } = await this.#ask({ kind: "all" }, []);
    for (const { id, timeSpentMs } of tests) this.#lengths.set(id, timeSpentMs);
    this.#met = mutantCoverage?.perTest ?? {};
    return { status: "complete", tests, mutantCoverage };
  }

  /** A change is noticed by a test that fails with it and passes without it, in the same thread. */
  async mutantRun({ activeMutant: { id }, mutantActivation, testFilter }) {
    if (this.#lengths.size === 0) await this.dryRun();
    if (mutantActivation === "static") this.#end();
    // The short ones first: most changes are noticed by many tests.
    const names = (testFilter ?? [...this.#lengths.keys()]).toSorted(
      (a, b) => this.#lengths.get(a) - this.#lengths.get(b),
    );
    const limits = names.map((name) => 10_000 + TIMES * (this.#met[name]?.[id] ?? 0));
    const longest = names.map((name) => LEAST_TIME + EACH_TIME * this.#lengths.get(name));
    const order = { kind: "change", id, names, limits, isStatic: mutantActivation === "static" };
    const result = await this.#ask(order, longest);
    if (mutantActivation === "static") this.#end();
    return result;
  }

  dispose() {
    this.#end();
    this.#bundle?.remove();
  }

  #end() {
    this.#thread?.terminate();
    this.#thread = undefined;
  }

  /**
   * What the thread answers; where a test takes too long, or all memory, it is ended and that is the answer.
   * @param longest what each of the tests may take, in ms
   */
  #ask(order, longest) {
    this.#thread ??= new Worker(new URL("thread.mjs", import.meta.url), {
      workerData: { file: this.#bundle.file, at: this.#at },
      resourceLimits: { maxOldGenerationSizeMb: 1024 },
      stdout: true,
    });
    const thread = this.#thread;
    Atomics.store(this.#at, 0, 0);
    let at = 0;
    let start = process.cpuUsage();
    return new Promise((resolve, reject) => {
      const done = (answer) => {
        clearInterval(watch);
        for (const event of ["message", "error"]) thread.removeAllListeners(event);
        resolve(answer);
      };
      const watch = setInterval(() => {
        const now = Atomics.load(this.#at, 0);
        if (now !== at) [at, start] = [now, process.cpuUsage()];
        const { user, system } = process.cpuUsage(start);
        if (!((user + system) / 1000 > longest[at])) return;
        this.#end();
        done({
          status: "timeout",
          reason: `more than ${Math.round(longest[at])} ms of the processor's time`,
        });
      }, 100);
      thread.once("message", done);
      thread.once("error", (error) => {
        this.#end();
        if (order.kind === "all") reject(error);
        done({ status: "timeout", reason: error.message });
      });
      thread.postMessage(order);
    });
  }
}

export const strykerPlugins = [{ kind: "TestRunner", name: "package", injectableClass: PackageRunner }];
