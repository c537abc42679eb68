import { type BitGrid, complement, crop, mirror } from "@drawcord/grid";
import {
  BETWEEN_PICTURES,
  NARROWEST_PICTURE,
  type Picture,
  palette,
  roomHigh,
  roomWide,
  round,
  type Shape,
} from "@drawcord/page";
import type { Stretch, Woven } from "../woven.js";
import { type BlockCuts, blocks } from "./blocks.js";
import { label } from "./label.js";
import { type ThreadColours, threads } from "./threads.js";

/** How close the threads lie, in threads a centimetre; a side left out is not known. */
export interface ThreadsPerCm {
  readonly endsPerCm?: number;
  readonly picksPerCm?: number;
}

/** Threads finer than this run together: the cloth is then drawn in blocks of mixed colour. */
const FINEST = 0.2;

/** A thread is drawn no wider than this, in mm. */
const COARSEST = 1.3;

/** A stretch of cloth, and which side of it. */
interface View {
  readonly id: string;
  readonly name: string;
  readonly ends: Stretch;
  readonly picks: Stretch;
  readonly side: "face" | "back";
}

/** Room for the pictures of the first page in mm, so that they stand on it below the title on every paper. */
const FIRST_HIGH = 158;
/** Room for the captions of two pictures one above the other. */
const CAPTIONS = 30;
/** Pictures side by side are no wider than this. */
const HALF = (roomWide - BETWEEN_PICTURES - 1) / 2;
/** A piece so many times as long as it is wide stands beside its repeat, not below it. */
const SLENDER = 1.6;

/**
 * Face and back of the whole piece at scale, and of one repeat of the figure thread by thread, on one page.
 */
export function clothPictures(woven: Woven, colours: ThreadColours, closeness: ThreadsPerCm): Picture[][] {
  const { repeat, unitSpans, rowSpans, ends, picks } = woven;
  const { across, along, known } = pitch(closeness);
  const piece = { ends: { start: 0, end: ends }, picks: { start: 0, end: picks } };
  const wide = ends * across;
  const long = picks * along;
  const full = known ? 1 : 2;
  const drawn = (id: string, name: string, part: typeof piece, scale: number, printed?: number) =>
    (["face", "back"] as const).map((side) =>
      clothPicture(
        woven,
        colours,
        { ...part, id: `${id}-${side}`, name, side },
        [across * scale, along * scale],
        printed,
      ),
    );
  const pieceAt = (scale: number) =>
    drawn("piece", "The whole piece", piece, scale, known ? scale : undefined);

  if (repeat.across === 1 && repeat.along === 1) {
    return [pieceAt(Math.min(HALF / wide, FIRST_HIGH / long, full))];
  }
  const one = { ends: spanOf(unitSpans, repeat.units), picks: spanOf(rowSpans, repeat.rows) };
  const oneWide = lengthOf(one.ends) * across;
  const oneLong = lengthOf(one.picks) * along;
  const isSlender = long / wide > SLENDER;
  const half = (FIRST_HIGH - CAPTIONS) / 2;
  const fits = Math.min(HALF / oneWide, half / oneLong, COARSEST / Math.max(across, along));
  // A repeat too fine for half a page takes the whole of its width, below the piece.
  const isFine = fits * Math.min(across, along) < FINEST;
  const scale = isFine ? Math.min((roomWide - 2) / oneWide, (roomHigh - 20) / oneLong) : fits;
  const close = drawn("repeat", "One repeat", one, scale);
  if (isFine)
    return [pieceAt(Math.min(HALF / wide, FIRST_HIGH / long, full)), ...close.map((each) => [each])];
  if (!isSlender) return [close, pieceAt(Math.min(HALF / wide, half / long, full))];
  const beside = (roomWide - Math.max(NARROWEST_PICTURE, oneWide * scale) - 2 * BETWEEN_PICTURES - 1) / 2;
  return [[...pieceAt(Math.min(beside / wide, FIRST_HIGH / long, full)), ...close]];
}

/** The size of an interlacement in mm as the cloth lies on the loom; a square mm where the sett is not known. */
function pitch({ endsPerCm, picksPerCm }: ThreadsPerCm): { across: number; along: number; known: boolean } {
  const known = endsPerCm !== undefined || picksPerCm !== undefined;
  const across = 10 / (endsPerCm ?? picksPerCm ?? 10);
  return { across, along: picksPerCm === undefined ? across : 10 / picksPerCm, known };
}

