import type { Woven } from "../woven.js";

/** Wefts by letter, the first woven first. */
export function letterOf(weft: number): string {
  return weft < 26 ? String.fromCharCode(65 + weft) : `W${weft + 1}`;
}

/** `A is the pattern weft, B is the ground weft`, of the wefts that the piece is woven with. */
export function weftLetters({ wefts, weftOfPick }: Pick<Woven, "wefts" | "weftOfPick">): string {
  const used = new Set(weftOfPick);
  const named = wefts.flatMap((name, i) => {
    const weft = name === "weft" ? "the ground weft" : `the ${name} weft`;
    return used.has(i) ? [`${letterOf(i)} is ${weft}`] : [];
  });
  return named.join(", ");
}
