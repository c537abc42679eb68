import { parseYarn } from "../count/parse.js";
import { printYarn } from "../count/print.js";
import { tex } from "../count/tex.js";
import { calculate } from "../formula/calculate.js";
import type { Result } from "../formula/work-out.js";
import { toMetric } from "../quantity/convert.js";
import type { Quantity } from "../quantity/units.js";
import type { Plan, PlanPurchase, PlanYarn, Project, ProjectYarn } from "./types.js";
import { warpsOf } from "./yarns.js";

/** A use of a yarn, and what the project says of the yarn. */
interface Use {
  readonly of: PlanYarn;
  readonly yarn: ProjectYarn;
}

/**
 * The yarns to have for a plan: what is alike in count, fibre, colour and package is bought together, something is spared for
 * mistakes, and the stock is taken off. Of a stock that two wefts alike both state there is one.
 */
export function planPurchases(project: Project, plan: Pick<Plan, "warpYarns" | "weftYarn">): PlanPurchase[] {
  const { wefts = [] } = project;
  const warps = warpsOf(project);
  const uses: Use[] = [
    ...plan.warpYarns.map((of, i) => ({ of, yarn: warps[i]! })),
    ...plan.weftYarn.map((of) => ({ of, yarn: wefts.find(({ name }) => name === of.name) ?? {} })),
  ];
  const alike = new Map<string, Use[]>();
  for (const use of uses) {
    const key = keyOf(use);
    alike.set(key, [...(alike.get(key) ?? []), use]);
  }
  return [...alike.values()].map((group) => purchaseOf(group, project.spare));
}

/** What makes two yarns one; yarns that are not known are never alike. */
function keyOf({ of, yarn }: Use): string {
  if (yarn.yarn === undefined) return of.name;
  return JSON.stringify([countOf(yarn), yarn.fibre, yarn.colour, yarn.package]);
}

function countOf({ yarn }: ProjectYarn): string | undefined {
  if (yarn === undefined) return undefined;
  return printYarn(typeof yarn === "string" ? parseYarn(yarn) : yarn);
}

function purchaseOf(group: readonly Use[], spare: Quantity | undefined): PlanPurchase {
  const [{ yarn }] = group as [Use];
  const { colour, fibre, package: one } = yarn;
  const count = countOf(yarn);
  const byLength = yarn.yarn === undefined || one?.kind === "length";
  const used = byLength ? lengthOf(group) : massOf(group);
  const need = byLength
    ? calculate("length-with-waste", { l: used, a: spare })
    : calculate("yarn-with-waste", { m: used, a: spare });
  const stock = largest(
    group.flatMap((use) => use.yarn.stock ?? []),
    yarn,
  );
  const have = stock === undefined ? undefined : inKind(stock, yarn, byLength ? "length" : "mass");
  const toBuy = have === undefined ? need : less(need, have, byLength);
  const packages =
    one === undefined || (one.kind === "length") !== byLength
      ? undefined
      : byLength
        ? calculate("packages-by-length", { l: toBuy, q: one })
        : calculate("packages-by-mass", { m: toBuy, q: one });
  return {
    // A colour that stands in the warp and in the weft is one.
    yarns: [...new Set(group.map(({ of }) => of.name))],
    ...(count === undefined ? {} : { count }),
    ...(fibre === undefined ? {} : { fibre }),
    ...(colour === undefined ? {} : { colour }),
    used,
    need,
    ...(stock === undefined ? {} : { stock }),
    toBuy,
    ...(one === undefined ? {} : { package: one }),
    ...(packages === undefined ? {} : { packages }),
  };
}

function lengthOf(group: readonly Use[]): Result {
  const [first, ...others] = group.map(({ of }) => of.length) as [Result, ...Result[]];
  return others.length === 0 ? first : calculate("yarns-together", { Y_i: [first, ...others] });
}

function massOf(group: readonly Use[]): Result {
  const [first, ...others] = group.map(({ of }) => of.mass!) as [Result, ...Result[]];
  return others.length === 0 ? first : calculate("weights-together", { m_i: [first, ...others] });
}

/** The largest of the stocks of one yarn. */
function largest(stocks: readonly Quantity[], yarn: ProjectYarn): Quantity | undefined {
  const size = (stock: Quantity): number => toMetric(inKind(stock, yarn, "length") ?? stock).value;
  return [...stocks].sort((a, b) => size(b) - size(a))[0];
}

/** A stock by length or by weight; undefined where it is known the other way and the yarn is not. */
function inKind(stock: Quantity, { yarn }: ProjectYarn, kind: "length" | "mass"): Quantity | undefined {
  if (stock.kind === kind) return stock;
  if (yarn === undefined) return undefined;
  return kind === "length"
    ? calculate("length-of-mass", { m: stock, T: tex(yarn) })
    : calculate("mass-of-length", { T: tex(yarn), l: stock });
}

function less(need: Result, stock: Quantity, byLength: boolean): Result {
  return byLength
    ? calculate("length-to-buy", { l: need, s: stock })
    : calculate("yarn-to-buy", { m: need, s: stock });
}
