/** A yarn in a sentence: `warp`, `weft`, or the yarn by its name. */
export function calledYarn(name: string): string {
  return name === "warp" || name === "weft" ? name : `weft ${name}`;
}
