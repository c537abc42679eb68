import type { Ground } from "@drawcord/ground";
import { draftSize } from "@drawcord/units";
import type { Project, ProjectPiece, ProjectYarn } from "@drawcord/yarn";
import type { Recipe, RecipePiece, RecipeYarn } from "./recipe/types.js";

/**
 * What a recipe says of its project, for `plan` of `@drawcord/yarn`: ends, units and picks as they are threaded and lifted,
 * picks by weft as they are really woven, yarns, setts, losses and lengths. Nothing is worked out here.
 * @param recipe a recipe as `soundRecipe` gives it
 * @example projectOf(soundRecipe(text, "least")).ends // 4
 */
export function projectOf(recipe: Recipe): Project {
  const { cloth, draft, project, yarns } = recipe;
  const { ends, picks, units } = draftSize(draft);
  const { reed, sley, sett, picks: pickSett, drawIn, takeUp, shrinkage } = cloth;
  const { warp: warpLength, pieces, width, length, hems, fringe, gaps, sampling, waste, spare } = project;
  const designs = recipe.pieces.map(pieceOf);
  // A recipe that names no pieces leaves their number to the warp.
  const named = recipe.pieces.some(({ path }) => path.length > 0);
  const [only] = designs as [ProjectPiece];
  return {
    ends,
    picks,
    units,
    // One for each unit, the static ones too.
    lingos: units,
    ...groundOf(draft.ground),
    ...warpsOf(recipe, ends),
    wefts: wholeWefts(designs).map((weft) => ({ ...weft, ...yarnNamed(weft.name, yarns) })),
    ...known({ sett, pickSett, drawIn, takeUp, shrinkage }),
    ...known({ reed: reed?.value, sley: sley?.value }),
    ...(Object.keys(recipe.measured).length === 0 ? {} : { measured: recipe.measured }),
    ...known({ warpLength, width, hems, fringe, gaps, sampling, waste, spare }),
    ...(named && designs.length > 1
      ? { woven: designs }
      : known({ pieces: named ? only.count : pieces, length: only.length ?? length, over: only.over })),
  };
}

/** One design for the plan. */
function pieceOf({ count, draft, length, name, over, wefts }: RecipePiece): ProjectPiece {
  const { picks, rows } = draftSize(draft);
  const counts = new Map<string, number>();
  for (let pick = 0; pick < picks; pick++) {
    const weft = wefts[pick % wefts.length]!;
    counts.set(weft, (counts.get(weft) ?? 0) + 1);
  }
  return {
    name,
    count,
    rows,
    picks,
    wefts: [...counts].map(([weft, woven]) => ({ name: weft, picks: woven })),
    ...(over === 0 ? {} : { over }),
    ...(length === undefined ? {} : { length }),
  };
}

/** The wefts of all designs in the order in which they are first woven. */
function wholeWefts(designs: readonly ProjectPiece[]): { readonly name: string; readonly picks: number }[] {
  const counts = new Map<string, number>();
  for (const { wefts } of designs)
    for (const { name, picks } of wefts) counts.set(name, (counts.get(name) ?? 0) + picks);
  return [...counts].map(([name, picks]) => ({ name, picks }));
}

/** The yarn of the warp, or its yarns with their ends. */
function warpsOf({ warp: order, yarns }: Recipe, ends: number): Pick<Project, "warp" | "warps"> {
  const counts = new Map<string, number>();
  for (let end = 0; end < ends; end++) {
    const name = order[end % order.length]!;
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const [first = "warp", ...others] = counts.keys();
  const warp = yarnNamed(first, yarns);
  if (others.length === 0) return Object.keys(warp).length === 0 ? {} : { warp };
  return {
    warp,
    warps: [...counts].map(([name, count]) => ({ name, ends: count, ...yarnNamed(name, yarns) })),
  };
}

function yarnNamed(name: string, yarns: readonly RecipeYarn[]): ProjectYarn {
  const yarn = yarns.find((one) => one.name === name);
  return yarn === undefined ? {} : yarnOf(yarn);
}

/** One repeat of the ground where no unit is drawn; picks of a pattern weft are no part of it. */
function groundOf({ steps, threading }: Ground): Pick<Project, "ground"> {
  const picks = steps.filter(({ weft }) => weft === undefined).map(({ raise }) => new Set(raise));
  if (picks.length === 0 || threading.length === 0) return {};
  return {
    ground: {
      rows: picks.length,
      columns: threading.length,
      get: (pick, end) => picks[pick]!.has(threading[end]!),
    },
  };
}

function yarnOf({ colour, count, fibre, package: one, stock }: RecipeYarn): ProjectYarn {
  return known({ yarn: count?.value, fibre, colour, package: one, stock });
}

/** The parts of an object that are known. */
function known<T extends object>(parts: T): { [Name in keyof T]?: Exclude<T[Name], undefined> } {
  const found = Object.entries(parts).filter(([, value]) => value !== undefined);
  return Object.fromEntries(found) as { [Name in keyof T]?: Exclude<T[Name], undefined> };
}
