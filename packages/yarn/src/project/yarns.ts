import { tex } from "../count/tex.js";
import { calculate } from "../formula/calculate.js";
import type { Given } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";
import { toMetric } from "../quantity/convert.js";
import { type Quantity, quantity } from "../quantity/units.js";
import { calledYarn } from "./called.js";
import type { Plan, PlanYarn, Project, ProjectWeft, ProjectYarn } from "./types.js";

/** What is used of a yarn by its length. */
function used(name: string, yarn: ProjectYarn, length: Result): PlanYarn {
  const mass =
    yarn.yarn === undefined ? undefined : calculate("mass-of-length", { T: tex(yarn.yarn), l: length });
  const { package: one, stock } = yarn;
  const packages =
    one?.kind === "length"
      ? calculate("packages-by-length", { l: length, q: one })
      : one !== undefined && mass !== undefined
        ? calculate("packages-by-mass", { m: mass, q: one })
        : undefined;
  const need = stock?.kind === "length" ? length : mass;
  return {
    name,
    ...(yarn.colour === undefined ? {} : { colour: yarn.colour }),
    length,
    ...(mass === undefined ? {} : { mass }),
    ...(packages === undefined ? {} : { packages }),
    ...(stock === undefined || need === undefined
      ? {}
      : { enough: toMetric(stock).value >= toMetric(need).value }),
  };
}

/** Warp and weft of a project whose widths and lengths are planned. */
export function planYarns(
  project: Project,
  plan: Pick<Plan, "widthInReed" | "warpLength" | "pieces" | "picks">,
): Pick<Plan, "warpYarn" | "weftYarn" | "missing"> {
  const { warp = {}, wefts = [] } = project;
  const missing: string[] = [];
  if (warp.yarn === undefined) missing.push("weights of the warp need its yarn");
  for (const weft of wefts)
    if (weft.yarn === undefined) missing.push(`weights of the ${calledYarn(weft.name)} need its yarn`);
  const { pieces, picks, warpLength, widthInReed } = plan;
  const warpYarn =
    warpLength === undefined
      ? undefined
      : used("warp", warp, calculate("warp-yarn", { n: project.ends, L: warpLength }));
  const weftYarn =
    widthInReed === undefined || pieces.value === 0
      ? []
      : wefts.map((weft) => {
          const p = picksOf(weft, project, picks);
          const length = calculate("weft-yarn", { N: pieces, p, W: widthInReed });
          return { ...used(weft.name, weft, length), picks: p };
        });
  return { ...(warpYarn === undefined ? {} : { warpYarn }), weftYarn, missing };
}

/** Picks of one weft in a piece: its share of the draft's picks. */
function picksOf(weft: ProjectWeft, project: Project, picks: Quantity): Quantity {
  if (picks.value === project.picks) return quantity(weft.picks, "picks");
  return calculate("picks-of-a-weft", { P: picks, a: weft.picks, b: project.picks });
}

/** Weight of the finished cloth, from the yarn that lies in one piece; undefined where something is not known. */
export function planClothWeight(
  project: Project,
  plan: Pick<Plan, "finishedWidth" | "widthInReed" | "clothLength" | "picks">,
): Result | undefined {
  const { warp, wefts = [] } = project;
  const { clothLength, finishedWidth, picks, widthInReed } = plan;
  if (warp?.yarn === undefined || wefts.length === 0 || wefts.some(({ yarn }) => yarn === undefined))
    return undefined;
  if (clothLength === undefined || finishedWidth === undefined || widthInReed === undefined) return undefined;
  const inPiece = calculate("yarn-in-cloth", { L_c: clothLength, k: project.takeUp });
  const m_1 = calculate("mass-of-length", {
    T: tex(warp.yarn),
    l: calculate("warp-yarn", { n: project.ends, L: inPiece }),
  });
  const one: Given = quantity(1, "pieces");
  const m_2 = wefts.map((weft) =>
    calculate("mass-of-length", {
      T: tex(weft.yarn!),
      l: calculate("weft-yarn", { N: one, p: picksOf(weft, project, picks), W: widthInReed }),
    }),
  );
  const l = calculate("size-after-shrinkage", { b: clothLength, s: project.shrinkage?.length });
  return calculate("cloth-weight-of-piece", { m_1, m_2, w: finishedWidth, l });
}
