import type { Block, Part, Text } from "../document/types.js";
import { threadingPictures } from "../pictures/unit-threading.js";
import { threadingGroups } from "../threading-groups.js";
import type { Context } from "./context.js";
import { count, counted, range } from "./number.js";

/** The unit threading from the weaver's bench, drawn and in counted groups. */
export function threadingPart({ woven, options, recipe }: Context): Part {
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
  blocks.push({
    kind: "table",
    id: "unit-threading-list",
    caption: "The units in the order of threading, in counted groups",
    columns: [
      { title: "Group", kind: "head" },
      { title: "Done", kind: "tick" },
      { title: "Units", kind: "number" },
      { title: "Pattern shafts in order" },
      { title: "How many", kind: "number" },
      { title: "Ends a unit", kind: "number" },
      { title: "Ends", kind: "number" },
      { title: "Ends so far", kind: "number" },
    ],
    rows: rowsOf(
      woven.draft.threading,
      unitSpans.map(({ start, end }) => end - start),
      fromRight,
    ),
  });
  return { name: "threading", title: "Unit threading", blocks };
}

function rowsOf(
  threading: Parameters<typeof threadingGroups>[0],
  unitEnds: readonly number[],
  fromRight: boolean,
): Text[][] {
  let sum = 0;
  return threadingGroups(threading, unitEnds, fromRight).map((group, i) => {
    const ends = group.units * group.endsAUnit;
    sum += ends;
    return [
      `${i + 1}`,
      "",
      range(group.first, group.last),
      group.shafts,
      count(group.units),
      count(group.endsAUnit),
      count(ends),
      count(sum),
    ];
  });
}
