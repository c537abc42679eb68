import type { Ground } from "@drawcord/ground";
import { draftSize } from "@drawcord/units";
import type { Project, ProjectWeft, ProjectYarn } from "@drawcord/yarn";
import type { Recipe, RecipeYarn } from "./recipe/types.js";

/** The ground weft, in picks whose step names none. */
const GROUND_WEFT = "weft";

/**
 * What a recipe says of its project, for `plan` of `@drawcord/yarn`: ends, units and picks as they are threaded and lifted,
 * picks by weft as they are really woven, yarns, setts, losses and lengths. Nothing is worked out here.
 * @example projectOf(soundRecipe(text, "least")).ends // 4
 */
export function projectOf(recipe: Recipe): Project {
  const { cloth, draft, project, yarns } = recipe;
  const { ends, picks, units } = draftSize(draft);
  const warp = yarns.find(({ name }) => name === "warp");
  const { reed, sley, sett, picks: pickSett, drawIn, takeUp, shrinkage } = cloth;
  const { warp: warpLength, pieces, width, length, hems, fringe, gaps, sampling, waste } = project;
  return {
    ends,
    picks,
    units,
    // One for each unit, the static ones too.
    lingos: units,
    ...groundOf(draft.ground),
    ...(warp === undefined ? {} : { warp: yarnOf(warp) }),
    wefts: weftsOf(recipe, picks),
    ...known({ sett, pickSett, drawIn, takeUp, shrinkage }),
    ...known({ reed: reed?.value, sley: sley?.value }),
    ...known({ warpLength, pieces, width, length, hems, fringe, gaps, sampling, waste }),
  };
}

/** The wefts in the order in which they are first woven, with their picks. */
function weftsOf({ draft, yarns }: Recipe, picks: number): ProjectWeft[] {
  const { steps } = draft.ground;
  const counts = new Map<string, number>();
  steps.forEach(({ weft = GROUND_WEFT }, place) => {
    const woven = Math.max(0, Math.ceil((picks - place) / steps.length));
    if (woven > 0) counts.set(weft, (counts.get(weft) ?? 0) + woven);
  });
  return [...counts].map(([name, woven]) => {
    const yarn = yarns.find((one) => one.name === name);
    return { name, picks: woven, ...(yarn === undefined ? {} : yarnOf(yarn)) };
  });
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
  return { yarn: count.value, ...known({ fibre, colour, package: one, stock }) };
}

/** The parts of an object that are known. */
function known<T extends object>(parts: T): { [Name in keyof T]?: Exclude<T[Name], undefined> } {
  const found = Object.entries(parts).filter(([, value]) => value !== undefined);
  return Object.fromEntries(found) as { [Name in keyof T]?: Exclude<T[Name], undefined> };
}
