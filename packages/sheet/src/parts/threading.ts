import type { Block, Table, Text } from "@drawcord/page";
import { printThreading } from "@drawcord/units";
import { dressingHeads, dressingLines, groundText } from "../dressing/lines.js";
import { reedWords } from "../numbers/say.js";
import type { SheetPart } from "../part-names.js";
import { threadingPictures } from "../pictures/unit-threading.js";
import type { Context } from "./context.js";
import { spacedCount, spacedNumber } from "./number.js";

/** Dressing the loom: every end through both harnesses in one list, and into the reed. */
export function threadingPart(context: Context): SheetPart {
  const { woven, options, recipe } = context;
  const { draft, unitSpans, singleUnit, patternShafts, ends } = woven;
  const fromRight = options.reading === "right-to-left";
  const statics = draft.threading.filter((shafts) => shafts.length === 0).length;
  const way = fromRight
    ? "Thread from right to left, as you sit at the bench; unit 1 lies at the left."
    : "Thread from left to right; unit 1 lies at the left.";
  const marked =
    statics === 0
      ? ""
      : ` ${spacedCount(statics, "unit")} marked X ${statics === 1 ? "is" : "are"} static: on no pattern shaft, always ground.`;
  const hung = singleUnit
    ? `each on ${patternShafts === unitSpans.length ? "a cord" : "the cord"} of its own`
    : `on ${spacedCount(patternShafts, "pattern shaft")}`;
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${spacedCount(ends, "end")} in ${spacedCount(unitSpans.length, "unit")}, ${hung}, and on ${spacedCount(draft.ground.shafts, "ground shaft")} (shaft 1 nearest the weaver). ${way}${marked}`,
    },
  ];
  const pictures = threadingPictures(woven, options.reading, recipe.staticShaft);
  if (pictures.length > 0) blocks.push({ kind: "pictures", pictures });
  blocks.push(list(context, fromRight), ...sleying(context));
  return { name: "threading", title: "Dressing: threading and sley", blocks };
}

/** One list of all ends: pattern harness, ground harness, and how many are through. */
function list({ woven }: Context, fromRight: boolean): Table {
  const { left = [], right = [] } = woven.draft.selvedge ?? {};
  const firstIsEdge = (fromRight ? right : left).length > 0;
  return {
    kind: "table",
    id: "threading-list",
    caption: `All ends in the order of threading, from ${fromRight ? "right to left" : "left to right"}: of each unit its ${woven.singleUnit ? "cord" : "pattern shaft"}, the ground shafts of its ends, and how many ends are through.`,
    columns: [
      { title: "Unit", kind: "boxes" },
      { title: woven.singleUnit ? "Cord" : "Pattern" },
      { title: "Ground" },
      { title: "Ends", kind: "number" },
    ],
    rows: dressingLines(woven, fromRight).map((line): Text[] => [
      line.name,
      [{ text: line.pattern.join(" "), strong: true }],
      groundText(line),
      spacedNumber(line.done),
    ]),
    narrow: true,
    band: 5,
    heads: dressingHeads(woven, fromRight, firstIsEdge).map(({ line, name }) => ({ row: line, text: name })),
  };
}

/** How the ends go into the reed. */
function sleying(context: Context): Block[] {
  const { plan, print, options, woven } = context;
  const short: Block = {
    kind: "paragraph",
    tone: "note",
    text: `In the notation of recipes, from unit 1 on: ${printThreading(woven.draft.threading)}`,
  };
  const { reed } = plan;
  if (reed === undefined) return [short];
  const half = print({ ...reed.width, value: reed.width.value / 2 });
  return [
    {
      kind: "paragraph",
      text: [
        { text: "Sley. ", strong: true },
        {
          text: `Reed ${reedWords(reed.reed, options.units)}. Ends in the dents: ${reed.printed}. ${spacedCount(reed.dentsUsed, "dent")} are used, ${print(reed.width)} in all: begin ${half} from the middle of the reed.`,
        },
      ],
    },
    short,
  ];
}
