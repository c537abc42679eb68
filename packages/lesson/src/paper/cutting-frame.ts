import type { RectShape } from "@drawcord/page";

/** The broken line about something that is cut out of a page, its measures in mm. */
export function cuttingFrame(
  width: number,
  height: number,
  line: Pick<RectShape, "stroke" | "strokeWidth">,
): RectShape {
  return { kind: "rect", x: 0.2, y: 0.2, width: width - 0.4, height: height - 0.4, ...line, dash: [2, 1.5] };
}
