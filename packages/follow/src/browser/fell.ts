/** The rows about the one that is woven, as the weaver sees them: what is woven below, what comes above. */
import type { FollowPiece, FollowPlan } from "../plan/types.js";
import { drawn } from "./dom.js";

const ABOVE = 4;
const BELOW = 7;

/** The figure in units and rows, the row of now marked. */
export function fellPicture(
  { threading }: FollowPlan,
  { lifts, rows }: FollowPiece,
  row: number,
): SVGElement {
  const height = ABOVE + 1 + BELOW;
  const units = threading.length;
  const svg = drawn("svg", {
    viewBox: `0 0 ${units} ${height}`,
    preserveAspectRatio: "none",
    class: "fell",
    role: "img",
    "aria-label": `The figure about row ${row + 1}: ${lifts[rows[row] ?? -1]?.units ?? 0} of ${units} units are drawn in it`,
  });
  for (let line = 0; line < height; line++) {
    const at = row + ABOVE - line;
    const lift = lifts[rows[at] ?? -1];
    if (lift === undefined) continue;
    const when = at === row ? "now" : at < row ? "woven" : "to-come";
    svg.append(drawn("rect", { x: 0, y: line, width: units, height: 1, class: `ground ${when}` }));
    const held = new Set(lift.handles);
    const path = runsOf(threading.map((shafts) => shafts.some((shaft) => held.has(shaft))))
      .map(([start, end]) => `M${start} ${line}h${end - start}v1h${start - end}z`)
      .join("");
    svg.append(drawn("path", { d: path, class: `figure ${when}` }));
  }
  return svg;
}

/** The stretches of true, each with its start and one past its end. */
function runsOf(flags: readonly boolean[]): readonly (readonly [start: number, end: number])[] {
  const runs: [number, number][] = [];
  flags.forEach((flag, i) => {
    if (!flag) return;
    const last = runs.at(-1);
    if (last?.[1] === i) last[1] = i + 1;
    else runs.push([i, i + 1]);
  });
  return runs;
}
