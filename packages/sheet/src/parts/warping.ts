import type { Block, Table, Text } from "@drawcord/page";
import { WARP_CAUTION } from "@drawcord/units";
import { chains, type Warping } from "@drawcord/yarn";
import type { SheetPart } from "../part-names.js";
import type { Context } from "./context.js";
import { range, spacedCount, spacedNumber } from "./number.js";
import { pairs } from "./pairs.js";

/** More ends than this are wound by no hand. */
const MOST_ENDS = 100_000;

/** Winding the warp: how long, how many passes, in which chains. */
export function warpingPart({ plan, print, recipe }: Context): SheetPart {
  const { ends, warpLength } = plan;
  return warpingOf(ends.value, warpLength && print(warpLength), recipe.warp);
}

/**
 * The same of any warp.
 * @param length of the warp in words, where it is known
 * @param yarns of the ends, repeated over them
 */
export function warpingOf(ends: number, length: string | undefined, yarns: readonly string[]): SheetPart {
  const stripes = stripesOf(yarns, ends);
  const winding = ends > MOST_ENDS ? undefined : chains(ends);
  const rows: (readonly [string, string])[] = [
    ["Ends", spacedNumber(ends)],
    ["Length of the warp", length ?? "not known"],
    ...(winding === undefined ? [] : windingRows(winding)),
  ];
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: "Wind all ends at one length. Tie the cross of every chain before it is taken off, and a choke tie at each yard or metre.",
    },
    { kind: "paragraph", tone: "caution", text: WARP_CAUTION },
    pairs("warp", "The warp", rows),
    ...(winding === undefined ? [] : [chainTable(winding, stripes)]),
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
    ["Cross", `${cross}, ${spacedNumber(threads)} threads wound together`],
    ["Passes", `${spacedNumber(passes.value)}${last}`],
    ["Double passes, each once down and back", spacedNumber(doublePasses.value)],
  ];
}

/** Neighbouring ends of one yarn; the first and one past the last, from 0. */
interface Stripe {
  readonly yarn: string;
  readonly start: number;
  readonly end: number;
}

/** The yarns of the ends as stripes; none where all ends are of one yarn. */
function stripesOf(yarns: readonly string[], ends: number): Stripe[] {
  if (new Set(yarns).size < 2 || ends > MOST_ENDS) return [];
  const stripes: { yarn: string; start: number; end: number }[] = [];
  for (let end = 0; end < ends; end++) {
    const yarn = yarns[end % yarns.length]!;
    const last = stripes.at(-1);
    if (last?.yarn === yarn) last.end = end + 1;
    else stripes.push({ yarn, start: end, end: end + 1 });
  }
  return stripes;
}

/** The yarns of the ends from `first` to `last` in the order of winding: `8 indigo, 4 warp`. */
function yarnsText(stripes: readonly Stripe[], first: number, last: number): string {
  const within = stripes.filter(({ start, end }) => start < last && end >= first);
  return within
    .map(
      ({ yarn, start, end }) =>
        `${spacedNumber(Math.min(end, last) - Math.max(start, first - 1))}\u00a0${yarn}`,
    )
    .join(", ");
}

/** A chain a line, with the ends that are wound when it is chained off, and their yarns where there are several. */
function chainTable({ endsInChains, threads }: Warping, stripes: readonly Stripe[]): Table {
  let sum = 0;
  const striped = stripes.length > 0;
  return {
    kind: "table",
    id: "chains",
    caption: `Chains, in the order of winding: a chain is what is taken off the frame at once${striped ? "; wind its yarns in the order given, end 1 at the left" : ""}`,
    columns: [
      { title: "Chain", kind: "head" },
      { title: "Done", kind: "tick" },
      { title: "Ends" },
      ...(striped ? [{ title: "Yarns in order" }] : []),
      { title: "Passes", kind: "number" },
      { title: "Ends so far", kind: "number" },
    ],
    rows: endsInChains.map((ends, i): Text[] => {
      const first = sum + 1;
      sum += ends;
      return [
        `${i + 1}`,
        "",
        `${spacedCount(ends, "end")}, ${range(first, sum)}`,
        ...(striped ? [yarnsText(stripes, first, sum)] : []),
        spacedNumber(Math.ceil(ends / threads)),
        spacedNumber(sum),
      ];
    }),
    narrow: true,
  };
}
