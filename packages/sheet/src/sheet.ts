import type { Recipe } from "@drawcord/files";
import { draftSize } from "@drawcord/units";
import { SheetError } from "./error.js";
import { type PartName, partNames, type Sheet, type SheetPart, shortParts } from "./part-names.js";
import { cautionsPart } from "./parts/cautions.js";
import { chartPart } from "./parts/chart.js";
import { clothPart } from "./parts/cloth.js";
import { type Context, contextOf, type SheetOptions } from "./parts/context.js";
import { cornerPart } from "./parts/corner.js";
import { findingsPart } from "./parts/findings.js";
import { groundPart } from "./parts/ground.js";
import { liftsPart } from "./parts/lifts.js";
import { counted } from "./parts/number.js";
import { projectPart } from "./parts/project.js";
import { threadingPart } from "./parts/threading.js";
import { warpingPart } from "./parts/warping.js";
import { workingPart } from "./parts/working.js";
import { weave } from "./woven.js";

/** More rows or units than this fill more paper than a weaver can turn over. */
const MOST_ROWS = 20_000;
const MOST_UNITS = 10_000;

/** A piece longer than this many times its width, or wider, leaves nothing to see at the scale of a page. */
const MOST_SLENDER = 200;

/**
 * The sheet of a recipe as data, all of it that a weaver needs or the parts asked for; every format is a rendering of it.
 * @throws {SheetError} `too-long` for a piece that no paper holds, `unknown-colour` for a colour that cannot be read
 * @throws {UnitsError} for a draft that cannot be worked out
 * @throws {YarnError} for a project whose numbers cannot be
 * @example makeSheet(recipe).parts[0].name // "cloth"
 */
export function makeSheet(recipe: Recipe, options: SheetOptions = {}): Sheet {
  const { parts = shortParts } = options;
  checkSize(recipe);
  const woven = weave(recipe.draft);
  const context = contextOf(recipe, woven, options);
  const { ends, picks, unitSpans, rowSpans } = woven;
  return {
    title: recipe.title ?? "A cloth without a name",
    subtitle: [
      counted(ends, "end"),
      counted(picks, "pick"),
      counted(unitSpans.length, "unit"),
      counted(rowSpans.length, "row"),
    ].join(", "),
    parts: partNames
      .filter((name) => parts.includes(name))
      .map((name) => builders[name](context))
      .filter(({ blocks }) => blocks.length > 0),
  };
}

const builders: Readonly<Record<PartName, (context: Context) => SheetPart>> = {
  cloth: clothPart,
  project: projectPart,
  warping: warpingPart,
  threading: threadingPart,
  ground: groundPart,
  chart: chartPart,
  lifts: liftsPart,
  cautions: cautionsPart,
  corner: cornerPart,
  working: workingPart,
  findings: findingsPart,
};

/** Before the cloth is worked out, so that a slip of a thousand is told and not drawn. */
function checkSize({ draft }: Recipe): void {
  const rows = draft.lifts.length;
  const units = draft.threading.length;
  if (rows > MOST_ROWS || units > MOST_UNITS) {
    throw new SheetError(
      "too-long",
      `the cloth has ${rows} rows and ${units} units; a sheet holds up to ${MOST_ROWS} rows and ${MOST_UNITS} units`,
      { rows, units, mostRows: MOST_ROWS, mostUnits: MOST_UNITS },
    );
  }
  const { ends, picks } = draftSize(draft);
  const slender = Math.max(ends / picks, picks / ends);
  if (slender > MOST_SLENDER) {
    throw new SheetError(
      "too-long",
      `a piece of ${ends} ends and ${picks} picks is ${Math.floor(slender)} times as long one way as the other and fits no paper; a sheet shows up to ${MOST_SLENDER} times`,
      { ends, picks, most: MOST_SLENDER },
    );
  }
}
