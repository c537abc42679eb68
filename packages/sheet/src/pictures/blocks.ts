import { colourOf, mixed, type Rgb } from "@drawcord/draw";
import { type BitGrid, onesIn } from "@drawcord/grid";
import type { CellFrame, Shape } from "@drawcord/page";
import type { Stretch } from "../woven.js";
import type { ThreadColours } from "./threads.js";

/** Where a cloth is cut into blocks: stretches of ends and of picks, in order. */
export interface BlockCuts {
  readonly ends: readonly Stretch[];
  readonly picks: readonly Stretch[];
}

/**
 * Cloth from where its threads run together to the eye: block by block in the colour that they mix to, one path a colour.
 * @param grid picks x ends as they are seen, 1 where the end lies on top
 * @param frame the cell of one interlacement
 */
export function blocks(grid: BitGrid, colours: ThreadColours, cuts: BlockCuts, frame: CellFrame): Shape[] {
  const mix = mixer(colours);
  const paths = new Map<string, string[]>();
  for (const picks of cuts.picks) {
    for (const band of joined(cuts.ends.map((ends) => ({ ...ends, colour: mix(grid, ends, picks) })))) {
      const width = band.end - band.start;
      const d = `M${band.start} ${grid.rows - picks.end}h${width}v${picks.end - picks.start}h-${width}z`;
      const path = paths.get(band.colour);
      if (path === undefined) paths.set(band.colour, [d]);
      else path.push(d);
    }
  }
  return [...paths]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([fill, parts]): Shape => ({ kind: "path", d: parts.join(""), fill, frame, role: "block" }));
}

interface Band extends Stretch {
  readonly colour: string;
}

/** Neighbours of one colour as one. */
function joined(bands: readonly Band[]): Band[] {
  const result: Band[] = [];
  for (const band of bands) {
    const last = result.at(-1);
    if (last?.colour === band.colour) result[result.length - 1] = { ...last, end: band.end };
    else result.push(band);
  }
  return result;
}

/** The colour of a block. The same counts over the same colours mix to the same colour, so each is worked out once. */
function mixer({ warp, weft }: ThreadColours): (grid: BitGrid, ends: Stretch, picks: Stretch) => string {
  const hexes = weft.map(colourOf);
  const stripes = stripesOf(warp);
  const known = new Map<string, string>();
  return (grid, ends, picks) => {
    const shares = new Map<string, { readonly colour: Rgb; count: number }>();
    const add = (hex: string, colour: Rgb, count: number) => {
      const share = shares.get(hex);
      if (share === undefined) shares.set(hex, { colour, count });
      else share.count += count;
    };
    const within = stripes.filter(({ start, end }) => end > ends.start && start < ends.end);
    for (let pick = picks.start; pick < picks.end; pick++) {
      for (const { start, end, hex, colour } of within) {
        const part = { start: Math.max(start, ends.start), end: Math.min(end, ends.end) };
        const up = raisedIn(grid, pick, part);
        add(hex, colour, up);
        add(hexes[pick]!, weft[pick]!, part.end - part.start - up);
      }
    }
    const key = [...shares].map(([hex, { count }]) => `${hex}${count}`).join(" ");
    const before = known.get(key);
    if (before !== undefined) return before;
    const colour = colourOf(
      mixed([...shares.values()].map(({ colour: one, count }) => [one, count] as const)),
    );
    known.set(key, colour);
    return colour;
  };
}

/** Neighbouring ends of one colour. */
function stripesOf(warp: readonly Rgb[]): (Stretch & { readonly hex: string; readonly colour: Rgb })[] {
  const stripes: { start: number; end: number; hex: string; colour: Rgb }[] = [];
  for (const [end, colour] of warp.entries()) {
    const hex = colourOf(colour);
    const last = stripes.at(-1);
    if (last?.hex === hex) last.end = end + 1;
    else stripes.push({ start: end, end: end + 1, hex, colour });
  }
  return stripes;
}

/** Ends of a stretch that are raised on a pick, counted a word at a time. */
function raisedIn(grid: BitGrid, pick: number, { start, end }: Stretch): number {
  let count = 0;
  for (let bit = start; bit < end; ) {
    const low = bit & 31;
    const take = Math.min(32 - low, end - bit);
    const mask = take === 32 ? -1 : ((1 << take) - 1) << low;
    count += onesIn(grid.words[pick * grid.stride + (bit >>> 5)]! & mask);
    bit += take;
  }
  return count;
}
