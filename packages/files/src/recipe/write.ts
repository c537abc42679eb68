import { type Limit, type Limits, limits, type Span, type Waiver } from "@drawcord/check";
import { commonSize, printLifts, printShafts, printThreading, type UnitDraft } from "@drawcord/units";
import { printQuantity, type Quantity } from "@drawcord/yarn";
import { stringify } from "yaml";
import { formatRecipe } from "./format.js";
import { namedGround } from "./named-ground.js";
import { piecesText, standsInPieces, weftsText } from "./pieces/write.js";
import { printYarnOrder } from "./pieces/yarn-order.js";
import type { Recipe, RecipeFormula, RecipeYarn } from "./types.js";

/** What a recipe says, without the file that says it. */
export type RecipeData = Omit<
  Recipe,
  "file" | "text" | "version" | "unread" | "pieces" | "warp" | "measured" | "formulas" | "draft"
> &
  Partial<Pick<Recipe, "pieces" | "warp" | "measured" | "formulas">> & {
    /** The design: ground, threading and lifts. */
    readonly draft: UnitDraft;
  };

/**
 * Writes a recipe in its canonical layout, so that it reads back as the same. To change a recipe that someone wrote, with
 * its comments, use `reviseRecipe`.
 * @param recipe what it is to say; `soundRecipe` gives such data too
 * @throws {FileError} for data that no recipe may hold
 * @example soundRecipe(writeRecipe(soundRecipe(text, "least")), "again").draft.threading // [[1], [2]]
 */
export function writeRecipe(recipe: RecipeData): string {
  const {
    draft,
    cloth,
    project,
    loom,
    limits,
    levels,
    measured = {},
    formulas = [],
    pieces = [],
    warp = ["warp"],
  } = recipe;
  const inPieces = standsInPieces(pieces);
  const document = {
    recipe: 1,
    title: recipe.title,
    ground: groundOf(recipe),
    units: {
      ends: counts(draft.unitEnds),
      threading: printThreading(draft.threading),
      static: recipe.staticShaft,
    },
    ...(inPieces
      ? { pieces: piecesText(pieces, { counts, limits: limitsOf }) }
      : { lifts: { picks: counts(draft.picksPerRow), rows: printLifts(draft.lifts) } }),
    colours: {
      warp: warp.every((yarn) => yarn === "warp") ? undefined : printYarnOrder(warp),
      ...(inPieces || pieces.length === 0 ? {} : weftsText({ draft, wefts: pieces[0]!.wefts })),
    },
    yarns: Object.fromEntries(recipe.yarns.map((yarn) => [yarn.name, yarnOf(yarn)])),
    cloth: {
      sett: text(cloth.sett),
      picks: text(cloth.picks),
      reed: cloth.reed?.text,
      sley: cloth.sley?.text,
      "reed-width": text(cloth.reedWidth),
      "draw-in": text(cloth.drawIn),
      "take-up": text(cloth.takeUp),
      shrinkage: { width: text(cloth.shrinkage?.width), length: text(cloth.shrinkage?.length) },
      "first-pick-from": cloth.firstPickOf ?? cloth.firstPickFrom,
      repeat: cloth.repeat,
    },
    project: Object.fromEntries(
      Object.entries(project).map(([key, value]) => [key, typeof value === "number" ? value : text(value)]),
    ),
    measured: {
      "width-in-reed": text(measured.widthInReed),
      width: text(measured.width),
      "washed-width": text(measured.washedWidth),
      warp: text(measured.warp),
      length: text(measured.length),
      "washed-length": text(measured.washedLength),
      picks: measured.picks,
      over: text(measured.over),
      square: text(measured.square),
      "square-weight": text(measured.squareWeight),
    },
    loom: {
      "pattern-shafts": loom.patternShafts,
      "ground-shafts": loom.groundShafts,
      treadles: loom.treadles,
      lingos: loom.lingos,
      heddles: loom.heddles,
      "lingo-weight": text(loom.lingoWeight),
      "weaving-width": text(loom.weavingWidth),
      action: loom.action,
    },
    limits: { ...limitsOf(limits), levels },
    waive: recipe.waive.length === 0 ? undefined : recipe.waive.map(waiverOf),
    stated: Object.fromEntries(
      recipe.stated.map(({ name, claim }) => [name, claim.kind === "number" ? claim.value : text(claim)]),
    ),
    formulas: formulas.length === 0 ? undefined : formulas.map(formulaText),
    notes: recipe.notes,
  };
  return formatRecipe(stringify(withoutGaps(document), { lineWidth: 0 }), "recipe");
}

