import {
  convert,
  metric,
  printQuantity,
  printReed,
  type Quantity,
  type Reed,
  settInReed,
  toMetric,
  type UnitSystem,
} from "@drawcord/yarn";
import { inchesText } from "./fraction.js";

/** How a quantity is printed on a sheet. */
export type Print = (quantity: Quantity) => string;

/** The printer of a sheet's units. */
export function printIn(units: UnitSystem): Print {
  return (quantity) => {
    const here = metricWords(quantity);
    const there = units === "metric" ? undefined : imperialWords(quantity);
    if (there === undefined || there === here) return here;
    return units === "both" ? `${here} (${there})` : there;
  };
}

/**
 * A quantity in metric units as a weaver says it: metres from 1 m on and centimetres below, to the centimetre and the
 * millimetre; kilograms from 1 kg on, to ten grams.
 * @example metricWords({ value: 5133, unit: "mm", kind: "length" }) // "5.13 m"
 */
export function metricWords(quantity: Quantity): string {
  const { kind } = quantity;
  if (kind === "number") return printQuantity(metric(quantity));
  const { value } = toMetric(quantity);
  if (kind === "length") {
    if (value >= 100_000) return `${Math.round(value / 1000)} m`;
    if (value >= 1000) return `${half(value / 1000, 2).toFixed(2)} m`;
    return value < 10 ? `${tidy(value, 1)} mm` : `${tidy(value / 10, 1)} cm`;
  }
  if (kind === "mass") {
    if (value >= 1000) return `${half(value / 1000, 2).toFixed(2)} kg`;
    return value < 10 ? `${tidy(value, 1)} g` : `${tidy(value, 0)} g`;
  }
  if (kind === "sett" || kind === "share") return printQuantity(toMetric(quantity), { decimals: 1 });
  if (kind === "area-weight") return printQuantity(toMetric(quantity), { decimals: 0 });
  return printQuantity(metric(quantity));
}

/**
 * A quantity in inches and pounds as a weaver says it: yards and inches, inches to the eighth, pounds and ounces; undefined
 * for kinds that have no such unit.
 * @example imperialWords({ value: 5133, unit: "mm", kind: "length" }) // "5 yd 22 in"
 */
export function imperialWords(quantity: Quantity): string | undefined {
  if (quantity.kind === "length") {
    const inches = convert(quantity, "in").value;
    if (inches >= 3600) return `${Math.round(inches / 36)} yd`;
    if (inches < 72) return inchesText(inches);
    const whole = Math.round(inches);
    const [yards, rest] = [Math.floor(whole / 36), whole % 36];
    return rest === 0 ? `${yards} yd` : `${yards} yd ${rest} in`;
  }
  if (quantity.kind === "mass") {
    const ounces = convert(quantity, "oz").value;
    if (ounces < 15.95) return `${tidy(ounces, 1)} oz`;
    const whole = Math.round(ounces);
    const [pounds, rest] = [Math.floor(whole / 16), whole % 16];
    return rest === 0 ? `${pounds} lb` : `${pounds} lb ${rest} oz`;
  }
  if (quantity.kind === "sett") return printQuantity(convert(quantity, "per inch"), { decimals: 1 });
  if (quantity.kind === "area-weight") return printQuantity(convert(quantity, "oz/yd2"), { decimals: 1 });
  return undefined;
}

/**
 * A reed in the units of a sheet: its dents an inch or in 10 cm, and the count that it is marked by where that is of another
 * system.
 * @example reedWords({ system: "metric", count: 60 }, "imperial") // "15.2 dents an inch (marked 60 per 10 cm)"
 */
export function reedWords(reed: Reed, units: UnitSystem): string {
  const own = printReed(reed);
  const dents = settInReed(reed, [1]);
  const inches = `${tidy(convert(dents, "per inch").value, 1)} dents an inch`;
  const centimetres = `${tidy(convert(dents, "per cm").value * 10, 1)} dents in 10 cm`;
  if (units !== "metric" && reed.system !== "inch") return `${inches} (marked ${own})`;
  if (units === "metric" && reed.system !== "metric" && reed.system !== "cm")
    return `${centimetres} (marked ${own})`;
  return own;
}

/** Rounded, a half up; one that is a little less only by the way it was worked out is a half. */
function half(value: number, decimals: number): number {
  const whole = 10 ** decimals;
  return Math.floor(value * whole + 0.5 + 1e-9) / whole;
}

function tidy(value: number, decimals: number): string {
  return `${half(value, decimals)}`;
}
