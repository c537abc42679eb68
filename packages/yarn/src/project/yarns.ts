import { tex } from "../count/tex.js";
import { calculate } from "../formula/calculate.js";
import type { Given } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";
import { type Quantity, quantity } from "../quantity/units.js";
import { calledYarn } from "./called.js";
import type { Design } from "./length.js";
import type { Plan, PlanPiece, PlanYarn, Project, ProjectPiece, ProjectWarp, ProjectYarn } from "./types.js";

/** What is used of a yarn by its length. */
function used(name: string, yarn: ProjectYarn, length: Result): PlanYarn {
  const mass = massOf(yarn, length);
  return {
    name,
    ...(yarn.colour === undefined ? {} : { colour: yarn.colour }),
    length,
    ...(mass === undefined ? {} : { mass }),
  };
}

function massOf({ yarn }: ProjectYarn, length: Result): Result | undefined {
  return yarn === undefined ? undefined : calculate("mass-of-length", { T: tex(yarn), l: length });
}

/** What the yarns need of the plan so far. */
type Sofar = Pick<Plan, "widthInReed" | "warpLength"> & { readonly designs: readonly Design[] };

/** Warp and weft of a project whose widths and lengths are planned; the designs with their wefts. */
export function planYarns(
  project: Project,
  plan: Sofar,
): Pick<Plan, "warpYarn" | "warpYarns" | "weftYarn" | "woven" | "missing"> {
  const { wefts = [] } = project;
  const { designs, warpLength, widthInReed } = plan;
  const warps = warpsOf(project);
  const missing: string[] = [];
  for (const warp of warps)
    if (warp.yarn === undefined) missing.push(`weights of the ${calledYarn(warp.name)} need its yarn`);
  for (const weft of wefts)
    if (weft.yarn === undefined) missing.push(`weights of the ${calledYarn(weft.name)} need its yarn`);
  const warpYarns =
    warpLength === undefined
      ? []
      : warps.map((warp) => used(warp.name, warp, calculate("warp-yarn", { n: warp.ends, L: warpLength })));
  const warpYarn = wholeWarp(project, warpYarns, warpLength);
  const woven = designs.map((design): PlanPiece => {
    const { of, ...known } = design;
    return { ...known, wefts: widthInReed === undefined ? [] : weftsOf(project, design, widthInReed) };
  });
  const weftYarn = wefts.flatMap((weft) => {
    const parts = woven.flatMap((piece) => piece.wefts.filter(({ name }) => name === weft.name));
    if (parts.length === 0) return [];
    const samples = samplesOf(weft.name, project, designs, widthInReed!);
    const lengths = [...parts.map(({ length }) => length), ...(samples === undefined ? [] : [samples])];
    const length = lengths.length === 1 ? lengths[0]! : calculate("yarns-together", { Y_i: lengths });
    const picks = designs.length === 1 ? picksOf(weft.name, designs[0]!) : undefined;
    return [
      {
        ...used(weft.name, weft, length),
        ...(samples === undefined ? {} : { samples }),
        ...(picks === undefined ? {} : { picks }),
      },
    ];
  });
  return { ...(warpYarn === undefined ? {} : { warpYarn }), warpYarns, weftYarn, woven, missing };
}

/**
 * The yarns of the warp, the only one too.
 * @example warpsOf({ ends: 4, picks: 8 })[0].ends // 4
 */
export function warpsOf({ ends, warp = {}, warps = [] }: Project): readonly ProjectWarp[] {
  return warps.length > 0 ? warps : [{ name: "warp", ends, ...warp }];
}

/** The warp as a whole: of several yarns their weights together, where each is known. */
function wholeWarp(
  { ends }: Project,
  yarns: readonly PlanYarn[],
  L: Quantity | undefined,
): PlanYarn | undefined {
  if (yarns.length < 2 || L === undefined) return yarns[0];
  const masses = yarns.flatMap(({ mass }) => mass ?? []);
  return {
    name: "warp",
    length: calculate("warp-yarn", { n: ends, L }),
    ...(masses.length < yarns.length ? {} : { mass: calculate("weights-together", { m_i: masses }) }),
  };
}

