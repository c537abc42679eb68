/** The squares of a path made by `squaresPath`, as `[column, row]` from the top left: the way back, to check a picture by. */
export function squaresOf(path: string): [column: number, row: number][] {
  const squares: [number, number][] = [];
  for (const [, x, y, width, height] of path.matchAll(/M(\d+) (\d+)h(\d+)v(\d+)h-\d+z/g)) {
    for (let r = 0; r < Number(height); r++) {
      for (let c = 0; c < Number(width); c++) squares.push([Number(x) + c, Number(y) + r]);
    }
  }
  return squares;
}
