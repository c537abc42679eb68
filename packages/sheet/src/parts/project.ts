import { listed } from "@drawcord/base";
import { colourOf, parseColour } from "@drawcord/draw";
import type { Block, Text } from "@drawcord/page";
import type { PlanPurchase, Quantity } from "@drawcord/yarn";
import { capital } from "../checking/cause.js";
import { type Print, reedWords } from "../numbers/say.js";
import type { SheetPart } from "../part-names.js";
import type { Context } from "./context.js";
import { spacedCount, spacedNumber } from "./number.js";
import { pairs } from "./pairs.js";

/** What to buy and what it becomes. */
export function projectPart(context: Context, all: readonly Context[]): SheetPart {
  const { plan, recipe } = context;
  const blocks: Block[] = [];
  if (recipe.notes !== undefined) {
    blocks.push({ kind: "paragraph", tone: "lead", text: recipe.notes.trim() });
  }
  const yarns = materials(context);
  if (yarns !== undefined) blocks.push(yarns);
  if (all.length > 1) blocks.push(designs(context, all));
  blocks.push(sizes(context, all));
  for (const missing of plan.missing) blocks.push(note(`Missing: ${missing}.`));
  for (const text of plan.notes) blocks.push(note(`Note: ${text}.`));
  return { name: "project", title: "What to buy, and what it becomes", blocks };
}

function note(text: string): Block {
  return { kind: "paragraph", tone: "note", text };
}

/** The sizes that a weaver measures by, and what the loom must have. */
function sizes({ plan, recipe, print, options, woven }: Context, all: readonly Context[]): Block {
  const { cloth } = recipe;
  const rows: (readonly [string, Text])[] = [
    [
      "Threads",
      all.length > 1
        ? spacedCount(woven.ends, "end")
        : `${spacedCount(woven.ends, "end")}, ${spacedCount(woven.picks, "pick")} in a piece`,
    ],
  ];
  const add = (what: string, ...quantities: (Quantity | undefined)[]) => {
    const known = quantities.filter((one) => one !== undefined);
    if (known.length > 0) rows.push([what, known.map(print).join(" by ")]);
  };
  if (cloth.sett !== undefined) rows.push(["Sett", print(cloth.sett)]);
  if (cloth.picks !== undefined) rows.push(["Picks", print(cloth.picks)]);
  if (plan.reed !== undefined) rows.push(["Reed", reedWords(plan.reed.reed, options.units)]);
  add("Width in the reed", plan.widthInReed);
  if (all.length > 1) {
    add("Width on the loom", plan.clothWidth);
    add("Width finished", plan.finishedWidth);
  } else {
    add("A piece on the loom", plan.clothWidth, plan.clothLength);
    add("A piece finished", plan.finishedWidth, plan.finishedLength);
  }
  rows.push(["Pieces", spacedCount(plan.pieces.value, "piece")]);
  const over = plan.woven.flatMap(({ name, over: some }) =>
    some === undefined ? [] : [`${spacedCount(some, "row")}${all.length > 1 ? ` of ${name}` : ""}`],
  );
  if (over.length > 0) rows.push(["Over after whole repeats", over.join(", ")]);
  add("Length of the warp", plan.warpLength);
  add("Weight of the cloth", plan.clothWeight);
  for (const { title, value } of plan.own ?? []) add(capital(title), value);
  return pairs("sizes", "The cloth in numbers", rows);
}

/** The designs in weaving order, each with what it takes. */
function designs({ plan, print }: Context, all: readonly Context[]): Block {
  const known = (quantity: Quantity | undefined) => (quantity === undefined ? "not known" : print(quantity));
  return {
    kind: "table",
    id: "pieces",
    caption: "The pieces, in the order in which they are woven",
    columns: [
      { title: "Piece", kind: "head" },
      { title: "How many", kind: "number" },
      { title: "Rows", kind: "number" },
      { title: "Picks", kind: "number" },
      { title: "On the loom", kind: "number" },
      { title: "Finished", kind: "number" },
      { title: "Wefts" },
    ],
    rows: plan.woven.map(({ name, count: many, picks, clothLength, finishedLength }, i): Text[] => [
      name,
      spacedNumber(many.value),
      spacedNumber(all[i]!.woven.rowSpans.length),
      spacedNumber(picks.value),
      known(clothLength),
      known(finishedLength),
      [...new Set(all[i]!.recipe.pieces[0]!.wefts)].join(", "),
    ]),
  };
}

/** The yarns with what to buy of each; none where the recipe names no yarn and nothing is known of its length. */
function materials({ plan, recipe, print }: Context): Block | undefined {
  const used = [...plan.warpYarns, ...plan.weftYarn];
  const names = [...new Set([...used.map(({ name }) => name), ...recipe.yarns.map(({ name }) => name)])];
  if (names.length === 0) return undefined;
  return {
    kind: "table",
    id: "materials",
    caption: "Yarn to buy, for all pieces on the warp",
    columns: [
      { title: "Yarn", kind: "head" },
      { title: "Count" },
      { title: "Fibre and colour" },
      { title: "Swatch", kind: "swatch" },
      { title: "Length", kind: "number" },
      { title: "Weight", kind: "number" },
      { title: "To buy" },
    ],
    rows: names.map((name): Text[] => {
      const yarn = recipe.yarns.find((one) => one.name === name);
      const use = used.find((one) => one.name === name);
      const look = [yarn?.fibre, yarn?.colour].filter((word) => word !== undefined);
      return [
        name,
        yarn?.count?.text ?? "not named",
        look.length === 0 ? "not named" : look.join(", "),
        patchOf(yarn?.colour),
        use === undefined ? "not known" : print(use.length),
        use?.mass === undefined ? "not known" : print(use.mass),
        toBuy(name, plan.buy, print),
      ];
    }),
  };
}

/** The code of a colour that the sheet knows. */
function patchOf(colour: string | undefined): string {
  const known = colour === undefined ? undefined : parseColour(colour);
  return known === undefined ? "" : colourOf(known);
}

/** What to buy of a yarn, spares with it and the stock taken off; of yarns alike the first says it. */
function toBuy(name: string, buy: readonly PlanPurchase[], print: Print): string {
  const one = buy.find(({ yarns }) => yarns.includes(name));
  if (one === undefined) return "not known";
  const [first, ...others] = one.yarns;
  if (first !== name) return `with the ${first}`;
  const along = others.length === 0 ? "" : `, ${listed(others)} with it`;
  if (one.toBuy.value === 0) return `the stock is enough${along}`;
  const amount =
    one.packages === undefined ? "" : `${spacedNumber(one.packages.value)} of ${print(one.package!)}, for `;
  return `${amount}${print(one.toBuy)}${along}`;
}
