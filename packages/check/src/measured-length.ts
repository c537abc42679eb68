import { many } from "@drawcord/base";
import type { OptionsOf } from "./options.js";
import { figure, figureBeyond } from "./words.js";

/** The sett that is assumed when none is known, in threads a cm: the usual float of 6 mm is then 12 threads. */
const ASSUMED_PER_CM = 20;

/** A length that is allowed, counted in the threads that are passed. */
export interface AllowedLength {
  /** In whole threads. */
  readonly threads: number;
  /** In mm, where the limit was set so. */
  readonly mm?: number;
  /** The threads passed: a length along an end passes picks, along a pick it passes ends. */
  readonly passed: "end" | "pick";
  /** Threads passed a cm. */
  readonly perCm: number;
  /** The sett was not known, so `perCm` is assumed. */
  readonly assumed: boolean;
}

/** A limit in threads or in mm, or the tighter of both, at the sett. */
export function allowedLength(
  { sett = {} }: OptionsOf,
  passed: "end" | "pick",
  limit: { readonly threads?: number | undefined; readonly mm?: number | undefined },
): AllowedLength {
  const known = passed === "pick" ? sett.picksPerCm : sett.endsPerCm;
  const perCm = known ?? ASSUMED_PER_CM;
  // A length of just the limit passes, whatever the last binary digit of its mm says.
  const inMm = limit.mm === undefined ? Number.POSITIVE_INFINITY : Math.floor((limit.mm * perCm) / 10 + 1e-9);
  if (limit.threads !== undefined && limit.threads <= inMm) {
    return { threads: Math.floor(limit.threads), passed, perCm, assumed: false };
  }
  return {
    threads: inMm,
    ...(limit.mm !== undefined && { mm: limit.mm }),
    passed,
    perCm,
    assumed: known === undefined,
  };
}

/** A length in threads as a finding states it: in mm where the limit was set so and the sett is known. */
export function measuredLength(
  threads: number,
  { mm, perCm, assumed, threads: limit }: AllowedLength,
): { readonly measured: number; readonly limit: number; readonly unit: "threads" | "mm" } {
  if (mm === undefined || assumed) return { measured: threads, limit, unit: "threads" };
  return { measured: (threads * 10) / perCm, limit: mm, unit: "mm" };
}

/** The words for a finding's length: `15 picks`, `7.5 mm (15 picks)`. */
export function lengthInWords(measured: number, unit: string | undefined, allowed: AllowedLength): string {
  if (unit !== "mm") return many(measured, allowed.passed);
  return `${figureBeyond(measured, allowed.mm ?? 0)} mm (${many(Math.round((measured * allowed.perCm) / 10), allowed.passed)})`;
}

/** The words for a finding's limit: `where 12 are allowed`, and where it comes from when the sett is assumed. */
export function limitInWords(limit: number, unit: string | undefined, allowed: AllowedLength): string {
  const most = unit === "mm" ? `${figure(limit)} mm` : `${limit}`;
  const assumed = allowed.assumed ? ` as ${figure(allowed.perCm)} ${allowed.passed}s a cm are assumed` : "";
  return `where ${most} ${most === "1" ? "is" : "are"} allowed${assumed}`;
}
