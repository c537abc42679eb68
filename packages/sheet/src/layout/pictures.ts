import type { Picture, Pictures } from "../document/types.js";
import type { Shape } from "../drawing/shape.js";
import { BETWEEN_PICTURES } from "../pictures/size.js";
import type { Box, Flow } from "./flow.js";
import { type } from "./types-of-text.js";
import { linesHeight, setLines, wrap } from "./wrap.js";

/** A caption gets at least this width, however narrow its picture is. */
const LEAST = 44;

/** Sets pictures side by side as far as they fit; one larger than a page is made smaller. */
export function layPictures({ pictures }: Pictures, flow: Flow): void {
  let row: { readonly box: Box; readonly width: number }[] = [];
  let used = 0;
  const close = () => {
    if (row.length === 0) return;
    flow.space(5);
    let x = 0;
    const shapes = row.map(({ box, width }): Shape => {
      const group: Shape = { kind: "group", x, y: 0, shapes: box.shapes };
      x += width + BETWEEN_PICTURES;
      return group;
    });
    flow.put({ height: Math.max(...row.map(({ box }) => box.height)), shapes });
    row = [];
    used = 0;
  };
  for (const picture of pictures) {
    const { box, width } = pictureBox(picture, flow.width, flow.height);
    if (used > 0 && used + width > flow.width + 1e-6) close();
    row.push({ box, width });
    used += width + BETWEEN_PICTURES;
  }
  close();
}

function pictureBox(
  { drawing, caption }: Picture,
  room: number,
  height: number,
): { box: Box; width: number } {
  const scale = Math.min(1, room / drawing.width, (height - 12) / drawing.height);
  const width = Math.max(drawing.width * scale, Math.min(LEAST, room));
  const lines = wrap(caption, width, type.caption);
  const below = drawing.height * scale + 2;
  const shapes: Shape[] = [
    { kind: "group", x: 0, y: 0, ...(scale === 1 ? {} : { scale }), shapes: drawing.shapes },
    ...setLines(lines, 0, below, width, type.caption),
  ];
  return { box: { height: below + linesHeight(lines, type.caption), shapes }, width };
}
