import type { Block, Text } from "@drawcord/page";
import { letterOf } from "../card/letters.js";
import type { SheetPart } from "../part-names.js";
import { range, spacedCount, spacedNumber } from "../parts/number.js";
import { pieces } from "../pictures/pieces.js";
import type { Stretch } from "../woven.js";
import type { PlainContext } from "./context.js";

/** Ends that are threaded and then ticked off. */
const GROUP = 8;

/** Every end on its shaft in the order of threading, a tick a group. */
export function plainThreadingPart({ draft, woven, look, fromRight }: PlainContext): SheetPart {
  const { ends } = woven;
  const groups = groupsOf(woven.unitSpans);
  if (fromRight) groups.reverse();
  const striped = new Set(look.ends).size > 1;
  let done = 0;
  const rows = groups.map(({ start, end }): Text[] => {
    const order = Array.from({ length: end - start }, (_, i) => (fromRight ? end - 1 - i : start + i));
    done += order.length;
    return [
      range(order[0]! + 1, order.at(-1)! + 1),
      [{ text: order.map((one) => shaftsText(draft.threading[one]!)).join(" "), strong: true }],
      ...(striped ? [coloursText(order.map((one) => look.ends[one]!))] : []),
      spacedNumber(done),
    ];
  });
  const way = fromRight ? "from right to left" : "from left to right";
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${spacedCount(ends, "end")} on ${spacedCount(draft.shafts, "shaft")}, shaft 1 nearest the weaver. Thread ${way}; end 1 lies at the left. An end on two shafts is written with a plus, one on none as a dash.${striped ? " The letters are the colours of the yarns, as in the list of yarns." : ""}`,
    },
    {
      kind: "table",
      id: "threading-list",
      caption: `All ends in the order of threading, ${way}: the shaft of each end, and how many ends are through.`,
      columns: [
        { title: "Ends", kind: "boxes" },
        { title: "Shafts" },
        ...(striped ? [{ title: "Colour" }] : []),
        { title: "So far", kind: "number" },
      ],
      rows,
      narrow: true,
      band: 5,
    },
  ];
  return { name: "threading", title: "Dressing: threading", blocks };
}

/** Neighbouring stretches put together while they make no more than a group. */
function groupsOf(spans: readonly Stretch[]): Stretch[] {
  const groups: { start: number; end: number }[] = [];
  for (const { start, end } of spans.flatMap((span) =>
    pieces(span.end - span.start, GROUP).map((one) => ({
      start: span.start + one.start,
      end: span.start + one.end,
    })),
  )) {
    const last = groups.at(-1);
    if (last !== undefined && end - last.start <= GROUP) last.end = end;
    else groups.push({ start, end });
  }
  return groups;
}

function shaftsText(shafts: readonly number[]): string {
  return shafts.length === 0 ? "–" : shafts.join("+");
}

/** `A` or `4 A 4 B` */
function coloursText(colours: readonly number[]): string {
  const runs: { colour: number; times: number }[] = [];
  for (const colour of colours) {
    const last = runs.at(-1);
    if (last?.colour === colour) last.times++;
    else runs.push({ colour, times: 1 });
  }
  if (runs.length === 1) return letterOf(runs[0]!.colour);
  return runs.map(({ colour, times }) => `${times} ${letterOf(colour)}`).join(" ");
}
