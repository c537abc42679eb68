import { type Document, palette, roomHigh, roomWide, round, type Shape } from "@drawcord/page";
import { LessonError } from "../error.js";

/** What blank paper is ruled for. */
export interface UnitPaperOptions {
  /** Ends of a unit, and picks of a row. */
  readonly unitEnds: number;
  /** Picks of a row of the lift plan. */
  readonly rowPicks: number;
  /** Ends and picks in a centimetre. */
  readonly sett: number;
  /** Picks in a centimetre. */
  readonly picks: number;
  /** Width of a unit on paper in mm; default 4. */
  readonly width?: number;
  /** The heading; default `Unit paper`. */
  readonly title?: string;
}

/** Room at the left and below for numbers, in mm. */
const EDGE = 8;

/**
 * Blank paper to design on: a square a unit and a row, as wide and as high as they lie to each other in the cloth, with a
 * heavy line every ten.
 * @param options ends and picks of a square, the sett, and the size on paper
 * @throws {LessonError} `bad-paper` for sizes that no paper has
 * @example unitPaper({ unitEnds: 4, rowPicks: 4, sett: 12, picks: 12 }).title // "Unit paper"
 */
export function unitPaper(options: UnitPaperOptions): Document {
  const { picks, rowPicks, sett, title = "Unit paper", unitEnds, width = 4 } = options;
  const high = (width * (rowPicks / picks)) / (unitEnds / sett);
  if (!(width >= 1.5 && width <= 40 && high >= 1.5 && high <= 40)) {
    const size = `${width.toFixed(1)} by ${high.toFixed(1)} mm`;
    throw new LessonError("bad-paper", `a square of the paper is ${size}; expected 1.5 to 40 mm each way`, {
      width,
      high,
    });
  }
  const columns = Math.floor((roomWide - EDGE) / width);
  const rows = Math.floor((roomHigh - EDGE) / high);
  const scale = unitEnds / sett / (width / 10);
  return {
    title,
    subtitle: `a square is a unit of ${unitEnds} ends by a row of ${rowPicks} picks, at ${sett} ends and ${picks} picks in a cm`,
    parts: [
      {
        name: "unit-paper",
        title: "Blank unit paper",
        blocks: [
          {
            kind: "pictures",
            pictures: [
              {
                id: "unit-paper-squares",
                caption: `${columns} units by ${rows} rows; on paper ${scale >= 1 ? `1 mm stands for ${round(scale)} mm of cloth` : `the cloth is drawn ${round(1 / scale)} times as large`}. Row 1 is at the bottom`,
                alt: `Empty squared paper of ${columns} units by ${rows} rows.`,
                drawing: {
                  width: EDGE + columns * width,
                  height: rows * high + EDGE,
                  shapes: ruling(columns, rows, width, high),
                },
              },
            ],
          },
        ],
      },
    ],
  };
}

function ruling(columns: number, rows: number, width: number, high: number): Shape[] {
  const foot = rows * high;
  const thin: string[] = [];
  const heavy: string[] = [];
  const numbers: Shape[] = [];
  for (let column = 0; column <= columns; column++) {
    const at = round(EDGE + column * width);
    (column % 10 === 0 || column === columns ? heavy : thin).push(`M${at} 0v${round(foot)}`);
    if (column > 0 && column % 10 === 0) numbers.push(number(at, foot + 4, column, "middle"));
  }
  for (let row = 0; row <= rows; row++) {
    const at = round(foot - row * high);
    (row % 10 === 0 || row === rows ? heavy : thin).push(`M${EDGE} ${at}h${round(columns * width)}`);
    if (row > 0 && row % 10 === 0) numbers.push(number(EDGE - 1.2, at + 1, row, "end"));
  }
  return [
    { kind: "path", d: thin.join(""), stroke: palette.rule, width: 0.12 },
    { kind: "path", d: heavy.join(""), stroke: palette.ink, width: 0.3 },
    ...numbers,
  ];
}

function number(x: number, y: number, value: number, anchor: "middle" | "end"): Shape {
  return {
    kind: "text",
    x,
    y: round(y),
    text: `${value}`,
    size: 2.6,
    face: "sans",
    fill: palette.ink,
    anchor,
  };
}
