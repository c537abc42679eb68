import { isDark, parseColour, type Rgb, toldApart } from "@drawcord/draw";
import type { Recipe } from "@drawcord/files";
import { palette } from "@drawcord/page";
import type { Woven } from "../woven.js";
import type { ThreadColours } from "./threads.js";

/**
 * The colours of a cloth's threads, by the yarn of each end and pick. Wefts are drawn lighter or darker than they are where
 * they could not be told from the warp and from one another in a grey print.
 * @returns the colours, and what the pictures had to choose, a sentence each
 */
export function coloursOf(recipe: Recipe, woven: Woven): { colours: ThreadColours; unknown: string[] } {
  const { yarns, warp } = recipe;
  const unknown: string[] = [];
  const colourOf = (name: string, fallback: string): Rgb => {
    const colour = yarns.find((yarn) => yarn.name === name)?.colour;
    const read = colour === undefined ? undefined : parseColour(colour);
    if (read !== undefined) return read;
    unknown.push(
      colour === undefined
        ? `The recipe names no colour for the ${threadName(name)}; the sheet drew one of its own.`
        : `The sheet does not know the colour "${colour}" of the ${threadName(name)}; it drew one of its own.`,
    );
    return parseColour(fallback)!;
  };
  const ends = new Map([...new Set(warp)].map((name) => [name, colourOf(name, "natural")]));
  const used: Rgb[] = [...ends.values()];
  const wefts = woven.wefts.map((name, i) => {
    const colour = ends.get(name) ?? colourOf(name, i === 0 || name === "weft" ? "blue" : palette.accent);
    const drawn = toldApart(colour, used);
    used.push(drawn);
    if (drawn !== colour) {
      unknown.push(
        `The ${threadName(name)} is drawn ${isDark(colour) ? "lighter" : "another shade"} than it is, so that it is told from the other threads in grey print too.`,
      );
    }
    return drawn;
  });
  return {
    colours: {
      warp: Array.from({ length: woven.ends }, (_, end) => ends.get(warp[end % warp.length]!)!),
      weft: woven.weftOfPick.map((weft) => wefts[weft]!),
    },
    unknown,
  };
}

function threadName(name: string): string {
  return name === "warp" || name === "weft" ? name : `${name} yarn`;
}
