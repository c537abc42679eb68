/** The picture of the handles: each a cord with its knob, drawn ones low. */
import type { ShaftSet } from "@drawcord/ground";
import type { PickStep } from "../place/step.js";
import { handleRuns } from "../place/words.js";
import { drawn, made } from "./dom.js";

/** What a handle does in a step. */
type Does = "rest" | "hold" | "draw" | "let-go";

const WIDTH = 24;
const HEIGHT = 62;

/** The handles in tens, as many tens beside each other as there is room for. */
export function handlesPicture(step: PickStep, handles: number, first: "left" | "right"): HTMLElement {
  const does = doesOf(step);
  const tens = Array.from({ length: Math.ceil(handles / 10) }, (_, i) => {
    const from = i * 10 + 1;
    const numbers = Array.from({ length: Math.min(10, handles - from + 1) }, (_, k) => from + k);
    return tenOf(first === "left" ? numbers : numbers.toReversed(), does, handles <= 40);
  });
  const picture = made("div", tens, `tens ${first}${handles > 40 ? " many" : ""}`);
  picture.setAttribute("role", "img");
  picture.setAttribute("aria-label", `Handles held in this row: ${listed(step.lift.handles)}`);
  return picture;
}

function listed(handles: ShaftSet): string {
  return handles.length === 0 ? "none" : handleRuns(handles).join(", ");
}

function doesOf({ lift, draw, letGo }: PickStep): (handle: number) => Does {
  const held = new Set(lift.handles);
  const drawing = new Set(draw);
  const letting = new Set(letGo);
  return (handle) => {
    if (drawing.has(handle)) return "draw";
    if (letting.has(handle)) return "let-go";
    return held.has(handle) ? "hold" : "rest";
  };
}

function tenOf(numbers: readonly number[], does: (handle: number) => Does, named: boolean): SVGElement {
  const svg = drawn("svg", {
    viewBox: `0 0 ${numbers.length * WIDTH} ${HEIGHT}`,
    class: "ten",
    "aria-hidden": "true",
    focusable: "false",
  });
  numbers.forEach((number, i) => {
    svg.append(handleOf(number, does(number), i * WIDTH, named || number % 10 === 0 || number % 10 === 1));
  });
  return svg;
}

function handleOf(number: number, does: Does, x: number, named: boolean): SVGElement {
  const group = drawn("g", { class: does, transform: `translate(${x} 0)` });
  const low = does === "draw" || does === "hold";
  const y = low ? 24 : 8;
  const middle = WIDTH / 2;
  group.append(drawn("path", { class: "cord", d: `M${middle} 0V${y}` }));
  group.append(drawn("rect", { class: "knob", x: middle - 7, y, width: 14, height: 13, rx: 4 }));
  // An arrow says which way the handle goes, for whom colour says nothing.
  if (does === "draw")
    group.append(drawn("path", { class: "way", d: `M${middle - 5} ${y + 15.5}h10l-5 6z` }));
  if (does === "let-go")
    group.append(drawn("path", { class: "way", d: `M${middle - 5} ${y + 23}h10l-5 -6z` }));
  if (named) {
    const label = drawn("text", { x: middle, y: HEIGHT - 2, "text-anchor": "middle" });
    label.textContent = `${number}`;
    group.append(label);
  }
  return group;
}
