import { listed } from "@drawcord/base";
import { type Action, type Feet, feetOf, type Ground, type TieUp, tieUpOf } from "@drawcord/ground";
import type { Block, Table, Text } from "@drawcord/page";
import { liftCaution, liftWork, loomNeeds, printShafts } from "@drawcord/units";
import { toMetric } from "@drawcord/yarn";
import type { SheetPart } from "../part-names.js";
import { tieUpPicture } from "../pictures/tie-up.js";
import type { Woven } from "../woven.js";
import type { Context } from "./context.js";
import { spacedCount, spacedNumber } from "./number.js";

/** The tie-up as it hangs under the loom, the treadling of every piece, and what hangs on the harnesses. */
export function groundPart(context: Context, all: readonly Context[]): SheetPart {
  const { woven, recipe } = context;
  const { draft, treadles } = woven;
  const action = recipe.loom.action ?? "countermarch";
  const ground = groundOf(all);
  const tie = tieUpOf(ground, action);
  const hanging = hangingOf(all);
  const name = recipe.weave === undefined ? "The ground weave" : `The ground is ${article(recipe.weave)}. It`;
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${name} takes ${spacedCount(draft.ground.shafts, "ground shaft")} and ${spacedCount(treadles.length, "treadle")}. A treadle raises some shafts and sinks others; the rest stay where the pattern harness puts them, which is what the long eyes are for.`,
    },
    ...(treadles.length === 0
      ? []
      : ([
          { kind: "pictures", pictures: [tieUpPicture({ shafts: draft.ground.shafts, treadles }, hanging)] },
        ] as const)),
    ...(treadles.length === 0 ? [] : [tieTable(woven, hanging, tie.possible ? tie : undefined)]),
    { kind: "paragraph", text: [...treadling(all), { text: tieWords(context, tie) }] },
    ...harnesses(context, all),
  ];
  return { name: "ground", title: "Tie-up, treadling and lingos", blocks };
}

/** The ground that the treadles of all pieces weave; each treadling once. */
function groundOf(all: readonly Context[]): Ground {
  const { ground } = all[0]!.woven.draft;
  const treadlings = new Map(all.map(({ woven }) => [JSON.stringify(woven.treadleOfStep), woven] as const));
  return { ...ground, steps: [...treadlings.values()].flatMap(({ draft }) => draft.ground.steps) };
}

function article(name: string): string {
  return /^plain$/i.test(name) ? "plain weave" : `${/^[aeiou]/i.test(name) ? "an" : "a"} ${name}`;
}

/** The treadles from left to right as they hang: each foot walks inwards where the feet alternate in every piece. */
function hangingOf(all: readonly Context[]): number[] {
  const numbers = all[0]!.woven.treadles.map((_, i) => i + 1);
  const treadling = all.flatMap(({ woven }) => woven.treadleOfStep.map((treadle) => treadle + 1));
  const feet = feetOf(treadling);
  return treadling.length > 0 && feet.alternate ? [...feet.hanging] : numbers;
}

/** A treadle a line, from left to right as they hang; with the loom's own cords where they are others. */
function tieTable({ treadles }: Woven, hanging: readonly number[], tie: TieUp | undefined): Table {
  const cords = tie !== undefined && tie.action !== "countermarch" ? tie.ties : undefined;
  return {
    kind: "table",
    id: "tie-up",
    caption: "The treadles from left to right as they hang",
    columns: [
      { title: "Treadle", kind: "head" },
      { title: "Raises shafts" },
      { title: "Sinks shafts" },
      ...(cords === undefined ? [] : [{ title: "Cords that raise" }, { title: "Cords that sink" }]),
    ],
    rows: hanging.map((treadle): Text[] => {
      const { raise, sink } = treadles[treadle - 1]!;
      const cord = cords?.[treadle - 1];
      return [
        `${treadle}`,
        printShafts(raise),
        printShafts(sink),
        ...(cord === undefined ? [] : [printShafts(cord.raise), printShafts(cord.sink)]),
      ];
    }),
  };
}

/** The treadling of every piece from its first pick on; pieces that are trodden alike are told once. */
function treadling(all: readonly Context[]) {
  const told = new Map<string, string[]>();
  for (const { woven, recipe } of all) {
    const text = treadlingText(woven);
    told.set(text, [...(told.get(text) ?? []), recipe.pieces[0]!.name]);
  }
  const words = [...told].map(([text, names]) =>
    told.size === 1 ? `From pick 1 on: ${text}.` : `The ${listed(names)}, from pick 1 on: ${text}.`,
  );
  return [{ text: "Treadling. ", strong: true }, { text: `${words.join(" ")} ` }];
}

function treadlingText({ draft, treadleOfStep, wefts, weftOfPick, expansion }: Woven): string {
  const treads = treadleOfStep.map((treadle) => (treadle < 0 ? "none" : `${treadle + 1}`)).join(" ");
  const { length } = draft.ground.steps;
  const first = treadleOfStep.map((_, step) => weftOfPick[expansion.stepOfPick.indexOf(step)]);
  const byStep = weftOfPick.every((weft, pick) => weft === first[expansion.stepOfPick[pick]!]);
  const named = first.flatMap((weft) => (weft === undefined ? [] : [wefts[weft]!]));
  const several = byStep && new Set(named).size > 1 ? `, with the wefts ${named.join(", ")}` : "";
  return `${treads}${several}; begin again after ${spacedCount(length, "pick")}`;
}

const actionNames: Readonly<Record<Action, string>> = {
  countermarch: "countermarch",
  pulleys: "counterbalance with damask pulleys",
  jack: "jack loom",
  sinking: "sinking-shed loom",
  list: "dobby (list of bars)",
};

function tieWords({ recipe }: Context, tie: ReturnType<typeof tieUpOf>): string {
  const named = recipe.loom.action;
  const intro =
    named === undefined ? "The recipe names no action; on a countermarch" : `On a ${actionNames[named]}`;
  if (!tie.possible) return `${intro} this ground cannot be tied up: ${tie.why}.`;
  const lines = [
    `${intro} it takes ${spacedCount(tie.ties.length, "treadle")} and ${spacedCount(tie.count, "tie")}.`,
    ...(tie.pairs === undefined
      ? []
      : [
          `Hang in pairs over a pulley: ${tie.pairs.map((pair) => `shafts ${pair.join(" and ")}`).join(", ")}.`,
        ]),
    ...(tie.feet === undefined ? [] : [feetText(tie.feet)]),
    ...tie.notes.map((text) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`),
  ];
  return lines.join(" ");
}

