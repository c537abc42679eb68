import type { Table, Text } from "@drawcord/page";
import {
  type Plan,
  type PlanFirmness,
  type PlanReed,
  printReed,
  printSley,
  type Quantity,
} from "@drawcord/yarn";
import type { Print } from "../numbers/say.js";
import { spacedNumber } from "./number.js";
import { pairs } from "./pairs.js";

type Row = readonly [what: string, howMuch: Text];

/** What follows from what the recipe gives: every number of the plan but the yarns. */
export function projectNumbersTable(plan: Plan, print: Print): Table {
  const { firmness, reed, weftYarn } = plan;
  const row = (what: string, quantity: Quantity | undefined): Row[] =>
    quantity === undefined ? [] : [[what, print(quantity)]];
  return pairs("project-numbers", "What follows from it", [
    ...threads(plan, print),
    ...(firmness === undefined ? [] : firmnessRows(firmness, print)),
    ...(reed === undefined ? [] : reedRows(reed, print)),
    ...row("Width in the reed", plan.widthInReed),
    ...row("Width on the loom", plan.clothWidth),
    ...row("Finished width", plan.finishedWidth),
    ...row("Picks in a piece", plan.picks),
    ...(weftYarn.length > 1
      ? weftYarn.flatMap(({ name, picks }) => row(`Picks of ${name} in a piece`, picks))
      : []),
    ...weftYarn.flatMap(({ name, samples }) => row(`Of the ${name}, for samples`, samples)),
    ...row("Cloth woven for a piece", plan.clothLength),
    ...row("Finished length of a piece", plan.finishedLength),
    ...row("Warp of a piece", plan.warpOfPiece),
    ...row("Length of the warp", plan.warpLength),
    ...row("Pieces", plan.pieces),
    ...row("Warp left over", plan.leftOver),
    ...row("Weight of the finished cloth", plan.clothWeight),
  ]);
}

/** These stand elsewhere on every sheet, so they are no riddle. */
function threads({ ends, lingos, units }: Plan, print: Print): Row[] {
  const named = [
    ["Ends", ends],
    ["Units", units],
    ["Lingos", lingos],
  ] as const;
  return named.flatMap(([what, quantity]) =>
    quantity === undefined ? [] : [[what, print(quantity)] as const],
  );
}

function firmnessRows({ closest, share, together, weft, words }: PlanFirmness, print: Print): Row[] {
  const ofPicks: Row[] =
    weft === undefined
      ? []
      : [
          ["Closest picks in the ground weave", print(weft.closest)],
          ["Picks as a share of the closest", print(weft.share)],
        ];
  return [
    ["Closest sett in the ground weave", print(closest)],
    ["Sett as a share of the closest", `${print(share)}: ${words}`],
    ...ofPicks,
    ...(together === undefined ? [] : [["Both shares in the mean", print(together)] as const]),
  ];
}

function reedRows(
  { dents, dentsUsed, error, others, printed, reed, sett, sley, width }: PlanReed,
  print: Print,
): Row[] {
  return [
    ["Reed", printReed(reed)],
    ["Dents", print(dents)],
    ["Sley", printSley(sley)],
    ["Ends in the reed", off(print(sett), error)],
    ...others.map(
      (other): Row => [`Ends if sleyed ${printSley(other.sley)}`, off(print(other.sett), other.error)],
    ),
    ["Dents used", spacedNumber(dentsUsed)],
    ["Width of the dents used", print(width)],
    ["Ends in the dents", printed],
  ];
}

/** How far a sett that a reed gives lies from the one that is wanted. */
function off(sett: string, error = 0): string {
  const percent = `${Number(Math.abs(error).toFixed(1))}`;
  return percent === "0" ? sett : `${sett}, ${percent} % ${error > 0 ? "above" : "below"} the sett`;
}
