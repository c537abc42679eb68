import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { type Checker, type CheckerSettings, failed, type Outcome } from "./checking/checker.js";
import { loadFormat } from "./formats/formats.js";
import type { InputFile } from "./inputs.js";

/** Files that make it worth while to start one more thread. */
const FILES_A_THREAD = 12;

/** What a worker is told: which file, and its bytes where it is none on the disk. */
export interface Order {
  readonly name: string;
  readonly bytes?: Uint8Array;
}

/** Checkers in threads of their own. */
export interface CheckerThreads {
  readonly checkers: readonly Checker[];
  /** Ends them, whatever they do. */
  end(): Promise<void>;
}

/** How many threads a run is worth; 1 is this thread alone. */
export function threadsFor(files: number, wanted: number | undefined): number {
  return Math.min(wanted ?? Math.min(availableParallelism(), Math.floor(files / FILES_A_THREAD)), files);
}

/** Starts checkers in `count` threads. */
export async function startThreads(count: number, settings: CheckerSettings): Promise<CheckerThreads> {
  const format = await loadFormat(settings.format);
  const workers = new Set<Worker>();

  let ended = false;

  function checkerInThread(): Checker {
    let worker: Worker | undefined;
    return async (input: InputFile): Promise<Outcome> => {
      try {
        const order: Order = input.onDisk
          ? { name: input.name }
          : { name: input.name, bytes: await input.read() };
        // Nobody waits for what is begun after the end.
        if (ended) return await new Promise(() => {});
        worker ??= start(() => {
          worker = undefined;
        });
        return await answer(worker, order);
      } catch (error) {
        return failed(input.name, error, format);
      }
    };
  }

  function start(onExit: () => void): Worker {
    const worker = new Worker(new URL("./worker.js", import.meta.url), { workerData: settings });
    workers.add(worker);
    worker.once("exit", () => {
      workers.delete(worker);
      onExit();
    });
    return worker;
  }

  return {
    checkers: Array.from({ length: count }, checkerInThread),
    async end() {
      ended = true;
      await Promise.all([...workers].map((worker) => worker.terminate()));
    },
  };
}

/** The answer to one order; a thread that ends without one (it has no memory left) costs only this file. */
function answer(worker: Worker, order: Order): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    let why = "";
    const onError = (error: Error) => {
      why = ` (${error.message})`;
    };
    const onMessage = (outcome: Outcome) => {
      worker.off("error", onError).off("exit", onExit);
      resolve(outcome);
    };
    const onExit = () => reject(new Error(`${order.name}: this file could not be checked${why}`));
    worker.once("message", onMessage).once("error", onError).once("exit", onExit);
    worker.postMessage(order);
  });
}
