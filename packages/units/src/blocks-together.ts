import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import { unite } from "./shaft-sets.js";

/** Rows by the name of their block, for what is said of them. */
export interface NamedLifts {
  /** What the block is called. */
  readonly name: string;
  /** The shafts drawn in each of its rows, row 1 first. */
  readonly lifts: readonly ShaftSet[];
}

/**
 * Blocks drawn in the same rows, each on shafts of its own, the shorter ones repeated to the length of the longest.
 * @param blocks one or more, each with its rows, row 1 first
 * @param cutShort whether the last repeat of a shorter one may be cut short
 * @throws {UnitsError} `unlike-lengths` when whole repeats do not come out even, `shared-shaft` when two draw the same shaft
 * @example blocksTogether([{ name: "moth", lifts: [[1], [2]] }, { name: "edge", lifts: [[9]] }]) // [[1, 9], [2, 9]]
 */
export function blocksTogether(blocks: readonly NamedLifts[], cutShort = false): readonly ShaftSet[] {
  const longest = blocks.reduce((most, block) => (block.lifts.length > most.lifts.length ? block : most));
  const rows = longest.lifts.length;
  const drawnBy = new Map<number, string>();
  for (const { name, lifts } of blocks) {
    if (rows % lifts.length !== 0 && !cutShort) {
      throw new UnitsError(
        "unlike-lengths",
        `"${longest.name}" has ${rows} rows and "${name}" ${lifts.length}; expected a length that whole repeats of "${name}" come to, or "cut-short"`,
        { longest: rows, shorter: lifts.length },
      );
    }
    for (const shaft of new Set([...new Set(lifts)].flat())) {
      const other = drawnBy.get(shaft);
      if (other !== undefined) {
        throw new UnitsError(
          "shared-shaft",
          `"${other}" and "${name}" both draw shaft ${shaft}; blocks together are drawn each on shafts of its own`,
          { shaft },
        );
      }
      drawnBy.set(shaft, name);
    }
  }
  return longest.lifts.map((_, row) =>
    blocks.reduce<ShaftSet>((drawn, { lifts }) => unite(drawn, lifts[row % lifts.length]!), []),
  );
}
