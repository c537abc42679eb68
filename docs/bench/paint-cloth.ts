import type { Lay } from "./lay.js";
import type { ClothPicture, Mark } from "./messages.js";

/** What is painted. */
interface Painting {
  readonly picture: ImageBitmap;
  readonly marks: readonly Mark[];
  readonly alike: readonly number[];
  /** The crossing that is pointed at. */
  readonly at: { readonly end: number; readonly pick: number } | undefined;
  /** The end as it is seen from the left. */
  endOf(end: number): number;
}

const COLOURS = { problem: "#b3261e", error: "#b3261e", warning: "#b97700", note: "#2b6480" } as const;

/** Crossings this large or larger are parted by hairlines, and shaded as round threads. */
const LARGE = 6;

/**
 * Paints the cloth, its findings, the picks woven as the shed stands, and the crossing that is pointed at.
 * @param box the canvas, which takes the pixels of the screen
 * @param cloth what is painted
 * @param lay how it lies
 * @param painting which side, and what is drawn over it
 */
export function paintCloth(box: HTMLCanvasElement, cloth: ClothPicture, lay: Lay, painting: Painting): void {
  const ratio = devicePixelRatio || 1;
  box.width = Math.round(box.clientWidth * ratio);
  box.height = Math.round(box.clientHeight * ratio);
  const paper = box.getContext("2d")!;
  paper.scale(ratio, ratio);
  const { high, left, top, wide } = lay;
  const { ends, picks } = cloth;
  paper.imageSmoothingEnabled = high < 2;
  paper.imageSmoothingQuality = "high";
  paper.drawImage(painting.picture, left, top, wide * ends, high * picks);
  if (high >= LARGE) paintGaps(paper, box, cloth, lay);
  paper.fillStyle = "rgb(255 196 0 / 0.35)";
  for (const pick of painting.alike)
    paper.fillRect(left, top + (picks - pick) * high, wide * ends, Math.max(1, high));
  paper.lineWidth = 2;
  for (const { ends: of = [1, ends], level, picks: along } of painting.marks) {
    if (along === undefined) continue;
    const [a, b] = [painting.endOf(of[0]), painting.endOf(of[1])];
    const [first, last] = a < b ? [a, b] : [b, a];
    paper.strokeStyle = COLOURS[level];
    paper.strokeRect(
      left + (first - 1) * wide - 1,
      top + (picks - along[1]) * high - 1,
      (last - first + 1) * wide + 2,
      (along[1] - along[0] + 1) * high + 2,
    );
  }
  if (painting.at === undefined) return;
  const [x, y] = [
    left + (painting.endOf(painting.at.end) - 1) * wide,
    top + (picks - painting.at.pick) * high,
  ];
  for (const [colour, by] of [
    ["#000", 2],
    ["#fff", 0],
  ] as const) {
    paper.strokeStyle = colour;
    paper.strokeRect(x - by / 2, y - by / 2, Math.max(3, wide) + by, Math.max(3, high) + by);
  }
}

/** Hairlines between the threads, in the part that is seen. */
function paintGaps(
  paper: CanvasRenderingContext2D,
  box: HTMLCanvasElement,
  cloth: ClothPicture,
  lay: Lay,
): void {
  const { high, left, top, wide } = lay;
  const { ends, picks } = cloth;
  const [right, bottom] = [
    Math.min(left + ends * wide, box.clientWidth),
    Math.min(top + picks * high, box.clientHeight),
  ];
  paper.strokeStyle = "rgb(0 0 0 / 0.28)";
  paper.lineWidth = 0.5;
  paper.beginPath();
  for (let end = Math.max(0, Math.floor(-left / wide)); end <= ends && left + end * wide <= right; end++) {
    paper.moveTo(left + end * wide, Math.max(top, 0));
    paper.lineTo(left + end * wide, bottom);
  }
  for (
    let pick = Math.max(0, Math.floor(-top / high));
    pick <= picks && top + pick * high <= bottom;
    pick++
  ) {
    paper.moveTo(Math.max(left, 0), top + pick * high);
    paper.lineTo(right, top + pick * high);
  }
  paper.stroke();
}
