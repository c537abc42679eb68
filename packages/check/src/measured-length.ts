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

/** A length beyond its limit, as a finding states it: in mm where the limit was set so and the sett is known. */
export interface MeasuredLength {
  /** What was measured, in `unit`. */
  readonly measured: number;
  /** What is allowed, in `unit`. */
  readonly limit: number;
  /** Of `measured` and `limit`; threads are those that the length passes: picks along an end, ends along a pick. */
  readonly unit: "threads" | "mm";
  /** What was measured in threads; left out where `measured` says it. */
  readonly threads?: number;
  /** The threads a cm that the limit was worked out with; left out where the sett is known, or does not matter. */
  readonly assumedPerCm?: number;
}

/** A length in threads beyond what is allowed. */
export function measuredLength(
  threads: number,
  { mm, perCm, assumed, threads: limit }: AllowedLength,
): MeasuredLength {
  if (assumed) return { measured: threads, limit, unit: "threads", assumedPerCm: perCm };
  if (mm === undefined) return { measured: threads, limit, unit: "threads" };
  return { measured: (threads * 10) / perCm, limit: mm, unit: "mm", threads };
}

/** The words for a finding's length: `15 picks`, `7.5 mm (15 picks)`. */
export function lengthInWords(
  { limit, measured, threads }: MeasuredLength,
  passed: AllowedLength["passed"],
): string {
  return threads === undefined
    ? many(measured, passed)
    : `${figureBeyond(measured, limit)} mm (${many(threads, passed)})`;
}

/** The words for a finding's limit: `where 12 are allowed`, and where it comes from when the sett is assumed. */
export function limitInWords(
  { assumedPerCm, limit, unit }: MeasuredLength,
  passed: AllowedLength["passed"],
): string {
  const most = unit === "mm" ? `${figure(limit)} mm` : `${limit}`;
  const assumed = assumedPerCm === undefined ? "" : ` as ${figure(assumedPerCm)} ${passed}s a cm are assumed`;
  return `where ${most} ${most === "1" ? "is" : "are"} allowed${assumed}`;
}