function formulaText({ symbols, ...rest }: RecipeFormula): unknown {
  const ofSymbols = Object.entries(symbols).map(([name, { value, ...symbol }]) => [
    name,
    { ...symbol, value: value?.kind === "number" ? value.value : text(value) },
  ]);
  return { ...rest, symbols: Object.fromEntries(ofSymbols) };
}

/** Plain data without the keys that have no value, and without the sections that this leaves empty. */
function withoutGaps(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutGaps);
  if (typeof value !== "object" || value === null) return value;
  const filled = Object.entries(value)
    .map(([key, item]) => [key, withoutGaps(item)] as const)
    .filter(([, item]) => item !== undefined);
  return filled.length === 0 ? undefined : Object.fromEntries(filled);
}

function text(quantity: Quantity | undefined): string | undefined {
  return quantity === undefined ? undefined : printQuantity(quantity);
}

/** A number for all, or the numbers in a text such as `4*10 6`. */
function counts(numbers: number | readonly number[]): number | string {
  if (typeof numbers === "number") return numbers;
  const all = commonSize(numbers);
  if (all !== undefined) return all;
  const words: string[] = [];
  for (let i = 0; i < numbers.length; ) {
    let times = 1;
    while (numbers[i + times] === numbers[i]) times++;
    words.push(times === 1 ? String(numbers[i]) : `${numbers[i]}*${times}`);
    i += times;
  }
  return words.join(" ");
}

/** The ground by its name where that gives the same, else step by step. */
function groundOf({ draft, weave }: RecipeData): unknown {
  const { ground, selvedge } = draft;
  const ends = (shafts: readonly number[] | undefined) =>
    shafts && printThreading(shafts.map((shaft) => [shaft]));
  return {
    ...(namedGround(weave, draft) ?? {
      shafts: ground.shafts,
      threading: ends(ground.threading),
      steps: ground.steps.map(({ raise, sink, weft }) => ({
        raise: printShafts(raise),
        sink: printShafts(sink),
        weft,
      })),
    }),
    selvedge: { left: ends(nonEmpty(selvedge?.left)), right: ends(nonEmpty(selvedge?.right)) },
  };
}

function nonEmpty<T>(list: readonly T[] | undefined): readonly T[] | undefined {
  return list?.length === 0 ? undefined : list;
}

function yarnOf({ count, fibre, colour, package: cone, stock }: RecipeYarn): unknown {
  return { count: count?.text, fibre, colour, package: text(cone), stock: text(stock) };
}

/** The section `limits`, by the list of all limits. */
function limitsOf(set: Limits): Readonly<Record<string, unknown>> {
  const values = set as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    (limits as readonly Limit[]).map((limit) => {
      const { apart = {}, byWeft, key, name } = limit;
      const wefts = Object.entries({ ...((byWeft === undefined ? {} : values[byWeft]) as object) });
      const parted = Object.values(apart).some((part) => values[part] !== undefined) || wefts.length > 0;
      if (!parted) return [key, limitText(values[name], limit)];
      // What is set for the whole holds for the parts that have none of their own.
      const parts = Object.entries(apart).map(([of, part]) => [of, values[part] ?? values[name]] as const);
      const all = [...parts, ...wefts].map(([of, value]) => [of, limitText(value, limit)]);
      return [key, Object.fromEntries(all)];
    }),
  );
}

function limitText(value: unknown, { kind, things = "" }: Limit): number | string | undefined {
  if (value === undefined) return undefined;
  if (kind === "share" || kind === "percent") return `${value as number} %`;
  if (kind !== "size") return value as number;
  const { mm, [things]: count } = value as Readonly<Record<string, number | undefined>>;
  return count ?? (mm === undefined ? undefined : `${mm} mm`);
}

function waiverOf({ rule, reason, ends, picks, units, rows }: Waiver<string>): unknown {
  const span = (of: Span | undefined) => of && (of[0] === of[1] ? of[0] : `${of[0]}-${of[1]}`);
  return { rule, reason, ends: span(ends), picks: span(picks), units: span(units), rows: span(rows) };
}
