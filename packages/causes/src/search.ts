import type { Signal } from "@drawcord/base";

/** How a search is bounded and watched. */
export interface SearchBounds {
  /** For how many seconds it goes on, at most; default: until all is tried. */
  readonly seconds?: number;
  /** Stops the search; what was found until then is told. An `AbortSignal` is one. */
  readonly signal?: Signal;
  /**
   * Told how many edits of those at hand are tried: of one search after the other, each from 0.
   * @param tried edits tried so far, from 0
   * @param of edits at hand, in all
   */
  readonly progress?: (tried: number, of: number) => void;
}

/** Told how far a search has come, and says whether it is to stop. */
export type Watch = (tried: number, of: number) => boolean;

/** The watch over a search that begins now. */
export function watchOf({ progress, seconds, signal }: SearchBounds): Watch {
  const end = seconds === undefined ? Number.POSITIVE_INFINITY : Date.now() + 1000 * seconds;
  return (tried, of) => {
    progress?.(tried, of);
    return signal?.aborted === true || Date.now() > end;
  };
}
