import { configureGlobal } from "fast-check";

/** Property tests repeat themselves: the same cases in every run, so that a failure can be met again. */
configureGlobal({ seed: 20_261_125, numRuns: 200 });
