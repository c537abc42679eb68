import type { Block, Table, TableHead, Text } from "@drawcord/page";
import { letterOf } from "../card/letters.js";
import { cardGroups } from "../card/lines.js";
import { type CardRow, cardKey, type ShuttleSide } from "../card/rows.js";
import { cardTable } from "../card/table.js";
import { handlesText } from "../numbers/handles.js";
import type { SheetPart } from "../part-names.js";
import { range, spacedCount } from "../parts/number.js";
import { sectionsOf } from "../sections.js";
import type { PlainContext } from "./context.js";

/** What to tread pick by pick, upwards as the cloth grows; what is woven again stands once, with a box for each time. */
export function treadlingPart(context: PlainContext): SheetPart {
  const { draft, woven, look } = context;
  const treadles = draft.shedding.kind === "tie-up";
  const striped = new Set(look.picks).size > 1;
  const what = treadles ? "treadle" : "shafts";
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${spacedCount(woven.picks, "pick")}. Read upwards: pick 1 stands at the foot. For each pick ${treadles ? "tread its treadle" : draft.rising ? "raise its shafts" : "sink its shafts"}, throw, and tick its number. The draft does not say from which side the first pick is thrown; the card begins at the left.${striped ? " The letters are the colours of the yarns, as in the list of yarns." : ""}`,
    },
    card(context, what, striped),
  ];
  return { name: "lifts", title: treadles ? "Treadling card" : "Lift card", blocks };
}

function card({ moves, look }: PlainContext, what: string, striped: boolean): Table {
  const rows = cardRows(
    moves.map((move) => move.join(" ")),
    look.picks,
  );
  const groups = cardGroups(rows, sectionsOf(rows.map(cardKey)));
  const table: Text[][] = [];
  const heads: TableHead[] = [];
  for (const { section, from, to, lines } of groups) {
    const numbers = lines.flatMap((line) => line.rows.filter((row) => row !== undefined));
    const picks = `picks ${range(Math.min(...numbers), Math.max(...numbers))}`;
    const times = from === to ? `repeat ${from} of` : `repeats ${range(from, to)} of`;
    const text = section.times === 1 ? `P${picks.slice(1)}` : `${times} ${section.times}: ${picks}`;
    heads.push({ row: table.length, text: text.charAt(0).toUpperCase() + text.slice(1) });
    for (const { rows: boxes, what: row } of lines) {
      const move = moves[row.row - 1]!;
      table.push([
        boxes.map((pick) => pick ?? "·").join(" "),
        [{ text: move.length === 0 ? "none" : handlesText(move), strong: true }],
        ...(striped ? [letterOf(row.wefts[0]!)] : []),
        row.sides[row.wefts[0]!]!,
      ]);
    }
  }
  return {
    ...cardTable("pick"),
    columns: [
      { title: "Pick", kind: "boxes" },
      { title: what.charAt(0).toUpperCase() + what.slice(1) },
      ...(striped ? [{ title: "Weft" }] : []),
      { title: "From" },
    ],
    rows: table,
    heads,
  };
}

/** A pick a row; each weft goes to and fro from the left. */
function cardRows(moves: readonly string[], wefts: readonly number[]): CardRow[] {
  const unlike = [...new Set(moves)];
  const next = new Map<number, ShuttleSide>();
  return moves.map((move, pick): CardRow => {
    const weft = wefts[pick]!;
    const side = next.get(weft) ?? "left";
    next.set(weft, side === "left" ? "right" : "left");
    const sides: (ShuttleSide | undefined)[] = [];
    sides[weft] = side;
    return {
      row: pick + 1,
      drawn: [],
      pulled: [],
      released: [],
      treadles: [unlike.indexOf(move)],
      wefts: [weft],
      sides,
    };
  });
}
