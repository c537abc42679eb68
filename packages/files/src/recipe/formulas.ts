import { type Kind, kinds, parseQuantity, type UnitName } from "@drawcord/yarn";
import { attempt } from "../tree/problems.js";
import { at, entries, items, need, numberAt, type Spot, textAt, textOf, wayTo, wrong } from "../tree/spot.js";
import { notation, partAt, quantityAt } from "./notation.js";
import type { RecipeFormula, RecipeSymbol } from "./types.js";

/** The section `formulas`, whose shape was checked; the expressions themselves are read when they are worked out. */
export function readFormulas(section: Spot | undefined): readonly RecipeFormula[] {
  if (section === undefined) return [];
  const titles = new Set<string>();
  return items(section).flatMap((item) => {
    const read = attempt(item.tree.problems, () => formulaIn(item, titles));
    return read === undefined ? [] : [read];
  });
}

function formulaIn(item: Spot, titles: Set<string>): RecipeFormula {
  const title = textOf(need(item, "title"));
  if (titles.has(title)) {
    const spot = at(item, "title")!;
    throw wrong(spot, "bad-value", `${wayTo(spot.path)}: a formula before this one has the same title`);
  }
  titles.add(title);
  const [symbol, source] = [textAt(item, "symbol"), textAt(item, "source")];
  const decimals = numberAt(item, "decimals");
  const symbols = entries(need(item, "symbols")).map(([name, of]) => [name, symbolIn(of)] as const);
  return {
    title,
    formula: textOf(need(item, "formula")),
    symbols: Object.fromEntries(symbols),
    ...(symbol === undefined ? {} : { symbol }),
    ...partAt(item, "unit", "unit", unitOf),
    ...(decimals === undefined ? {} : { decimals }),
    ...(source === undefined ? {} : { source }),
  };
}

function symbolIn(of: Spot): RecipeSymbol {
  const plan = textAt(of, "plan");
  return {
    meaning: textOf(need(of, "meaning")),
    ...quantityAt(of, "value", "value", ...(Object.keys(kinds) as Kind[])),
    ...(plan === undefined ? {} : { plan }),
    ...partAt(of, "in", "in", unitOf),
  };
}

/** A unit by any name that it is read under. */
function unitOf(of: Spot): UnitName {
  return notation(of, (text) => parseQuantity(`1 ${text}`).unit);
}
