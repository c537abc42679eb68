import { palette, type TextShape } from "@drawcord/page";

/** A word or a number beside a drawing. */
export function label(
  x: number,
  y: number,
  text: string,
  options: Partial<Pick<TextShape, "size" | "anchor" | "fill" | "face">> = {},
): TextShape {
  const { size = 2.2, anchor = "start", fill = palette.muted, face = "sans" } = options;
  return { kind: "text", x, y, text, size, face, fill, anchor };
}

/** Which of the numbers 1, 2, ... are printed, so that they keep a distance of `room` mm: all, or every 5th, 10th, ... */
export function numbersEvery(cell: number, room: number): number {
  return [1, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000].find((every) => every * cell >= room) ?? 10_000;
}
