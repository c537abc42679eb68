import { toText } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";
import { drawdownOf } from "../shaft-draft/drawdown.js";
import type { Example } from "./rule.js";

/**
 * An example as a picture in characters, the first pick or row at the bottom: the drawdown (`#` an end over the pick), or
 * where the ground moves every shaft on every pick, so that only the plan matters, the units' shafts over the rows of
 * drawn (`#`) and undrawn units, each row with the shafts it draws.
 * @example examplePicture({ title: "plain weave", cloth: "#.\n.#" }) // "#.\n.#"
 */
export function examplePicture({ cloth }: Example): string {
  if (typeof cloth === "string") return cloth;
  if ("shafts" in cloth) return toText(drawdownOf(cloth));
  return planOnly(cloth) ? planPicture(cloth) : toText(expand(cloth).drawdown);
}

function planOnly({ ground: { shafts, steps } }: UnitDraft): boolean {
  return steps.every(({ raise, sink }) => raise.length + sink.length === shafts);
}

function planPicture({ threading, lifts }: UnitDraft): string {
  const hung = threading.map((shafts) => shafts.join("+") || "X");
  const wide = Math.max(...hung.map((text) => text.length)) + 1;
  const across = (cells: readonly string[]) => cells.map((cell) => cell.padEnd(wide)).join("");
  const name = (row: number) => `row ${row}`.padStart(`row ${lifts.length}`.length);
  const rows = lifts.map((lift, row) => {
    const drawn = threading.map((shafts) => (shafts.some((shaft) => lift.includes(shaft)) ? "#" : "."));
    return `${name(row + 1)}  ${across(drawn)} draws ${lift.join(" ") || "none"}`;
  });
  return [`${"units".padEnd(name(lifts.length).length)}  ${across(hung)}`.trimEnd(), ...rows.reverse()].join(
    "\n",
  );
}
