/** What the examples of the docstrings may name besides exports: nothing. */
export const scope = {};
