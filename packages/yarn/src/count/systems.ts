import type { Quantity } from "../quantity/units.js";

/** One way of naming how fine a yarn is. */
export interface CountSystem {
  /** How it is called in a sentence. */
  readonly title: string;
  /** `lengths`: how many lengths make up the weight (finer is more). `weights`: how many weights the length has. */
  readonly counts: "lengths" | "weights";
  /** The length that is counted, or weighed. */
  readonly length: Quantity;
  /** The weight that is counted, or that makes up one of the count. */
  readonly mass: Quantity;
  /** How it is written beside the number; the first of the names. */
  readonly names: readonly string[];
  /** The name stands before the number. */
  readonly nameFirst?: true;
  /** Where a plied yarn is written with a stroke: which number comes first, and what the count beside it counts. */
  readonly stroke?: {
    /** Which number stands first. */
    readonly first: "count" | "plies";
    /** Of which yarn the count is. */
    readonly of: "single" | "plied";
  };
}

/** A count system, by the name that formulas and options give it. */
export type CountSystemId =
  | "tex"
  | "dtex"
  | "denier"
  | "metric"
  | "cotton"
  | "spun-silk"
  | "worsted"
  | "linen-lea"
  | "woollen-cut"
  | "woollen-run"
  | "yorkshire-skein"
  | "silk-dram"
  | "jute"
  | "grain"
  | "yards-a-pound"
  | "metres-in-100-g";

const countFirst = { first: "count", of: "single" } as const;
const pliesFirst = { first: "plies", of: "single" } as const;

/**
 * The yarn systems of the trade, each by its length and weight, exact.
 * Source: J. T. Taylor, Cotton Weaving and Designing, 1909, p. 307; ASTM D2260, Table 1; Yorkshire skein, yards a pound and
 * metres in 100 g: common practice. Which number is the ply: Taylor, p. 308.
 */
export const countSystems: Readonly<Record<CountSystemId, CountSystem>> = {
  tex: {
    title: "tex",
    counts: "weights",
    length: { value: 1, unit: "km", kind: "length" },
    mass: { value: 1, unit: "g", kind: "mass" },
    names: ["tex"],
  },
  dtex: {
    title: "dtex",
    counts: "weights",
    length: { value: 10, unit: "km", kind: "length" },
    mass: { value: 1, unit: "g", kind: "mass" },
    names: ["dtex", "decitex"],
  },
  denier: {
    title: "denier",
    counts: "weights",
    length: { value: 9, unit: "km", kind: "length" },
    mass: { value: 1, unit: "g", kind: "mass" },
    names: ["den", "denier"],
  },
  metric: {
    title: "metric count",
    counts: "lengths",
    length: { value: 1, unit: "km", kind: "length" },
    mass: { value: 1, unit: "kg", kind: "mass" },
    names: ["Nm", "metric"],
    nameFirst: true,
    stroke: countFirst,
  },
  cotton: {
    title: "cotton count",
    counts: "lengths",
    length: { value: 840, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["Ne", "NeC", "cotton", "cotton count"],
    stroke: countFirst,
  },
  "spun-silk": {
    title: "spun silk count",
    counts: "lengths",
    length: { value: 840, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["spun silk"],
    stroke: { first: "count", of: "plied" },
  },
  worsted: {
    title: "worsted count",
    counts: "lengths",
    length: { value: 560, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["worsted", "NeK", "worsted count"],
    stroke: pliesFirst,
  },
  "linen-lea": {
    title: "linen lea",
    counts: "lengths",
    length: { value: 300, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["lea", "linen", "NeL", "linen lea"],
    stroke: countFirst,
  },
  "woollen-cut": {
    title: "woollen cut",
    counts: "lengths",
    length: { value: 300, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["woollen cut", "woolen cut", "cut"],
    stroke: pliesFirst,
  },
  "woollen-run": {
    title: "woollen run",
    counts: "lengths",
    length: { value: 1600, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["woollen run", "woolen run", "run"],
    stroke: pliesFirst,
  },
  "yorkshire-skein": {
    title: "Yorkshire skein",
    counts: "lengths",
    length: { value: 256, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["Yorkshire skein", "skein", "YSW"],
    stroke: pliesFirst,
  },
  "silk-dram": {
    title: "silk dram",
    counts: "weights",
    length: { value: 1000, unit: "yd", kind: "length" },
    mass: { value: 0.0625, unit: "oz", kind: "mass" },
    names: ["dram", "drams", "silk dram"],
  },
  jute: {
    title: "jute, pounds a spyndle",
    counts: "weights",
    length: { value: 14_400, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["jute", "lb jute", "lb a spyndle", "lb/spyndle"],
  },
  grain: {
    title: "grains in 120 yards",
    counts: "weights",
    length: { value: 120, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "gr", kind: "mass" },
    names: ["grain", "grains"],
  },
  "yards-a-pound": {
    title: "yards a pound",
    counts: "lengths",
    length: { value: 1, unit: "yd", kind: "length" },
    mass: { value: 1, unit: "lb", kind: "mass" },
    names: ["yd/lb", "ypp"],
  },
  "metres-in-100-g": {
    title: "metres in 100 g",
    counts: "lengths",
    length: { value: 1, unit: "m", kind: "length" },
    mass: { value: 100, unit: "g", kind: "mass" },
    names: ["m/100 g", "m/100g"],
  },
};
