import { calculate } from "../formula/calculate.js";
import type { Input } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";
import { convert, toMetric } from "../quantity/convert.js";
import { printQuantity } from "../quantity/print.js";
import type { Quantity } from "../quantity/units.js";
import type { Reed } from "../reed/notation.js";
import { printSley } from "../reed/sley.js";
import { dentsOf, dentsUsed, printDents, settInReed, sleyings } from "../reed/sleying.js";
import type { Plan, PlanReed, Project } from "./types.js";

/** Ends for a finished width, and the widths on the way to them. */
export interface EndsForWidth {
  /** Width of the cloth on the loom. */
  readonly clothWidth: Result;
  /** Width of the warp in the reed. */
  readonly widthInReed: Result;
  /** Ends that fill it. */
  readonly ends: Result;
}

/** What the cloth loses across. */
export interface WidthLosses {
  /** Default: 5 %, shown as assumed. */
  readonly drawIn?: Input | undefined;
  /** Default: 10 %, shown as assumed. */
  readonly shrinkage?: Input | undefined;
}

/**
 * Width on the loom, width in the reed and ends for a finished width.
 * @param finished width that is wanted when the cloth is washed
 * @param sett ends in a unit length
 * @param losses draw-in and shrinkage; usual values where they are left out
 * @throws {YarnError} as `calculate`
 * @example endsForWidth("40 cm", "12 per cm", { drawIn: "5 %", shrinkage: "4 %" }).ends.value // 526
 */
export function endsForWidth(finished: Input, sett: Input, losses: WidthLosses = {}): EndsForWidth {
  const clothWidth = calculate("size-before-shrinkage", { f: finished, s: losses.shrinkage });
  const widthInReed = calculate("width-before-draw-in", { b: clothWidth, d: losses.drawIn });
  return { clothWidth, widthInReed, ends: calculate("ends-in-width", { W: widthInReed, S: sett }) };
}

/** The part of a plan that lies across the cloth. */
type Width = Pick<
  Plan,
  "sett" | "reed" | "widthInReed" | "clothWidth" | "finishedWidth" | "missing" | "notes"
>;

/** Sett, reed and widths of a project. */
export function planWidth(project: Project): Width {
  const { ends, reed: given } = project;
  const found = given === undefined ? undefined : sleyed(project, given);
  const missing =
    given !== undefined && found === undefined ? ["how to sley the reed needs a sett or a sley"] : [];
  // What a reed is sleyed to is what comes out of it: the sley rules, a sett beside it is compared.
  const sett = (project.sley === undefined ? project.sett : undefined) ?? found?.sett ?? project.sett;
  if (sett === undefined) {
    return { missing: [...missing, "widths and weft need a sett, or a reed with its sley"], notes: [] };
  }
  const widthInReed = calculate("width-in-reed", { n: ends, S: sett });
  const clothWidth = calculate("width-after-draw-in", { W: widthInReed, d: project.drawIn });
  const finishedWidth = calculate("size-after-shrinkage", { b: clothWidth, s: project.shrinkage?.width });
  return {
    sett,
    ...(found === undefined ? {} : { reed: { ...found, ...inDents(ends, found) } }),
    widthInReed,
    clothWidth,
    finishedWidth,
    missing,
    notes: [...otherSett(project, found), ...wantedWidth(project, sett, finishedWidth)],
  };
}

/** What to say where the sleyed reed makes another sett than the one that is wanted, and which of the two rules. */
function otherSett({ sett, sley }: Project, reed: Sleyed | undefined): string[] {
  if (reed?.error === undefined || sett === undefined || Math.abs(reed.error) < 0.5) return [];
  const made = printQuantity(convert(reed.sett, sett.unit), { decimals: 2 });
  const rules = sley === undefined ? "the widths are those of the sett" : "the widths are those of the sley";
  return [
    `sleyed ${printSley(reed.sley)}, the reed makes ${made}; the sett is ${printQuantity(sett)}; ${rules}`,
  ];
}

/** What to say where the width that comes out is not the one that is wanted. */
function wantedWidth(project: Project, sett: Quantity, found: Quantity): string[] {
  const { width } = project;
  if (width === undefined) return [];
  const comes = convert(found, width.unit);
  if (Math.abs(comes.value - width.value) <= 0.02 * width.value) return [];
  const { ends } = endsForWidth(width, sett, { drawIn: project.drawIn, shrinkage: project.shrinkage?.width });
  const is = printQuantity(comes, { decimals: 1 });
  return [`${project.ends} ends finish ${is} wide; ${printQuantity(width)} takes ${ends.value} ends`];
}

type InDents = Pick<PlanReed, "dentsUsed" | "width" | "printed">;
type Sleyed = Omit<PlanReed, keyof InDents>;

/** The reed with its sley, the given or the nearest; undefined where neither sley nor sett is known. */
function sleyed({ sett, sley }: Project, reed: Reed): Sleyed | undefined {
  const found = sley === undefined && sett !== undefined ? sleyings(sett, reed) : [];
  const pattern = sley ?? found[0]?.sley;
  if (pattern === undefined) return undefined;
  const made = settInReed(reed, pattern);
  return {
    reed,
    dents: dentsOf(reed),
    sley: pattern,
    sett: made,
    ...(sett === undefined ? {} : { error: percentOff(made.value, toMetric(sett).value) }),
    others: found.slice(1),
  };
}

/** How far one value is from another, in percent; 0 where only rounding parts them. */
function percentOff(value: number, wanted: number): number {
  const off = (value / wanted - 1) * 100;
  return Math.abs(off) < 1e-9 ? 0 : off;
}

function inDents(ends: number, { reed, sley }: Sleyed): InDents {
  const { dents, width } = dentsUsed(ends, reed, sley);
  return { dentsUsed: dents, width, printed: printDents(ends, sley) };
}
