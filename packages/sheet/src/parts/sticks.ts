import type { Block, Text } from "@drawcord/page";
import { leaveAndTake, pass, runsText, type Stick, sticksOf } from "../card/sticks.js";
import type { SheetPart } from "../part-names.js";
import type { Context } from "./context.js";
import { spacedCount, spacedNumber } from "./number.js";

/** So many sticks are compared, each with each; of more it is not said which pass. */
const MOST_COMPARED = 400;

/** The plan for a weaver without a draw: every different lift as a half-heddle stick. */
export function sticksPart({ woven, options }: Context): SheetPart {
  const fromRight = options.reading === "right-to-left";
  const sticks = sticksOf(woven, fromRight);
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `For weaving without a draw: ${spacedCount(sticks.length, "stick")} with half heddles, one for each different lift. ${passText(sticks)} Units are counted from the ${edge(fromRight)}. Raise the stick of the row, weave its picks, let it down.`,
    },
    {
      kind: "table",
      id: "sticks",
      caption: "The sticks in the order in which they are first used",
      columns: [
        { title: "Stick", kind: "head" },
        { title: `Units, from the ${edge(fromRight)}` },
        { title: "How many", kind: "number" },
        { title: "Rows" },
      ],
      rows: sticks.map(({ units, rows }, i): Text[] => [
        `${i + 1}`,
        runsText(units),
        spacedNumber(units.length),
        runsText(rows),
      ]),
    },
  ];
  return {
    name: "sticks",
    title: "Without a draw: half-heddle sticks",
    blocks: sticks.length === 0 ? [] : blocks,
  };
}

/** The same by counting: units left and taken by turns. */
export function pickUpPart({ woven, options }: Context): SheetPart {
  const fromRight = options.reading === "right-to-left";
  const sticks = sticksOf(woven, fromRight);
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `For picking up on a flat stick: count the units from the ${edge(fromRight)}, leave as many as the plain figure says, take as many as the bold one says, and so on in turn; what comes after the last is left.`,
    },
    {
      kind: "table",
      id: "pick-up",
      caption: "Units to leave and to take, in the order in which the lifts are first woven",
      columns: [{ title: "Lift", kind: "head" }, { title: "Leave and take in turn" }, { title: "Rows" }],
      rows: sticks.map(({ units, rows }, i): Text[] => [
        `${i + 1}`,
        leaveAndTake(units).map((number, turn) => ({
          text: `${turn === 0 ? "" : " "}${number}`,
          strong: turn % 2 === 1,
        })),
        runsText(rows),
      ]),
    },
  ];
  return {
    name: "pick-up",
    title: "Without a draw: pick-up by counting",
    blocks: sticks.length === 0 ? [] : blocks,
  };
}

function edge(fromRight: boolean): string {
  return fromRight ? "right edge" : "left edge";
}

/** Whether sticks that are left in the warp can pass each other: where all units of one are among those of the other. */
function passText(sticks: readonly Stick[]): string {
  const law =
    "Flat sticks left in the warp pass each other only where one carries none but units of the other;";
  if (sticks.length > MOST_COMPARED) return `${law} there are too many here to say which do.`;
  const free = sticks.flatMap(({ units }, i) =>
    sticks.every((other, j) => i === j || pass(units, other.units)) ? [i + 1] : [],
  );
  if (free.length === sticks.length) return `${law} all of these do.`;
  return `${law} ${free.length === 0 ? "none of these passes all others" : `of these, ${runsText(free)} ${free.length === 1 ? "passes" : "pass"} all others`}, so that half heddles are needed for the rest.`;
}
