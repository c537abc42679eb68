import { toText } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";
import type { ExampleYarn, Said } from "../numbers/said.js";
import { drawdownOfDraft } from "../shaft-draft/drawdown.js";
import type { ShaftDraft } from "../shaft-draft/types.js";
import type { Example } from "./rule.js";

/**
 * An example as a picture in characters, the first pick or row at the bottom: the drawdown (`#` an end over the pick), or
 * where the ground moves every shaft on every pick, so that only the plan matters, the units' shafts over the rows of
 * drawn (`#`) and undrawn units, each row with the shafts it draws; of one about numbers what is said, a line each.
 * @param example an example of a rule's page
 * @example examplePicture({ title: "plain weave", cloth: "#.\n.#" }) // "#.\n.#"
 */
export function examplePicture({ cloth, project }: Example): string {
  if (typeof cloth === "string") return cloth;
  if (project !== undefined) return numbersPicture(cloth, project);
  if ("shafts" in cloth) return toText(drawdownOfDraft(cloth));
  return planOnly(cloth) ? planPicture(cloth) : toText(expand(cloth).drawdown);
}

function numbersPicture(cloth: UnitDraft | ShaftDraft, project: Said): string {
  const { columns, rows } = "shafts" in cloth ? drawdownOfDraft(cloth) : expand(cloth).drawdown;
  const said = Object.entries(project as Readonly<Record<string, unknown>>).flatMap(([name, value]) =>
    (Array.isArray(value) ? value : [value]).map((one) => `${NAMES[name] ?? name}: ${saidOf(one)}`),
  );
  return [`${columns} ends, ${rows} picks`, ...said].join("\n");
}

/** What recipes call the facts of a project, where it is not as the facts are called. */
const NAMES: Readonly<Record<string, string>> = {
  drawIn: "draw-in",
  lingoWeight: "lingo",
  pickSett: "picks",
  takeUp: "take-up",
  warpLength: "length of the warp",
  wefts: "weft",
};

/** A yarn by its count, what it is of, and what there is of it; anything else as it is written. */
function saidOf(value: unknown): string {
  if (typeof value !== "object" || value === null) return `${value}`;
  const { fibre, stock, yarn } = value as ExampleYarn;
  return [[yarn, fibre].filter(Boolean).join(" "), ...(stock ? [`${stock} in stock`] : [])].join(", ");
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
