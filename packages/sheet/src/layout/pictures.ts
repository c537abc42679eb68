import type { Picture, Pictures } from "../document/types.js";
import type { Shape } from "../drawing/shape.js";
import { BETWEEN_PICTURES, NARROWEST_PICTURE } from "../pictures/size.js";
import type { Box, Flow } from "./flow.js";
import { tagged } from "./tagged.js";
import { type } from "./types-of-text.js";
import { linesHeight, setLines, wrap } from "./wrap.js";

/** Room between pictures that stand one above the other, in mm. */
const BETWEEN_STACKED = 5;

/** Pictures one above the other. */
interface Pile {
  readonly width: number;
  readonly boxes: readonly Box[];
}

/**
 * Sets pictures side by side as far as they fit, low ones piled up beside tall ones; one larger than a page is made
 * smaller.
 */
export function layPictures({ pictures }: Pictures, flow: Flow): void {
  let piles: Pile[] = [];
  const close = () => {
    if (piles.length === 0) return;
    flow.space(5);
    let x = 0;
    const shapes = piles.flatMap(({ width, boxes }) => {
      let y = 0;
      const groups = boxes.map((box): Shape => {
        const group: Shape = { kind: "group", x, y, shapes: box.shapes };
        y += box.height + BETWEEN_STACKED;
        return group;
      });
      x += width + BETWEEN_PICTURES;
      return groups;
    });
    flow.put({ height: Math.max(...piles.map(heightOf)), shapes });
    piles = [];
  };
  for (const picture of pictures) {
    const { box, width } = pictureBox(picture, flow.width, flow.height);
    const last = piles.at(-1);
    const tallest = Math.max(0, ...piles.map(heightOf));
    if (
      last !== undefined &&
      width <= last.width + 1e-6 &&
      heightOf(last) + BETWEEN_STACKED + box.height <= tallest + 1e-6
    ) {
      piles[piles.length - 1] = { ...last, boxes: [...last.boxes, box] };
      continue;
    }
    const used = piles.reduce((sum, pile) => sum + pile.width + BETWEEN_PICTURES, 0);
    if (used > 0 && used + width > flow.width + 1e-6) close();
    piles.push({ width, boxes: [box] });
  }
  close();
}

function heightOf({ boxes }: Pile): number {
  return boxes.reduce((sum, { height }) => sum + height, (boxes.length - 1) * BETWEEN_STACKED);
}

function pictureBox(
  { alt, drawing, caption }: Picture,
  room: number,
  height: number,
): { box: Box; width: number } {
  const scale = Math.min(1, room / drawing.width, (height - 12) / drawing.height);
  const width = Math.max(drawing.width * scale, Math.min(NARROWEST_PICTURE, room));
  const lines = wrap(caption, width, type.caption);
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
    tagged({ role: "Caption" }, setLines(lines, 0, below, width, type.caption)),
  ];
  return { box: { height: below + linesHeight(lines, type.caption), shapes }, width };
}
