import type { Quantity } from "../quantity/units.js";

/** One way of counting a reed: so many dents to one of the count, over a width. */
export interface ReedSystem {
  /** How it is called in a sentence. */
  readonly title: string;
  /** Dents that one of the count stands for. */
  readonly dents: number;
  /** The width that they are counted over. */
  readonly width: Quantity;
  /** How it is written after the number, the first of the names. */
  readonly names: readonly string[];
}

/** A reed system, by the name that options give it. */
export type ReedSystemId =
  | "inch"
  | "metric"
  | "cm"
  | "stockport"
  | "huddersfield"
  | "bradford"
  | "bolton"
  | "leeds"
  | "irish";

/**
 * Reed counts. Where a count is of ends, there are two in a dent.
 * Source: J. T. Taylor, Cotton Weaving and Designing, 1909, p. 310; Sett Systems, Dictionary of the English
 * textile terms, 2014 (online).
 */
export const reedSystems: Readonly<Record<ReedSystemId, ReedSystem>> = {
  inch: {
    title: "dents an inch",
    dents: 1,
    width: { value: 1, unit: "in", kind: "length" },
    names: ["per inch"],
  },
  metric: {
    title: "dents in 10 cm",
    dents: 1,
    width: { value: 10, unit: "cm", kind: "length" },
    names: ["per 10 cm"],
  },
  cm: {
    title: "dents in a centimetre",
    dents: 1,
    width: { value: 1, unit: "cm", kind: "length" },
    names: ["per cm"],
  },
  stockport: {
    title: "Stockport, ends an inch",
    dents: 1,
    width: { value: 2, unit: "in", kind: "length" },
    names: ["Stockport"],
  },
  huddersfield: {
    title: "Huddersfield, dents an inch",
    dents: 1,
    width: { value: 1, unit: "in", kind: "length" },
    names: ["Huddersfield"],
  },
  bradford: {
    title: "Bradford, beers of 20 dents in 36 inches",
    dents: 20,
    width: { value: 36, unit: "in", kind: "length" },
    names: ["Bradford"],
  },
  bolton: {
    title: "Bolton, beers of 20 dents in 24 1/4 inches",
    dents: 20,
    width: { value: 24.25, unit: "in", kind: "length" },
    names: ["Bolton"],
  },
  leeds: {
    title: "Leeds, porters of 19 dents in 9 inches",
    dents: 19,
    width: { value: 9, unit: "in", kind: "length" },
    names: ["Leeds"],
  },
  irish: {
    title: "Irish, hundreds of dents in 40 inches",
    dents: 100,
    width: { value: 40, unit: "in", kind: "length" },
    names: ["Irish"],
  },
};
