import type { ShaftDraft } from "@drawcord/check";
import { parseColour, type Rgb, toldApart } from "@drawcord/draw";
import type { ThreadColours } from "../pictures/threads.js";

/** The colours of a draft's threads: how they are drawn, and by which letter each is called. */
export interface PlainLook {
  readonly drawn: ThreadColours;
  /** The codes of the colours, those of the warp first; nothing for threads whose colour is not given. */
  readonly names: readonly string[];
  /** The place in `names` of the colour of each end and of each pick. */
  readonly ends: readonly number[];
  readonly picks: readonly number[];
  /** What the pictures had to choose, a sentence each. */
  readonly chosen: readonly string[];
}

/** Colours of the sheet's own, for threads of a draft that gives none. */
const OWN_WARP = "natural";
const OWN_WEFT = "blue";

/**
 * The colours of a draft. A weft that could not be told from the warp in a grey print is drawn lighter or darker than it is.
 * @param ends how many ends the draft has
 * @param picks how many picks
 */
export function lookOf({ warp, weft }: ShaftDraft, ends: number, picks: number): PlainLook {
  const names: string[] = [];
  const place = (name: string) => {
    const known = names.indexOf(name);
    return known < 0 ? names.push(name) - 1 : known;
  };
  const ofEnds = Array.from({ length: ends }, (_, end) =>
    place(warp.colours?.[end]?.toLowerCase() ?? "warp"),
  );
  const ofPicks = Array.from({ length: picks }, (_, pick) =>
    place(weft.colours?.[pick]?.toLowerCase() ?? "weft"),
  );
  const own = (name: string) => parseColour(name === "warp" ? OWN_WARP : name === "weft" ? OWN_WEFT : name)!;
  const drawn: Rgb[] = names.map(own);
  const isWarp = new Set(ofEnds);
  const chosen: string[] = [];
  for (const [i, colour] of drawn.entries()) {
    if (isWarp.has(i)) continue;
    drawn[i] = toldApart(colour, drawn.slice(0, i));
    if (drawn[i] !== colour) {
      chosen.push(
        `Colour ${names[i]} is drawn another shade than it is, so that it is told from the other threads in grey print too.`,
      );
    }
  }
  if (names.includes("warp"))
    chosen.push("The draft gives no colour for the warp; the sheet drew one of its own.");
  if (names.includes("weft"))
    chosen.push("The draft gives no colour for the weft; the sheet drew one of its own.");
  return {
    drawn: { warp: ofEnds.map((i) => drawn[i]!), weft: ofPicks.map((i) => drawn[i]!) },
    names,
    ends: ofEnds,
    picks: ofPicks,
    chosen,
  };
}
