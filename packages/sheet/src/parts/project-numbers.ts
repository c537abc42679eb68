import type { Table, Text } from "@drawcord/page";
import {
  type Plan,
  type PlanFirmness,
  type PlanReed,
  planNumbers,
  printSley,
  type Quantity,
  type UnitSystem,
} from "@drawcord/yarn";
import { capital } from "../checking/cause.js";
import { type Print, reedWords } from "../numbers/say.js";
import type { NumberedResults } from "../working/numbered.js";
import { spacedNumber } from "./number.js";

/** What it is, how much of it, and the quantity that was worked out. */
type Row = readonly [what: string, howMuch: string, quantity?: Quantity];

/**
 * What follows from what the recipe gives: every number of the plan, each with the number of its working.
 * @param units of the sheet
 */
export function projectNumbersTable(
  plan: Plan,
  print: Print,
  results: NumberedResults,
  units: UnitSystem,
): Table {
  const { firmness, reed, weftYarn } = plan;
  const row = (what: string, quantity: Quantity | undefined): Row[] =>
    quantity === undefined ? [] : [[what, print(quantity), quantity]];
  const rows: Row[] = [
    ...threads(plan, print),
    ...(firmness === undefined ? [] : firmnessRows(firmness, print)),
    ...(reed === undefined ? [] : reedRows(reed, print, units)),
    ...row("Width in the reed", plan.widthInReed),
    ...row("Width on the loom", plan.clothWidth),
    ...row("Finished width", plan.finishedWidth),
    ...row("Picks in a piece", plan.picks),
    ...(weftYarn.length > 1
      ? weftYarn.flatMap(({ name, picks }) => row(`Picks of ${name} in a piece`, picks))
      : []),
    ...row("Cloth woven for a piece", plan.clothLength),
    ...row("Finished length of a piece", plan.finishedLength),
    ...row("Warp of a piece", plan.warpOfPiece),
    ...row("Length of the warp", plan.warpLength),
    ...row("Pieces", plan.pieces),
    ...row("Warp left over", plan.leftOver),
    ...yarnRows(plan).flatMap(([what, quantity]) => row(what, quantity)),
    ...weftYarn.flatMap(({ name, samples }) => row(`Of the ${name}, for samples`, samples)),
    ...row("Weight of the finished cloth", plan.clothWeight),
    ...(plan.own ?? []).flatMap(({ title, value }) => row(capital(title), value)),
  ];
  return {
    kind: "table",
    id: "project-numbers",
    caption: "What follows from it, each with the number of its working",
    columns: [{ title: "What", kind: "head" }, { title: "How much" }, { title: "Working", kind: "number" }],
    rows: rows.map(([what, howMuch, quantity]): Text[] => [
      what,
      howMuch,
      `${(quantity && results.numberOf(quantity)) ?? ""}`,
    ]),
    narrow: true,
  };
}

/** Length, weight and what to buy of every yarn, by its name. */
function yarnRows(plan: Plan): (readonly [string, Quantity])[] {
  return planNumbers(plan).flatMap(({ name, title, value }) =>
    /-yarn-(length|mass)$|-to-buy$|-packages$/.test(name) ? [[capital(title), value] as const] : [],
  );
}

/** These stand elsewhere on every sheet, so they are no riddle. */
function threads({ ends, lingos, units }: Plan, print: Print): Row[] {
  const named = [
    ["Ends", ends],
    ["Units", units],
    ["Lingos", lingos],
  ] as const;
  return named.flatMap(([what, quantity]) =>
    quantity === undefined ? [] : [[what, print(quantity), quantity] as const],
  );
}

function firmnessRows({ closest, share, together, weft, words }: PlanFirmness, print: Print): Row[] {
  const ofPicks: Row[] =
    weft === undefined
      ? []
      : [
          ["Closest picks in the ground weave", print(weft.closest), weft.closest],
          ["Picks as a share of the closest", print(weft.share), weft.share],
        ];
  return [
    ["Closest sett in the ground weave", print(closest), closest],
    ["Sett as a share of the closest", `${print(share)}: ${words}`, share],
    ...ofPicks,
    ...(together === undefined ? [] : [["Both shares on average", print(together), together] as const]),
  ];
}

function reedRows(
  { dents, dentsUsed, error, others, printed, reed, sett, sley, width }: PlanReed,
  print: Print,
  units: UnitSystem,
): Row[] {
  return [
    ["Reed", reedWords(reed, units)],
    ["Dents", print(dents), dents],
    ["Sley", printSley(sley)],
    ["Ends in the reed", off(print(sett), error), sett],
    ...others.map(
      (other): Row => [
        `Ends if sleyed ${printSley(other.sley)}`,
        off(print(other.sett), other.error),
        other.sett,
      ],
    ),
    ["Dents used", spacedNumber(dentsUsed)],
    ["Width of the dents used", print(width), width],
    ["Ends in the dents", printed],
  ];
}

/** How far a sett that a reed gives lies from the one that is wanted. */
function off(sett: string, error = 0): string {
  const percent = `${Number(Math.abs(error).toFixed(1))}`;
  return percent === "0" ? sett : `${sett}, ${percent} % ${error > 0 ? "above" : "below"} the sett`;
}
