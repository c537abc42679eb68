/** The treadles as they hang, the one to tread marked, and the picks of the row one by one. */
import { type PickStep, treadleOf, weftOf } from "../place/step.js";
import type { FollowPiece, FollowPlan } from "../plan/types.js";
import { drawn, made } from "./dom.js";

const WIDTH = 34;

/** The treadles side by side as they hang. */
export function treadlesPicture({ hanging }: FollowPlan, treadle: number): SVGElement {
  const svg = drawn("svg", {
    viewBox: `0 0 ${hanging.length * WIDTH} 58`,
    class: "hanging",
    role: "img",
    "aria-label": `Treadles as they hang: ${hanging.join(", ")}${treadle === 0 ? "" : `; tread ${treadle}`}`,
  });
  hanging.forEach((number, i) => {
    const down = number === treadle;
    const group = drawn("g", { class: down ? "trodden" : "up", transform: `translate(${i * WIDTH} 0)` });
    group.append(drawn("rect", { x: 7, y: down ? 12 : 4, width: WIDTH - 14, height: down ? 44 : 38, rx: 4 }));
    const label = drawn("text", { x: WIDTH / 2, y: down ? 40 : 29, "text-anchor": "middle" });
    label.textContent = `${number}`;
    group.append(label);
    svg.append(group);
  });
  return svg;
}

/** Each pick of the row with its treadle, and its weft where there are several. */
export function picksOf(plan: FollowPlan, piece: FollowPiece, step: PickStep): readonly HTMLElement[] {
  const first = step.pickOfPiece - step.pickOfRow;
  return Array.from({ length: step.picksOfRow }, (_, i) => {
    const treadle = treadleOf(piece, first + i);
    const weft = weftOf(piece, first + i);
    const done = step.out ? i > step.pickOfRow : i < step.pickOfRow;
    const when = i === step.pickOfRow ? "now" : done ? "done" : "to-come";
    const letter = plan.wefts.length > 1 ? ` ${plan.wefts[weft]!.letter}` : "";
    const item = made("li", `${treadle === 0 ? "–" : treadle}${letter}`, when);
    if (when === "now") item.setAttribute("aria-current", "step");
    return item;
  });
}
