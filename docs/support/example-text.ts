import { type Example, exampleFacts, type ProjectFacts } from "@drawcord/check";
import { type RecipeData, type RecipeYarn, type StatedName, writeRecipe, writeWif } from "@drawcord/files";
import { type BitGrid, fromText } from "@drawcord/grid";
import type { UnitDraft } from "@drawcord/units";
import {
  parseYarn,
  printReed,
  printSley,
  printYarn,
  type Quantity,
  quantity,
  toMetric,
  type Yarn,
} from "@drawcord/yarn";

import { asWideAsOrder, coloursText } from "./example-colours.js";
import { withNamedGround, withUnlikeRows } from "./example-ground.js";
import { filledLength, inBlocks } from "./example-order.js";

/** What an example asks for. */
type Options = NonNullable<Example["options"]>;

/** Where a value stands that was written by nobody. */
const NOWHERE = { file: "", line: 1, column: 1, offset: 0, end: { line: 1, column: 1, offset: 0 } };

/**
 * An example of a rule as a text that the bench opens: a recipe with what the example asks for, or a draft for shafts.
 * @param example a small cloth of a rule
 */
export function exampleText({ title, cloth, options = {}, project }: Example): string {
  if (typeof cloth !== "string" && "shafts" in cloth) return writeWif({ ...cloth, title });
  const draft =
    typeof cloth === "string"
      ? onShafts(fromText(cloth))
      : withUnlikeRows(asWideAsOrder(cloth, options), options);
  const { woven } = options;
  const facts = {
    ...(project !== undefined && exampleFacts(project)),
    ...(woven !== undefined && filledLength(draft, woven)),
  };
  const text = writeRecipe(recipeOf(title, draft, options, facts));
  const named = withNamedGround(text, options);
  return (woven === undefined ? named : inBlocks(named, draft, woven)) + coloursText(options);
}

/** Any drawdown as a recipe on ground shafts alone: no unit is ever drawn. */
function onShafts(grid: BitGrid): UnitDraft {
  const lines = (count: number, line: (i: number) => string) =>
    Array.from({ length: count }, (_, i) => line(i));
  const ends = lines(grid.columns, (end) =>
    lines(grid.rows, (pick) => `${Number(grid.get(pick, end))}`).join(""),
  );
  const kinds = [...new Set(ends)];
  const threading = ends.map((end) => kinds.indexOf(end) + 1);
  const shafts = kinds.map((_, i) => i + 1);
  const steps = lines(grid.rows, (pick) => `${pick}`).map((_, pick) => ({
    raise: shafts.filter((_, i) => kinds[i]![pick] === "1"),
    sink: shafts.filter((_, i) => kinds[i]![pick] === "0"),
  }));
  return {
    ground: { shafts: kinds.length, threading, steps },
    unitEnds: 1,
    threading: ends.map(() => []),
    lifts: steps.map(() => []),
    picksPerRow: 1,
  };
}

function recipeOf(
  title: string,
  draft: UnitDraft,
  options: Options,
  facts: Partial<ProjectFacts>,
): RecipeData {
  const { sett, limits = {}, loom = {}, levels = {}, stated = [], waive = [] } = options;
  const { endsPerCm, picksPerCm } = sett ?? {};
  const { reedWidth, ...has } = loom;
  const given = {
    sett:
      facts.sett ??
      settOfWidth(draft, options) ??
      (endsPerCm === undefined ? undefined : quantity(endsPerCm, "per cm")),
    picks: facts.pickSett ?? (picksPerCm === undefined ? undefined : quantity(picksPerCm, "per cm")),
    reed: facts.reed && { ...NOWHERE, text: printReed(facts.reed), value: facts.reed },
    sley: facts.sley && { ...NOWHERE, text: printSley(facts.sley), value: facts.sley },
    drawIn: facts.drawIn,
    takeUp: facts.takeUp,
    shrinkage: facts.shrinkage,
    reedWidth: reedWidth === undefined ? undefined : quantity(reedWidth, "mm"),
    firstPickFrom: options.firstPickFrom,
    repeat: options.repeat,
  };
  const plan = {
    pieces: facts.pieces,
    warp: facts.warpLength,
    width: facts.width,
    length: facts.length,
    hems: facts.hems,
    fringe: facts.fringe,
    gaps: facts.gaps,
    sampling: facts.sampling,
    waste: facts.waste,
    spare: facts.spare,
  };
  const { weavingWidth, ...counts } = has;
  return {
    title,
    draft,
    ...(options.staticShaft === undefined ? {} : { staticShaft: options.staticShaft }),
    yarns: [
      yarnOf("warp", facts.warp),
      ...(facts.wefts ?? []).map((weft) => yarnOf(weft.name, weft)),
    ].flatMap((yarn) => yarn ?? []),
    cloth: known(given),
    project: known(plan),
    loom: {
      ...counts,
      ...known({
        weavingWidth: weavingWidth === undefined ? undefined : quantity(weavingWidth, "mm"),
        lingoWeight: facts.lingoWeight,
      }),
    },
    limits,
    levels: known(levels) as RecipeData["levels"],
    waive,
    stated: stated.map(({ name, claim, unit }) => ({
      ...NOWHERE,
      name: name as StatedName,
      text: `${claim}`,
      claim: quantity(claim, COUNTED.has(unit) ? "" : (unit as "mm")),
    })),
  };
}

/** The sett at which the cloth has the width in the reed that an example says was worked out. */
function settOfWidth({ threading, unitEnds }: UnitDraft, { stated = [] }: Options): Quantity | undefined {
  const width = stated.find(({ found, name }) => name === "width-in-reed" && found !== undefined);
  if (width === undefined || typeof unitEnds !== "number") return undefined;
  const { unit, value } = toMetric(quantity(width.found!, width.unit as "in"));
  return unit === "mm" ? quantity((threading.length * unitEnds * 10) / value, "per cm") : undefined;
}

/** What stated numbers may count. */
const COUNTED = new Set(["", "ends", "picks", "units", "rows", "threads", "pieces", "lingos"]);

function yarnOf(
  name: string,
  given: ({ readonly yarn?: Yarn | string; readonly fibre?: string } & object) | undefined,
): RecipeYarn | undefined {
  if (given?.yarn === undefined) return undefined;
  const value = typeof given.yarn === "string" ? parseYarn(given.yarn) : given.yarn;
  const { yarn: _, picks: __, name: ___, ...rest } = given as Record<string, unknown>;
  return { ...rest, name, count: { ...NOWHERE, text: printYarn(value), value } };
}

/** The parts of an object that are known. */
function known<T extends object>(parts: T): { [Name in keyof T]?: Exclude<T[Name], undefined> } {
  const found = Object.entries(parts).filter(([, value]) => value !== undefined);
  return Object.fromEntries(found) as { [Name in keyof T]?: Exclude<T[Name], undefined> };
}