function feetText(feet: Feet): string {
  if (!feet.alternate) return `The feet cannot alternate: ${feet.why}.`;
  return `The feet alternate: the left treads ${feet.left.join(" ")}, the right ${feet.right.join(" ")}.`;
}

/** Leashes, heddles and lingos, and the caution that goes with them. */
function harnesses({ woven, recipe, print }: Context, all: readonly Context[]): Block[] {
  const needs = loomNeeds(woven.draft);
  const leashes = needs.singleUnitDraw
    ? `${spacedCount(needs.cords, "cord")}, one for each unit`
    : `leashes ${loads(needs.leashes)}`;
  const { lingoWeight } = recipe.loom;
  const each = lingoWeight === undefined ? "" : ` of ${print(lingoWeight)}`;
  const grams = lingoWeight === undefined ? undefined : toMetric(lingoWeight).value;
  const lifts = all.map(({ woven: { draft }, recipe: { pieces } }) => ({
    ...liftWork(draft, grams === undefined ? {} : { lingoGrams: grams }).heaviest,
    of: all.length === 1 ? "" : ` of the ${pieces[0]!.name}`,
  }));
  const heaviest = lifts.reduce((most, lift) => (lift.units > most.units ? lift : most));
  const weight =
    heaviest.grams === undefined
      ? "; the recipe does not say what a lingo weighs"
      : `, ${print({ value: heaviest.grams, unit: "g", kind: "mass" })} of lingos`;
  const words = [
    { text: "Lingos and leashes. ", strong: true },
    { text: `${spacedCount(needs.lingos, "lingo")}${each}, one a unit; ` },
    { text: `${leashes}; heddles ${loads(needs.heddles)}.` },
  ];
  const blocks: Block[] = [{ kind: "paragraph", text: words }];
  if (heaviest.units > 0) {
    blocks.push({
      kind: "paragraph",
      tone: "caution",
      text: `The heaviest lift is row ${heaviest.row + 1}${heaviest.of}: ${spacedCount(heaviest.units, "unit")} at once${weight}. ${liftCaution(heaviest.grams)}`,
    });
  }
  return blocks;
}

/** `4 on shaft 1; 8 on each of shafts 2–4` */
function loads(list: readonly { readonly shaft: number; readonly count: number }[]): string {
  const groups: { first: number; last: number; count: number }[] = [];
  for (const { shaft, count: each } of list) {
    const last = groups.at(-1);
    if (last !== undefined && last.count === each && last.last === shaft - 1) last.last = shaft;
    else groups.push({ first: shaft, last: shaft, count: each });
  }
  const words = groups.map(({ first, last, count: each }) =>
    first === last
      ? `${spacedNumber(each)} on shaft ${first}`
      : `${spacedNumber(each)} on each of shafts ${first}–${last}`,
  );
  return words.join(", ") || "none";
}
