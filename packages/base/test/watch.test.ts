import { Worker } from "node:worker_threads";
import { describe, expect, it } from "vitest";
import { StoppedError, sharedSignal, step } from "../src/index.js";

describe("a piece of work that is watched", () => {
  it("tells each step, and stops where its signal says so", () => {
    const told: (readonly number[])[] = [];
    const controller = new AbortController();
    const watched = { signal: controller.signal, progress: (...of: number[]) => void told.push(of) };
    step(watched, 1, 3);
    controller.abort();
    expect(() => step(watched, 2, 3)).toThrow(StoppedError);
    expect(told).toEqual([
      [1, 3],
      [2, 3],
    ]);
    expect(() => step({}, 1, 1)).not.toThrow();
  });

  it("is stopped from another thread while it hears no message", async () => {
    const flag = new Int32Array(new SharedArrayBuffer(4));
    const stopper = `
      const { workerData } = require("node:worker_threads");
      setTimeout(() => Atomics.store(workerData, 0, 1), 20);`;
    const worker = new Worker(stopper, { eval: true, workerData: flag });
    await new Promise((resolve) => worker.once("online", resolve));
    const signal = sharedSignal(flag);
    const end = Date.now() + 5000;
    while (!signal.aborted && Date.now() < end);
    expect(signal.aborted).toBe(true);
    await worker.terminate();
  });
});
