import type { Block, Table, Text } from "@drawcord/page";
import { chains, type Warping } from "@drawcord/yarn";
import type { SheetPart } from "../part-names.js";
import type { Context } from "./context.js";
import { count, counted, range } from "./number.js";
import { pairs } from "./pairs.js";

/** More ends than this are wound by no hand. */
const MOST_ENDS = 100_000;

/** Winding the warp: how long, how many passes, in which chains. */
export function warpingPart({ plan, print }: Context): SheetPart {
  const { ends, warpLength } = plan;
  const winding = ends.value > MOST_ENDS ? undefined : chains(ends.value);
  const rows: (readonly [string, string])[] = [
    ["Ends", count(ends.value)],
    ["Length of the warp", warpLength === undefined ? "not known" : print(warpLength)],
    ...(winding === undefined ? [] : windingRows(winding)),
  ];
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: "Wind all ends at one length. Tie the cross of every chain before it is taken off, and a choke tie at each yard or metre.",
    },
    pairs("warp", "The warp", rows),
    ...(winding === undefined ? [] : [chainTable(winding)]),
  ];
  return { name: "warping", title: "Warping", blocks };
}

function windingRows({
  threads,
  cross,
  passes,
  doublePasses,
  spare,
}: Warping): (readonly [string, string])[] {
  const last = spare === 0 ? "" : `, the last with ${threads - spare}`;
  return [
    ["Cross", `${cross}, ${count(threads)} threads wound together`],
    ["Passes", `${count(passes.value)}${last}`],
    ["Double passes, each once down and back", count(doublePasses.value)],
  ];
}

/** A chain a line, with the ends that are wound when it is chained off. */
function chainTable({ endsInChains, threads }: Warping): Table {
  let sum = 0;
  return {
    kind: "table",
    id: "chains",
    caption: "Chains, in the order of winding: a chain is what is taken off the frame at once",
    columns: [
      { title: "Chain", kind: "head" },
      { title: "Done", kind: "tick" },
      { title: "Ends" },
      { title: "Passes", kind: "number" },
      { title: "Ends so far", kind: "number" },
    ],
    rows: endsInChains.map((ends, i): Text[] => {
      const first = sum + 1;
      sum += ends;
      return [
        `${i + 1}`,
        "",
        `${counted(ends, "end")}, ${range(first, sum)}`,
        count(Math.ceil(ends / threads)),
        count(sum),
      ];
    }),
    narrow: true,
  };
}
