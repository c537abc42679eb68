/** Wefts by letter, the first woven first. */
export function letterOf(weft: number): string {
  return weft < 26 ? String.fromCharCode(65 + weft) : `W${weft + 1}`;
}

/** `A is the pattern weft, B is the ground weft` */
export function weftLetters(wefts: readonly string[]): string {
  const named = wefts.map((name, i) => {
    const weft = name === "weft" ? "the ground weft" : `the ${name} weft`;
    return `${letterOf(i)} is ${weft}`;
  });
  return named.join(", ");
}
