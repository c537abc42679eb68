import { plain } from "./weaves.js";

/** What the examples of the docstrings may name besides exports. */
export const scope = { plain };
