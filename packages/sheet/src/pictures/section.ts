/** Cross-sections: the path of one thread through those that it crosses. */
import { type Drawing, palette, round, type Shape } from "@drawcord/page";

const STEP = 6;
const MIDDLE = 9;
const SWING = 4.2;

/**
 * The path of a pick through the ends, or of an end through the picks, as a cut through the cloth shows it: round threads
 * cut across, the one thread winding over and under them, the face above.
 * @param over whether the thread passes over each thread that it crosses
 * @param names what stands under each thread
 * @example sectionDrawing([true, false], ["1", "2"]).width // 18
 */
export function sectionDrawing(over: readonly boolean[], names: readonly string[]): Drawing {
  const width = (over.length + 1) * STEP;
  const at = (i: number) => round((i + 1) * STEP);
  const level = (up: boolean) => round(MIDDLE + (up ? -SWING : SWING));
  const path = over
    .map((up, i) => {
      if (i === 0) return `M0 ${level(up)}L${at(0)} ${level(up)}`;
      const before = over[i - 1]!;
      const half = round((i + 0.5) * STEP);
      return before === up
        ? `L${at(i)} ${level(up)}`
        : `C${half} ${level(before)} ${half} ${level(up)} ${at(i)} ${level(up)}`;
    })
    .join("");
  const last = over.at(-1) ?? false;
  const cut: Shape[] = over.map((_, i) => ({
    kind: "path",
    d: `M${round(at(i) - 2)} ${MIDDLE}a2 2 0 1 0 4 0a2 2 0 1 0 -4 0z`,
    fill: palette.wash,
    stroke: palette.ink,
    width: 0.25,
  }));
  const labels: Shape[] = names.map((text, i) => ({
    kind: "text",
    x: at(i),
    y: 18.5,
    text,
    size: text.length > 3 ? 2.2 : 2.7,
    face: "sans",
    fill: palette.ink,
    anchor: "middle",
  }));
  const thread: Shape = {
    kind: "path",
    d: `${path}L${width} ${level(last)}`,
    stroke: palette.accent,
    width: 1.1,
  };
  return { width, height: 20, shapes: [...cut, thread, ...labels] };
}
