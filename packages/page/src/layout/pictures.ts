import type { Picture, Pictures } from "../document/types.js";
import type { Shape } from "../drawing/shape.js";
import type { Flow, FlowBox } from "./flow.js";
import { BETWEEN_STACKED, pilesOf } from "./piles.js";
import { BETWEEN_PICTURES, NARROWEST_PICTURE } from "./room.js";
import { tagged } from "./tagged.js";
import { type } from "./types-of-text.js";
import { linesHeight, setLines, wrap } from "./wrap.js";

/** Room above pictures, in mm. */
const ABOVE = 5;

/** A picture is made no smaller than this to go on with a page. */
const LEAST_SCALE = 0.75;

type PictureBox = FlowBox & { readonly width: number };

/**
 * Sets pictures side by side as far as they fit, low ones piled up beside tall ones; one larger than a page is made
 * smaller.
 */
export function layPictures({ pictures }: Pictures, flow: Flow): void {
  const boxes = pictures.map((picture) => pictureBox(picture, flow.width, flow.height));
  for (const row of pilesOf(fitted(pictures, boxes, flow), flow.width)) {
    let x = 0;
    const shapes = row.flatMap(({ width, items }) => {
      let y = 0;
      const groups = items.map((box): Shape => {
        const group: Shape = { kind: "group", x, y, shapes: box.shapes };
        y += box.height + BETWEEN_STACKED;
        return group;
      });
      x += width + BETWEEN_PICTURES;
      return groups;
    });
    flow.space(ABOVE);
    flow.put({ height: Math.max(...row.map(({ height }) => height)), shapes });
  }
}

/** A picture alone that the rest of a page nearly holds is made so much smaller that it does. */
function fitted(
  pictures: readonly Picture[],
  boxes: readonly PictureBox[],
  flow: Flow,
): readonly PictureBox[] {
  const [picture, another] = pictures;
  const [box] = boxes;
  const room = flow.room - ABOVE;
  if (picture === undefined || box === undefined || another !== undefined) return boxes;
  if (box.height <= room || room < LEAST_SCALE * box.height) return boxes;
  return [pictureBox(picture, flow.width, room)];
}

function pictureBox({ alt, drawing, caption }: Picture, room: number, height: number): PictureBox {
  const scale = Math.min(1, room / drawing.width, (height - 12) / drawing.height);
  const width = Math.max(drawing.width * scale, Math.min(NARROWEST_PICTURE, room));
  const lines = caption === "" ? [] : wrap(caption, width, type.caption);
  const below = drawing.height * scale + 2;
  const shapes: Shape[] = [
    {
      kind: "group",
      x: 0,
      y: 0,
      ...(scale === 1 ? {} : { scale }),
      tag: { role: "Figure", alt },
      shapes: drawing.shapes,
    },
    ...(lines.length === 0
      ? []
      : [tagged({ role: "Caption" }, setLines(lines, 0, below, width, type.caption))]),
  ];
  return { height: below + linesHeight(lines, type.caption), shapes, width };
}
