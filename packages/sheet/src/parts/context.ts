import type { Watched } from "@drawcord/base";
import { blocksOfPiece, firstPickSide, projectOf, type Recipe } from "@drawcord/files";
import { checkRecipe, type Review } from "@drawcord/review";
import { type OwnNumber, type Plan, plan, toMetric, type UnitSystem } from "@drawcord/yarn";
import { type CardRow, cardKey, cardRows, type ShuttleSide } from "../card/rows.js";
import { type CardSection, cardSections } from "../card/sections.js";
import { type Print, printIn } from "../numbers/say.js";
import { type PartName, shortParts } from "../part-names.js";
import type { ThreadsPerCm } from "../pictures/cloth.js";
import { coloursOf } from "../pictures/colours-of.js";
import type { ThreadColours } from "../pictures/threads.js";
import type { ReadingDirection } from "../pictures/unit-threading.js";
import type { ClothSpot, Corner } from "../pictures/window.js";
import type { Woven } from "../woven.js";

/** How a sheet is made, and watched: `progress` is told of each part that is made. */
export interface SheetOptions extends Watched {
  /** Which parts it has, in their order; default `shortParts`. */
  readonly parts?: readonly PartName[];
  /** In which units lengths, weights and setts are printed; default `metric`. */
  readonly units?: UnitSystem;
  /** Which way the unit threading is read; default `right-to-left`, as from the weaver's bench. */
  readonly reading?: ReadingDirection;
  /** Numbers by formulas of the recipe's own, as `ownNumbers` of `@drawcord/files` works them out; default none. */
  readonly own?: readonly OwnNumber[];
  /** What the drawdown shows: a corner, or a place by unit and row; default: where figure and ground meet. */
  readonly corner?: Corner | ClothSpot;
}

/** What every part is made from. */
export interface Context {
  readonly recipe: Recipe;
  readonly woven: Woven;
  /** What `drawcord check` says of the recipe, causes and all. */
  readonly report: Review;
  readonly plan: Plan;
  readonly colours: ThreadColours;
  readonly closeness: ThreadsPerCm;
  /** Every row as it is woven. */
  readonly rows: readonly CardRow[];
  /** The rows under their headings, what repeats once. */
  readonly sections: readonly CardSection[];
  /** Prints a quantity in the units of the sheet. */
  readonly print: Print;
  readonly options: Required<Pick<SheetOptions, "units" | "reading">> & Pick<SheetOptions, "corner">;
  /** Whether the part of the ground, which says the whole caution about lifts, is on the sheet too. */
  readonly withGround: boolean;
  /** What the recipe leaves open that the pictures had to choose, a sentence each. */
  readonly chosen: readonly string[];
}

/** What is the same for all pieces on a warp. */
export type OfWarp = Pick<Context, "report" | "plan">;

/** What is known of all that is woven on the warp of a recipe. */
export function warpOf(recipe: Recipe, { own = [], signal }: SheetOptions = {}): OfWarp {
  const worked = plan(projectOf(recipe));
  return {
    report: checkRecipe(recipe, signal && { signal }),
    plan: own.length === 0 ? worked : { ...worked, own },
  };
}

/** A recipe that is a single piece, looked at once for all parts. */
export function contextOf(recipe: Recipe, woven: Woven, ofWarp: OfWarp, options: SheetOptions): Context {
  const rows = cardRows(woven, firstSides(recipe, woven));
  const { closeness, missing } = closenessOf(recipe);
  const { colours, unknown } = coloursOf(recipe, woven);
  return {
    recipe,
    woven,
    ...ofWarp,
    colours,
    closeness,
    rows,
    sections: cardSections(rows.map(cardKey), blocksOfPiece(recipe.pieces[0]!)),
    print: printIn(options.units ?? "metric"),
    options: {
      units: options.units ?? "metric",
      reading: options.reading ?? "right-to-left",
      ...(options.corner === undefined ? {} : { corner: options.corner }),
    },
    withGround: (options.parts ?? shortParts).includes("ground"),
    chosen: [...unknown, ...missing],
  };
}

function closenessOf({ cloth }: Recipe): { closeness: ThreadsPerCm; missing: string[] } {
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

/** The side from which the first pick of each weft is thrown. */
function firstSides(
  { cloth }: Recipe,
  { draft, expansion, weftOfPick, wefts }: Woven,
): readonly ShuttleSide[] {
  return wefts.map((yarn, i) => {
    const step = expansion.stepOfPick[weftOfPick.indexOf(i)] ?? 0;
    return firstPickSide(cloth, yarn, draft.ground.steps[step]?.weft ?? "weft");
  });
}
