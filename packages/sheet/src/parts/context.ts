import type { Report } from "@drawcord/check";
import { projectOf, type Recipe } from "@drawcord/files";
import { palette } from "@drawcord/page";
import { checkRecipe } from "@drawcord/review";
import { type Plan, plan, toMetric, type UnitSystem } from "@drawcord/yarn";
import { type CardRow, cardRows, keyOf } from "../card/rows.js";
import { type CardSection, cardSections } from "../card/sections.js";
import { alike, isDark, type Rgb, readColour, setOff } from "../colour.js";
import { type Print, printIn } from "../numbers/say.js";
import type { PartName } from "../part-names.js";
import type { Closeness } from "../pictures/cloth.js";
import type { ThreadColours } from "../pictures/threads.js";
import type { Reading } from "../pictures/unit-threading.js";
import type { Corner, Spot } from "../pictures/window.js";
import type { Woven } from "../woven.js";

/** How a sheet is made. */
export interface SheetOptions {
  /** Which parts it has, in their order; default `shortParts`. */
  readonly parts?: readonly PartName[];
  /** In which units lengths, weights and setts are printed; default `metric`. */
  readonly units?: UnitSystem;
  /** Which way the unit threading is read; default `right-to-left`, as from the weaver's bench. */
  readonly reading?: Reading;
  /** What the drawdown shows: a corner, or a place by unit and row; default: where figure and ground meet. */
  readonly corner?: Corner | Spot;
}

/** What every part is made from. */
export interface Context {
  readonly recipe: Recipe;
  readonly woven: Woven;
  readonly report: Report;
  readonly plan: Plan;
  readonly colours: ThreadColours;
  readonly closeness: Closeness;
  /** Every row as it is woven. */
  readonly rows: readonly CardRow[];
  /** The rows under their headings, what repeats once. */
  readonly sections: readonly CardSection[];
  /** Prints a quantity in the units of the sheet. */
  readonly print: Print;
  readonly options: Required<Pick<SheetOptions, "units" | "reading">> & Pick<SheetOptions, "corner">;
  /** What the recipe leaves open that the pictures had to choose, a sentence each. */
  readonly chosen: readonly string[];
}

/** The recipe looked at once for all parts. */
export function contextOf(recipe: Recipe, woven: Woven, options: SheetOptions): Context {
  const rows = cardRows(woven, recipe.cloth.firstPickFrom ?? "left");
  const { closeness, missing } = closenessOf(recipe);
  const { colours, unknown } = coloursOf(recipe, woven);
  return {
    recipe,
    woven,
    report: checkRecipe(recipe, { causes: false }),
    plan: plan(projectOf(recipe)),
    colours,
    closeness,
    rows,
    sections: cardSections(rows.map(keyOf)),
    print: printIn(options.units ?? "metric"),
    options: {
      units: options.units ?? "metric",
      reading: options.reading ?? "right-to-left",
      ...(options.corner === undefined ? {} : { corner: options.corner }),
    },
    chosen: [...unknown, ...missing],
  };
}

function closenessOf({ cloth }: Recipe): { closeness: Closeness; missing: string[] } {
  const endsPerCm = cloth.sett === undefined ? undefined : toMetric(cloth.sett).value;
  const picksPerCm = cloth.picks === undefined ? undefined : toMetric(cloth.picks).value;
  const missing =
    endsPerCm === undefined && picksPerCm === undefined
      ? [
          "The recipe gives neither sett nor picks, so the cloth is drawn with square interlacements and not to scale.",
        ]
      : endsPerCm === undefined
        ? ["The recipe gives no sett; the cloth is drawn as close in the warp as in the weft."]
        : picksPerCm === undefined
          ? ["The recipe gives no picks; the cloth is drawn as close in the weft as in the warp."]
          : [];
  return {
    closeness: {
      ...(endsPerCm === undefined ? {} : { endsPerCm }),
      ...(picksPerCm === undefined ? {} : { picksPerCm }),
    },
    missing,
  };
}

function coloursOf({ yarns }: Recipe, woven: Woven): { colours: ThreadColours; unknown: string[] } {
  const unknown: string[] = [];
  const colourOf = (name: string, fallback: string): Rgb => {
    const colour = yarns.find((yarn) => yarn.name === name)?.colour;
    const read = colour === undefined ? undefined : readColour(colour);
    if (read !== undefined) return read;
    unknown.push(
      colour === undefined
        ? `The recipe names no colour for the ${threadName(name)}; the sheet drew one of its own.`
        : `The sheet does not know the colour "${colour}" of the ${threadName(name)}; it drew one of its own.`,
    );
    return readColour(fallback)!;
  };
  const warp = colourOf("warp", "natural");
  const wefts = new Map<string, Rgb>();
  for (const { weft = "weft" } of woven.draft.ground.steps) {
    if (!wefts.has(weft)) wefts.set(weft, colourOf(weft, weft === "weft" ? "blue" : palette.accent));
  }
  const { steps } = woven.draft.ground;
  for (const [name, colour] of wefts) {
    if (!alike(warp, colour)) continue;
    wefts.set(name, setOff(colour));
    unknown.push(
      `Warp and ${threadName(name)} are of one colour; the pictures draw the ${threadName(name)} a little ${isDark(colour) ? "lighter" : "darker"}, so that the weave can be seen.`,
    );
  }
  const weft = [...woven.expansion.stepOfPick].map((step) => wefts.get(steps[step]!.weft ?? "weft")!);
  return { colours: { warp, weft }, unknown };
}

function threadName(name: string): string {
  return name === "warp" || name === "weft" ? name : `${name} weft`;
}
