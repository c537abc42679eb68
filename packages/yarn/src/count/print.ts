import { countSystems } from "./systems.js";
import type { Yarn } from "./yarn.js";

/**
 * A yarn in the notation of its trade; it reads back as the same yarn.
 * @param yarn a yarn by its count
 * @example printYarn({ system: "worsted", count: 20, plies: 2, resultant: false }) // "2/20 worsted"
 */
export function printYarn({ system, count, plies, resultant }: Yarn): string {
  const { names, nameFirst, stroke } = countSystems[system];
  const [name] = names as readonly [string];
  const named = (number: string): string => (nameFirst ? `${name} ${number}` : `${number} ${name}`);
  if (plies === 1) return named(`${count}`);
  if (stroke !== undefined && plies <= count && resultant === (stroke.of === "plied")) {
    return named(stroke.first === "plies" ? `${plies}/${count}` : `${count}/${plies}`);
  }
  return resultant ? `R ${count} ${name} / ${plies}` : `${count} ${name} x ${plies}`;
}
