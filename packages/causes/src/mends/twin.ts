/** The counterpart of each unit (or row) in a symmetry, as a place from 1: `by` less the place, or `by` more. */
export interface Twin {
  readonly of: "units" | "rows";
  readonly symmetry: "mirror" | "repeat";
  readonly by: number;
}
