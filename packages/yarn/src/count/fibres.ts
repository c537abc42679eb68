import type { Quantity } from "../quantity/units.js";

/** A fibre as far as the formulas ask. */
export interface Fibre {
  /** How dense the fibre itself is, without the air between. */
  readonly density: Quantity;
  /** Constant of the root rule. */
  readonly k: number;
}

/** A fibre of the table. */
export type FibreName = "cotton" | "linen" | "hemp" | "jute" | "worsted" | "wool" | "silk";

const densityOf = (value: number) => ({ value, unit: "g/cm3", kind: "density" }) as const;

/**
 * Fibres by name. Densities from memory, to the second decimal; k of cotton by J. T. Taylor, Cotton Weaving and Designing,
 * 1909, p. 337; 0.90 for firm and 0.84 for soft yarns: common practice.
 */
export const fibres: Readonly<Record<FibreName, Fibre>> = {
  cotton: { density: /* @__PURE__ */ densityOf(1.52), k: 0.95 },
  linen: { density: /* @__PURE__ */ densityOf(1.5), k: 0.9 },
  hemp: { density: /* @__PURE__ */ densityOf(1.48), k: 0.9 },
  jute: { density: /* @__PURE__ */ densityOf(1.44), k: 0.84 },
  worsted: { density: /* @__PURE__ */ densityOf(1.31), k: 0.9 },
  wool: { density: /* @__PURE__ */ densityOf(1.31), k: 0.84 },
  silk: { density: /* @__PURE__ */ densityOf(1.34), k: 0.9 },
};
