import type { Block, Text } from "@drawcord/page";
import { printThreading, threadingList } from "@drawcord/units";
import type { SheetPart } from "../part-names.js";
import { threadingPictures } from "../pictures/unit-threading.js";
import type { Woven } from "../woven.js";
import type { Context } from "./context.js";
import { count, counted, range } from "./number.js";

/** The unit threading from the weaver's bench, drawn and in counted groups. */
export function threadingPart({ woven, options, recipe }: Context): SheetPart {
  const { draft, unitSpans } = woven;
  const fromRight = options.reading === "right-to-left";
  const statics = draft.threading.filter((shafts) => shafts.length === 0).length;
  const pictures = threadingPictures(woven, options.reading, recipe.staticShaft);
  const way = fromRight
    ? "Read from right to left, as the weaver threads from her bench; unit 1 lies at the left."
    : "Read from left to right; unit 1 lies at the left.";
  const marked =
    statics === 0
      ? ""
      : ` ${counted(statics, "unit")} marked X ${statics === 1 ? "is" : "are"} static: on no pattern shaft, always ground.`;
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${counted(unitSpans.length, "unit")} on ${counted(woven.patternShafts, "pattern shaft")}, one lingo each. ${way}${marked}`,
    },
  ];
  if (pictures.length > 0) blocks.push({ kind: "pictures", pictures });
  const rows = groupRows(woven, fromRight);
  blocks.push(
    {
      kind: "paragraph",
      tone: "note",
      text: `In short, from unit 1 on: ${printThreading(draft.threading)}`,
    },
    {
      kind: "table",
      id: "unit-threading-list",
      caption: "The units in the order of threading, in groups of ten to count and tick",
      columns: [
        { title: "Units", kind: "head" },
        { title: "Done", kind: "tick" },
        { title: "Pattern shafts in order" },
        { title: "Ends a unit" },
        { title: "Ends", kind: "number" },
        { title: "Units so far", kind: "number" },
        { title: "Ends so far", kind: "number" },
      ],
      rows,
    },
  );
  return { name: "threading", title: "Unit threading", blocks };
}

/** The groups of `drawcord threading`, with their ends. */
function groupRows({ draft, unitSpans }: Woven, fromRight: boolean): Text[][] {
  let sum = 0;
  return threadingList(draft.threading, { from: fromRight ? "right" : "left" }).map(
    ({ units, shafts, done }) => {
      const each = units.map((unit) => unitSpans[unit]!.end - unitSpans[unit]!.start);
      const ends = each.reduce((total, one) => total + one, 0);
      sum += ends;
      return [
        range(units[0]! + 1, units.at(-1)! + 1),
        "",
        shafts.join(" "),
        new Set(each).size === 1 ? count(each[0]!) : each.join(" "),
        count(ends),
        count(done),
        count(sum),
      ];
    },
  );
}
