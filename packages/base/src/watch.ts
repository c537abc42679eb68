import { DrawcordError } from "./error.js";

/** Says whether a long piece of work is to stop. An `AbortSignal` is one. */
export interface Signal {
  /** Whether it is to stop. */
  readonly aborted: boolean;
}

/** How a long piece of work is watched, and stopped. */
export interface Watched {
  /** Stops the work; default: it goes on to its end. */
  readonly signal?: Signal | undefined;
  /**
   * Told how many steps of how many are done.
   * @param done steps done so far, from 0
   * @param of steps in all; the same at each call
   */
  readonly progress?: ((done: number, of: number) => void) | undefined;
}

/**
 * Why a piece of work has no result.
 * - `stopped`: the signal that it was given told it to stop before it was done
 */
export type StoppedErrorCode = "stopped";

/** That a piece of work was told to stop. */
export class StoppedError extends DrawcordError<StoppedErrorCode> {
  /** The name of the class. */
  override readonly name = "StoppedError";

  constructor() {
    super("stopped", "the work was told to stop");
  }
}

/**
 * Tells that a step is done.
 * @param watched who watches
 * @param done steps that are done
 * @param of steps in all
 * @throws {StoppedError} `stopped` when the work is to stop
 * @example step({ signal: { aborted: true } }, 1, 2) // throws stopped
 */
export function step({ progress, signal }: Watched, done: number, of: number): void {
  progress?.(done, of);
  if (signal?.aborted === true) throw new StoppedError();
}

/**
 * A signal that another thread gives: a worker that is at work hears no message, but it can look at memory that both share.
 * Give it by `Atomics.store(flag, 0, 1)`.
 * @param flag one number over a `SharedArrayBuffer`; 0 while the work is to go on
 * @example sharedSignal(new Int32Array(new SharedArrayBuffer(4))).aborted // false
 */
export function sharedSignal(flag: Int32Array): Signal {
  return {
    get aborted() {
      return Atomics.load(flag, 0) !== 0;
    },
  };
}
