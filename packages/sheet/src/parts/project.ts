import type { Block, Text } from "@drawcord/page";
import { liftWork, loomNeeds } from "@drawcord/units";
import { assumptions, inUnits, type PlanYarn, type Quantity, writeQuantity } from "@drawcord/yarn";
import { hexOf, readColour } from "../colour.js";
import type { SheetPart } from "../part-names.js";
import { answer } from "./answer.js";
import type { Context } from "./context.js";
import { count, counted } from "./number.js";
import { pairs } from "./pairs.js";
import { type Print, projectNumbers } from "./project-numbers.js";

/** What to buy, what to set up and how long a warp: the numbers of the project. */
export function projectPart(context: Context): SheetPart {
  const { plan, recipe, options } = context;
  const print: Print = (quantity) => inUnits(quantity, options.units);
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text:
        recipe.notes === undefined
          ? "What to buy, what to set up, and how long a warp to wind."
          : `What to buy, what to set up, and how long a warp to wind. The recipe says: ${recipe.notes.trim()}`,
    },
    given(context, print),
    projectNumbers(plan, print),
  ];
  const yarns = materials(context, print);
  if (yarns !== undefined) blocks.push(yarns);
  blocks.push(loomTable(context));
  const assumed = assumptions(plan).map(
    ({ meaning, value, why }) => `${meaning}, ${writeQuantity(value)} (${why})`,
  );
  if (assumed.length > 0) blocks.push(note(`Assumed: ${assumed.join("; ")}.`));
  for (const missing of plan.missing) blocks.push(note(`Missing: ${missing}.`));
  for (const text of plan.notes) blocks.push(note(`Note: ${text}.`));
  return { name: "project", title: "Project and materials", blocks };
}

function note(text: string): Block {
  return { kind: "paragraph", tone: "note", text };
}

/** What the recipe states, which a class is given too. */
function given({ recipe }: Context, print: Print): Block {
  const { cloth, project } = recipe;
  const rows: [string, string][] = [];
  const add = (what: string, quantity: Quantity | undefined) => {
    if (quantity !== undefined) rows.push([what, print(quantity)]);
  };
  add("Sett in the reed", cloth.sett);
  add("Picks", cloth.picks);
  add("Draw-in, on the width in the reed", cloth.drawIn);
  add("Take-up, on the length of the cloth", cloth.takeUp);
  add("Shrinkage in width", cloth.shrinkage?.width);
  add("Shrinkage in length", cloth.shrinkage?.length);
  if (project.pieces !== undefined) rows.push(["Pieces wanted", count(project.pieces)]);
  add("Finished length of a piece", project.length);
  add("Finished width wanted", project.width);
  add("Hems of a piece, both ends together", project.hems);
  add("Fringes of a piece, both ends together", project.fringe);
  add("Gaps between pieces", project.gaps);
  add("Warp for samples", project.sampling);
  add("Loom waste", project.waste);
  if (rows.length === 0)
    return note(
      "The recipe gives no sett, no yarn sizes and no lengths; what follows from them is left out.",
    );
  return pairs("given", "What the recipe gives", rows);
}

/** The yarns with what to buy of each; none where the recipe names no yarn and nothing is known of its length. */
function materials({ plan, recipe }: Context, print: Print): Block | undefined {
  const used = [plan.warpYarn, ...plan.weftYarn].filter((yarn) => yarn !== undefined);
  const names = [...new Set([...used.map(({ name }) => name), ...recipe.yarns.map(({ name }) => name)])];
  if (names.length === 0) return undefined;
  return {
    kind: "table",
    id: "materials",
    caption: "Yarn to buy",
    columns: [
      { title: "Yarn", kind: "head" },
      { title: "Count" },
      { title: "Fibre and colour" },
      { title: "Patch", kind: "swatch" },
      { title: "Length", kind: "number" },
      { title: "Weight", kind: "number" },
      { title: "Packages" },
    ],
    rows: names.map((name): Text[] => {
      const yarn = recipe.yarns.find((one) => one.name === name);
      const use = used.find((one) => one.name === name);
      const look = [yarn?.fibre, yarn?.colour].filter((word) => word !== undefined);
      return [
        name,
        yarn?.count.text ?? "not named",
        look.length === 0 ? "not named" : look.join(", "),
        patchOf(yarn?.colour),
        answer(use === undefined ? "not known" : print(use.length)),
        answer(use?.mass === undefined ? "not known" : print(use.mass)),
        answer(packages(use, yarn?.package, print)),
      ];
    }),
  };
}

/** The code of a colour that the sheet knows. */
function patchOf(colour: string | undefined): string {
  const known = colour === undefined ? undefined : readColour(colour);
  return known === undefined ? "" : hexOf(known);
}

function packages(use: PlanYarn | undefined, size: Quantity | undefined, print: Print): string {
  const stock =
    use?.enough === undefined ? "" : use.enough ? "; the stock is enough" : "; the stock is not enough";
  if (use?.packages === undefined || size === undefined) return `not known${stock}`;
  return `${count(use.packages.value)} of ${print(size)}${stock}`;
}

/** What hangs where: leashes on the pattern shafts, heddles on the ground shafts, lingos on the units. */
function loomTable({ woven }: Context): Block {
  const needs = loomNeeds(woven.draft);
  const { changes, pulls } = liftWork(woven.draft);
  const loads = (list: readonly { readonly shaft: number; readonly count: number }[]) =>
    grouped(list)
      .map(([shafts, each]) => `${each} on ${shafts}`)
      .join("; ") || "none";
  return pairs("loom", "What the loom needs", [
    ["Pattern shafts", answer(counted(needs.patternShafts, "shaft"))],
    [
      "Leashes",
      answer(needs.singleUnitDraw ? `${count(needs.cords)}, a cord for each unit` : loads(needs.leashes)),
    ],
    ["Handles to pull", answer(`${counted(pulls, "pull")}, ${counted(changes, "change")} in all rows`)],
    ["Static units", answer(count(needs.staticUnits))],
    ["Lingos", answer(`${count(needs.lingos)}, one a unit`)],
    ["Ground shafts", answer(count(needs.groundShafts))],
    ["Heddles", answer(loads(needs.heddles))],
    ["Treadles", answer(`${count(needs.treadles)}, ${counted(needs.ties, "tie")}`)],
  ]);
}

/** Neighbouring shafts that carry as many, together: `shafts 1-4`. */
function grouped(list: readonly { readonly shaft: number; readonly count: number }[]): [string, number][] {
  const groups: { first: number; last: number; count: number }[] = [];
  for (const { shaft, count: each } of list) {
    const last = groups.at(-1);
    if (last !== undefined && last.count === each && last.last === shaft - 1) last.last = shaft;
    else groups.push({ first: shaft, last: shaft, count: each });
  }
  return groups.map(({ first, last, count: each }) => [
    first === last ? `shaft ${first}` : `each of shafts ${first}–${last}`,
    each,
  ]);
}
