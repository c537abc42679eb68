import type { AddedPoint, BaseWeave, PatternTies, WeaveDescription } from "./description.js";

/**
 * Writes a weave down as `parseWeave` reads it.
 * @param description the weave, as `parseWeave` reads it
 * @example printWeave(parseWeave("twill  2/1/1/2 Z")) // "twill 2/1/1/2 z"
 */
export function printWeave({ base, plus, patternWeft, ties }: WeaveDescription): string {
  const points = plus && ["plus", plus.map(printPoint).join(", ")];
  return [
    ...words(base),
    ...(points ?? []),
    ...(patternWeft ? ["with pattern weft"] : []),
    ...(ties ? printTies(ties) : []),
  ].join(" ");
}

function printTies(ties: PatternTies): string[] {
  if (ties.in === "none") return ["untied"];
  if (ties.in === "shafts") return ["tied on", ...ties.shafts.map(String)];
  const { within } = ties;
  return ["tied in", ties.in, ...(ties.in === "twill" ? [`${ties.shafts}`] : []), ...value("within", within)];
}

function words(base: BaseWeave): string[] {
  switch (base.kind) {
    case "plain":
      return [base.kind];
    case "hopsack":
      return [base.kind, base.picks.join("/"), ...(base.ends ? ["by", base.ends.join("/")] : [])];
    case "warp rib":
    case "weft rib":
      return [base.kind, base.group.join("/")];
    case "twill":
      return [base.kind, ...ratio(base), ...value("step", base.step), ...direction(base)];
    case "pointed twill":
      return [base.kind, ...ratio(base), ...direction(base), ...along(base)];
    case "undulating twill":
      return [base.kind, ...ratio(base), "moves", base.moves.join(" "), ...direction(base), ...along(base)];
    case "herringbone twill":
      return [base.kind, ...ratio(base), `after ${base.after}`, ...direction(base), ...along(base)];
    case "broken twill":
      return [base.kind, ...ratio(base), ...breaking(base), ...direction(base), ...along(base)];
    case "satin":
      return [
        base.kind,
        ...(base.ends === undefined ? [] : [`${base.ends}`]),
        ...value("step", base.step),
        ...(base.order ? ["order", base.order.join(" ")] : []),
        ...direction(base),
        ...(base.warpFaced ? ["warp-faced"] : []),
      ];
    case "crepe":
      return [base.kind, `${base.ends}`, `step ${base.step}`, ...direction(base)];
    case "corkscrew":
      return [base.kind, `${base.ends}`, ...direction(base)];
  }
}

function ratio({ ratio }: { ratio?: readonly number[] }): string[] {
  return ratio ? [ratio.join("/")] : [];
}

function direction({ direction }: { direction?: string }): string[] {
  return direction ? [direction] : [];
}

function along({ alongPicks }: { alongPicks?: true }): string[] {
  return alongPicks ? ["along picks"] : [];
}

function value(name: string, number: number | undefined): string[] {
  return number === undefined ? [] : [`${name} ${number}`];
}

function breaking(base: BaseWeave & { kind: "broken twill" }): string[] {
  if (!base.break) return [];
  return base.break.by === "skipping"
    ? [`take ${base.break.take} skip ${base.break.skip}`]
    : [`by ${base.break.by}`];
}

function printPoint({ right, above }: AddedPoint): string {
  const ends = right === 0 ? [] : [`${right > 0 ? "right" : "left"} ${Math.abs(right)}`];
  const picks = above === 0 && right !== 0 ? [] : [`${above < 0 ? "below" : "above"} ${Math.abs(above)}`];
  return [...ends, ...picks].join(" ");
}