/** The wefts of all pieces of a design. */
function weftsOf(project: Project, design: Design, W: Quantity): PlanPiece["wefts"] {
  if (design.count.value === 0) return [];
  return design.of.wefts.map(({ name }) => {
    const length = calculate("weft-yarn", { N: design.count, p: picksOf(name, design), W });
    const mass = massOf(yarnNamed(name, project), length);
    return { name, length, ...(mass === undefined ? {} : { mass }) };
  });
}

function yarnNamed(name: string, { wefts = [] }: Project): ProjectYarn {
  return wefts.find((weft) => weft.name === name) ?? {};
}

/** Picks of one weft in a piece: its share of the draft's picks. */
function picksOf(name: string, { of, picks }: Pick<Design, "of" | "picks">): Quantity {
  const drawn = wovenWith(name, of);
  if (picks.value === of.picks) return quantity(drawn, "picks");
  return calculate("picks-of-a-weft", { P: picks, a: drawn, b: of.picks });
}

function wovenWith(name: string, { wefts }: ProjectPiece): number {
  return wefts.find((weft) => weft.name === name)?.picks ?? 0;
}

/** What of a weft goes into the warp for samples, woven as the designs are; undefined where there is none or it is not known. */
function samplesOf(
  name: string,
  { pickSett, sampling, takeUp }: Project,
  designs: readonly Design[],
  W: Quantity,
): Result | undefined {
  if (sampling === undefined || sampling.value === 0 || pickSett === undefined) return undefined;
  const drawn = designs.reduce((sum, { of }) => sum + of.picks, 0);
  if (drawn === 0) return undefined;
  const c = calculate("cloth-of-samples", { q: sampling, k: takeUp });
  const picks = calculate("picks-in-length", { P: pickSett, c });
  const a = designs.reduce((sum, { of }) => sum + wovenWith(name, of), 0);
  const p = a === drawn ? picks : calculate("picks-of-a-weft", { P: picks, a, b: drawn });
  return calculate("weft-yarn", { p, W, N: samples });
}

const samples: Given = { value: 1, unit: "", kind: "number" };

/** Weight of the finished cloth, from the yarn that lies in one piece; undefined where something is not known. */
export function planClothWeight(
  project: Project,
  plan: Pick<Plan, "finishedWidth" | "widthInReed"> & { readonly designs: readonly Design[] },
): Result | undefined {
  const warps = warpsOf(project);
  const [design] = plan.designs as [Design];
  const { finishedWidth, widthInReed } = plan;
  const { clothLength, of } = design;
  const yarns = of.wefts.map(({ name }) => ({ name, yarn: yarnNamed(name, project).yarn }));
  if (
    warps.some(({ yarn }) => yarn === undefined) ||
    yarns.length === 0 ||
    yarns.some(({ yarn }) => yarn === undefined)
  )
    return undefined;
  if (clothLength === undefined || finishedWidth === undefined || widthInReed === undefined) return undefined;
  const inPiece = calculate("yarn-in-cloth", { L_c: clothLength, k: project.takeUp });
  const [first, ...others] = warps.map(({ ends, yarn }) =>
    calculate("mass-of-length", {
      T: tex(yarn!),
      l: calculate("warp-yarn", { n: ends, L: inPiece }),
    }),
  ) as [Result, ...Result[]];
  const m_1 = others.length === 0 ? first : calculate("weights-together", { m_i: [first, ...others] });
  const one: Given = quantity(1, "pieces");
  const m_2 = yarns.map(({ name, yarn }) =>
    calculate("mass-of-length", {
      T: tex(yarn!),
      l: calculate("weft-yarn", { N: one, p: picksOf(name, design), W: widthInReed }),
    }),
  );
  const l = calculate("size-after-shrinkage", { b: clothLength, s: project.shrinkage?.length });
  return calculate("cloth-weight-of-piece", { m_1, m_2, w: finishedWidth, l });
}
