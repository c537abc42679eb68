import type { Shape, Tag } from "../drawing/shape.js";

/** Shapes where they stand, under a tag. */
export function tagged(tag: Tag, shapes: readonly Shape[]): Shape {
  return { kind: "group", x: 0, y: 0, tag, shapes };
}