function clothPicture(
  woven: Woven,
  colours: ThreadColours,
  view: View,
  [sx, sy]: readonly [number, number],
  scale?: number,
): Picture {
  const grid = seen(woven.expansion.drawdown, view);
  const ends = colours.warp.slice(view.ends.start, view.ends.end);
  const seenColours = {
    warp: view.side === "back" ? ends.reverse() : ends,
    weft: colours.weft.slice(view.picks.start, view.picks.end),
  };
  const ruler = scale === undefined ? [] : rule(scale, grid.columns * sx, grid.rows * sy);
  const frame = { x: 0.2, y: 0.2, sx, sy };
  const fine = Math.min(sx, sy) < FINEST;
  const cloth = fine
    ? blocks(grid, seenColours, cutsOf(woven, view), frame)
    : threads(grid, seenColours, frame);
  const width = grid.columns * sx + 0.4;
  const height = grid.rows * sy + 0.4;
  const edge: Shape = {
    kind: "rect",
    x: 0.2,
    y: 0.2,
    width: width - 0.4,
    height: height - 0.4,
    stroke: palette.rule,
    strokeWidth: 0.15,
  };
  const shown = fine ? ". The threads run together: each block has the colour they mix to" : "";
  const sized = scale === undefined ? "" : `, ${scaleText(scale)}`;
  const turned = view.side === "back" ? ", turned over sideways" : "";
  const size = {
    width: Math.max(width, ruler.length > 0 ? 26 : 0),
    height: height + (ruler.length > 0 ? 7 : 0),
  };
  return {
    id: view.id,
    caption: `${view.name}, ${view.side}${turned}${sized}${shown}`,
    alt: `${view.name}, seen from the ${view.side}: ${grid.columns} ends by ${grid.rows} picks, first pick at the bottom.`,
    drawing: { ...size, shapes: [...cloth, edge, ...ruler] },
  };
}

/** What the eye meets: on the back, left and right change places and what was on top lies below. */
function seen(drawdown: BitGrid, { ends, picks, side }: View): BitGrid {
  const part = crop(drawdown, {
    row: picks.start,
    column: ends.start,
    rows: lengthOf(picks),
    columns: lengthOf(ends),
  });
  return side === "face" ? part : mirror(complement(part));
}

/** Units and rows are the blocks; selvedge ends are blocks of their own. */
function cutsOf({ unitSpans, rowSpans, ends: all }: Woven, { ends, picks, side }: View): BlockCuts {
  const first = unitSpans[0]!.start;
  const last = unitSpans.at(-1)!.end;
  const columns = [{ start: 0, end: first }, ...unitSpans, { start: last, end: all }];
  const inside = columns
    .filter(({ start, end }) => end > start && start >= ends.start && end <= ends.end)
    .map(({ start, end }) => ({ start: start - ends.start, end: end - ends.start }));
  const width = lengthOf(ends);
  return {
    ends:
      side === "face"
        ? inside
        : inside.map(({ start, end }) => ({ start: width - end, end: width - start })).reverse(),
    picks: rowSpans
      .filter(({ start, end }) => start >= picks.start && end <= picks.end)
      .map(({ start, end }) => ({ start: start - picks.start, end: end - picks.start })),
  };
}

/** A rule of a round length of cloth, drawn under it. */
function rule(scale: number, width: number, y: number): Shape[] {
  const long =
    [1, 2, 5, 10, 20, 50, 100, 200, 500].findLast((cm) => cm * 10 * scale <= Math.max(12, width)) ?? 1;
  const length = round(long * 10 * scale);
  return [
    {
      kind: "path",
      d: `M0.2 ${round(y + 2)}v1.6m0 -0.8h${length}m0 -0.8v1.6`,
      stroke: palette.muted,
      width: 0.2,
    },
    label(0.2, y + 6.4, `${long} cm of cloth on the loom`),
  ];
}

function scaleText(scale: number): string {
  return scale === 1 ? "at full size" : `1\u00a0:\u00a0${Number((1 / scale).toPrecision(2))}`;
}

function spanOf(spans: readonly Stretch[], { start, end }: Stretch): Stretch {
  return { start: spans[start]!.start, end: spans[end - 1]!.end };
}

function lengthOf({ start, end }: Stretch): number {
  return end - start;
}
