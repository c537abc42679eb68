import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as api from "../src/index.js";
import {
  and,
  andNot,
  BitGrid,
  blank,
  columnCounts,
  complement,
  crop,
  fromBooleans,
  fromCells,
  fromText,
  GridError,
  mirror,
  onesIn,
  or,
  paste,
  rowCounts,
  tile,
  toBooleans,
  toText,
  transpose,
  turn,
  upsideDown,
  withCell,
  xor,
} from "../src/index.js";
import { type Cells, cells, gridOf, side } from "./arbitraries.js";

/** Every grid that comes out: the words are as long as they must be, and nothing hides past the last column. */
function expectSound(grid: BitGrid): void {
  expect(grid.stride).toBe(Math.ceil(grid.columns / 32));
  expect(grid.words.length).toBe(grid.rows * grid.stride);
  const spare = grid.columns % 32;
  const last = Array.from({ length: grid.rows }, (_, row) => grid.words[(row + 1) * grid.stride - 1]!);
  // One look at all rows: a look at each costs more than what is looked at.
  if (spare !== 0) expect(last.find((word) => word >>> spare !== 0)).toBeUndefined();
}

/** The grid shows just what `raised` says, at the size given. */
function expectCells(
  grid: BitGrid,
  rows: number,
  columns: number,
  raised: (row: number, column: number) => boolean,
): void {
  expect([grid.rows, grid.columns]).toEqual([rows, columns]);
  expectSound(grid);
  const drawn = (cells: readonly (readonly boolean[])[]) =>
    cells.map((row) => row.map((cell) => (cell ? "#" : ".")).join("")).join("\n");
  const want = Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => raised(r, c)),
  );
  // As text, which is compared far quicker than lists of lists.
  expect(drawn(toBooleans(grid))).toBe(drawn(want));
}

const at = (twin: Cells, row: number, column: number): boolean => twin.cells[row]![column]!;

const law = (name: string, body: (twin: Cells, grid: BitGrid) => void) =>
  it(name, () =>
    fc.assert(
      fc.property(cells(), (twin) => {
        body(twin, gridOf(twin));
      }),
    ),
  );

const widths = [0, 1, 31, 32, 33, 63, 64, 65];

describe("building", () => {
  law("booleans go in and come out", (twin, grid) =>
    expectCells(grid, twin.rows, twin.columns, (r, c) => at(twin, r, c)),
  );

  law("a grid is made of its words again, whatever lies past the last column", (_, grid) => {
    const dirty = Uint32Array.from(grid.words);
    const spare = grid.columns % 32;
    for (let i = grid.stride - 1; spare !== 0 && i < dirty.length; i += grid.stride) dirty[i]! |= -1 << spare;
    const again = BitGrid.fromWords(grid.rows, grid.columns, dirty);
    expectSound(again);
    expect(again.equals(grid)).toBe(true);
  });

  it.each(widths)("%i columns, blank or filled", (columns) => {
    expectCells(blank(3, columns), 3, columns, () => false);
    expectCells(blank(3, columns, true), 3, columns, () => true);
    expectCells(blank(columns, 3, true), columns, 3, () => true);
  });

  it("copies the words it is given, and only adopts those it is given to own", () => {
    const words = Uint32Array.of(1);
    const copied = BitGrid.fromWords(1, 1, words);
    words[0] = 0;
    expect(copied.get(0, 0)).toBe(true);
    expect(BitGrid.own(1, 1, words).words).toBe(words);
  });
});

describe("text", () => {
  it("draws the first pick at the bottom", () => {
    const grid = fromText("#.#\n.#.");
    expect([grid.get(0, 0), grid.get(0, 1), grid.get(1, 0)]).toEqual([false, true, true]);
  });

  law("a drawing is read back the same", (_, grid) => {
    fc.pre(grid.columns > 0);
    expect(fromText(toText(grid)).equals(grid)).toBe(true);
    expect(fromText(`${toText(grid).replaceAll("\n", "\r\n")}\r\n`).equals(grid)).toBe(true);
  });

  it("an empty text is an empty grid", () => expectCells(fromText(""), 0, 0, () => false));
});

describe("one change at a time", () => {
  it("sets one interlacement and leaves the others and the old grid alone", () =>
    fc.assert(
      fc.property(cells(), fc.nat(), fc.nat(), fc.boolean(), (twin, r, c, raised) => {
        fc.pre(twin.rows > 0 && twin.columns > 0);
        const [row, column, grid] = [r % twin.rows, c % twin.columns, gridOf(twin)];
        expectCells(withCell(grid, row, column, raised), twin.rows, twin.columns, (i, j) =>
          i === row && j === column ? raised : at(twin, i, j),
        );
        expect(grid.equals(gridOf(twin))).toBe(true);
      }),
    ));
});

describe("turning and mirroring, against the slow twin", () => {
  law("transpose", (twin, grid) =>
    expectCells(transpose(grid), twin.columns, twin.rows, (r, c) => at(twin, c, r)),
  );
  law("mirror", (twin, grid) =>
    expectCells(mirror(grid), twin.rows, twin.columns, (r, c) => at(twin, r, twin.columns - 1 - c)),
  );
  law("upside down", (twin, grid) =>
    expectCells(upsideDown(grid), twin.rows, twin.columns, (r, c) => at(twin, twin.rows - 1 - r, c)),
  );
  law("a quarter turn clockwise, as drawn", (twin, grid) =>
    expectCells(turn(grid), twin.columns, twin.rows, (r, c) => at(twin, c, twin.columns - 1 - r)),
  );
  law("turned four times, it is itself; turned back, it was never turned", (_, grid) => {
    expect(turn(turn(turn(turn(grid)))).equals(grid)).toBe(true);
    for (const quarters of [-5, -1, 0, 1, 2, 3, 4, 9]) {
      expect(turn(turn(grid, quarters), -quarters).equals(grid)).toBe(true);
    }
    expect(turn(grid, 2).equals(turn(turn(grid)))).toBe(true);
    expect(turn(grid, 3).equals(turn(turn(turn(grid))))).toBe(true);
  });
  it("a corner goes where it should", () => {
    expect(toText(turn(fromText("#..\n...")))).toBe(".#\n..\n..");
  });
});

describe("combining", () => {
  const pair = fc
    .tuple(side, side)
    .chain(([r, c]) =>
      fc.tuple(cells(fc.constant(r), fc.constant(c)), cells(fc.constant(r), fc.constant(c))),
    );
  const ways: readonly [string, (a: BitGrid, b: BitGrid) => BitGrid, (a: boolean, b: boolean) => boolean][] =
    [
      ["and", and, (a, b) => a && b],
      ["or", or, (a, b) => a || b],
      ["xor", xor, (a, b) => a !== b],
      ["and not", andNot, (a, b) => a && !b],
    ];
  it.each(ways)("%s", (_, grids, bits) =>
    fc.assert(
      fc.property(pair, ([a, b]) =>
        expectCells(grids(gridOf(a), gridOf(b)), a.rows, a.columns, (r, c) => bits(at(a, r, c), at(b, r, c))),
      ),
    ),
  );
  law("complement", (twin, grid) =>
    expectCells(complement(grid), twin.rows, twin.columns, (r, c) => !at(twin, r, c)),
  );
});

describe("tiling, cropping, pasting", () => {
  it("tile fills any size with repeats", () =>
    fc.assert(
      fc.property(
        cells(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 70 })),
        side,
        side,
        (twin, rows, columns) =>
          expectCells(tile(gridOf(twin), rows, columns), rows, columns, (r, c) =>
            at(twin, r % twin.rows, c % twin.columns),
          ),
      ),
    ));

  it("crop takes out a rectangle, and paste lays it back", () =>
    fc.assert(
      fc.property(cells(), fc.nat(), fc.nat(), fc.nat(), fc.nat(), (twin, a, b, c, d) => {
        const grid = gridOf(twin);
        const [row, column] = [a % (twin.rows + 1), b % (twin.columns + 1)];
        const [rows, columns] = [c % (twin.rows - row + 1), d % (twin.columns - column + 1)];
        const part = crop(grid, { row, column, rows, columns });
        expectCells(part, rows, columns, (r, q) => at(twin, row + r, column + q));
        expect(paste(grid, part, row, column).equals(grid)).toBe(true);
        expectCells(paste(grid, complement(part), row, column), twin.rows, twin.columns, (r, q) => {
          const inside = r >= row && r < row + rows && q >= column && q < column + columns;
          return at(twin, r, q) !== inside;
        });
      }),
    ));
});

describe("counting", () => {
  law("raised in every row and column", (twin, grid) => {
    expect(Array.from(rowCounts(grid))).toEqual(twin.cells.map((row) => row.filter(Boolean).length));
    expect(Array.from(columnCounts(grid))).toEqual(
      Array.from({ length: twin.columns }, (_, c) => twin.cells.filter((row) => row[c]).length),
    );
  });
  it("ones in a word, against its binary digits", () =>
    fc.assert(
      fc.property(fc.integer(), (word) => {
        expect(onesIn(word)).toBe((word >>> 0).toString(2).replaceAll("0", "").length);
      }),
    ));
});

describe("runs", () => {
  type Run = [thread: number, start: number, length: number, raised: boolean];
  const seen = (scan: typeof api.scanRowRuns, grid: BitGrid): Run[] => {
    const runs: Run[] = [];
    scan(grid, (...run) => runs.push(run));
    return runs;
  };
  /** The oracle: a regular expression over each printed row. */
  const printed = (grid: BitGrid): Run[] =>
    toText(grid)
      .split("\n")
      .reverse()
      .flatMap((line, row) =>
        Array.from(line.matchAll(/#+|\.+/g), (m): Run => [row, m.index, m[0].length, m[0].startsWith("#")]),
      );

  law("along rows, as a regular expression finds them", (_, grid) =>
    expect(seen(api.scanRowRuns, grid)).toEqual(printed(grid)),
  );
  law("along columns, as they lie along the rows of the transpose", (_, grid) =>
    expect(seen(api.scanColumnRuns, grid)).toEqual(printed(transpose(grid))),
  );
  it.each(widths)("a single run over %i columns", (columns) => {
    expect(seen(api.scanRowRuns, blank(1, columns, true))).toEqual(
      columns === 0 ? [] : [[0, 0, columns, true]],
    );
  });
});

describe("equality", () => {
  law("a grid equals its copy and nothing that differs in one interlacement", (twin, grid) => {
    expect(grid.equals(gridOf(twin))).toBe(true);
    fc.pre(twin.rows > 0 && twin.columns > 0);
    const [row, column] = [twin.rows - 1, twin.columns - 1];
    expect(grid.equals(withCell(grid, row, column, !at(twin, row, column)))).toBe(false);
  });
  it("size counts, even where there is nothing in it", () => {
    expect(blank(0, 3).equals(blank(3, 0))).toBe(false);
    expect(blank(2, 1).equals(blank(1, 2))).toBe(false);
    expect(blank(1, 3).equals(blank(2, 3))).toBe(false);
    expect(blank(1, 3).equals(blank(1, 2))).toBe(false);
  });
});

describe("what cannot be is refused with a sentence", () => {
  const refusal = (make: () => unknown): string => {
    try {
      make();
    } catch (error) {
      expect(error).toBeInstanceOf(GridError);
      const { code, message, facts } = error as GridError;
      expect(Object.keys(facts), `facts of ${code}`).not.toEqual([]);
      return `${code}: ${message}`;
    }
    throw new Error("nothing was refused");
  };
  const wanted = "cannot be; expected whole numbers from 0, 536870912 words in all at the most";
  it.each<[string, () => unknown, string]>([
    ["negative", () => blank(-1, 2), `bad-size: a grid of -1 rows and 2 columns ${wanted}`],
    ["fraction", () => blank(2, 1.5), `bad-size: a grid of 2 rows and 1.5 columns ${wanted}`],
    [
      "not a number",
      () => fromCells(Number.NaN, 1, () => true),
      `bad-size: a grid of NaN rows and 1 columns ${wanted}`,
    ],
    ["endless", () => blank(1, Infinity), `bad-size: a grid of 1 rows and Infinity columns ${wanted}`],
    ["too large", () => blank(1e9, 33), `bad-size: a grid of 1000000000 rows and 33 columns ${wanted}`],
    [
      "too wide",
      () => tile(fromText("#"), 1, 2 ** 31),
      `bad-size: a grid of 1 rows and 2147483648 columns ${wanted}`,
    ],
    [
      "words",
      () => BitGrid.fromWords(2, 33, [1, 2, 3]),
      "wrong-length: 2 rows of 33 columns take 4 words; 3 were given",
    ],
    ["uneven", () => fromBooleans([[true], []]), "uneven-rows: row 2 has 0 columns; the first row has 1"],
    ["uneven text", () => fromText("##\n#"), "uneven-rows: line 2 has 1 columns; line 1 has 2"],
    [
      "character",
      () => fromText("#.\n#x"),
      'bad-character: line 2, column 2: found "x"; a drawing has only # (raised) and . (lowered)',
    ],
    [
      "row",
      () => blank(2, 2).get(2, 0),
      "outside: row 2, column 0 lies outside a grid of 2 rows and 2 columns",
    ],
    [
      "column",
      () => withCell(blank(2, 2), 0, -1, true),
      "outside: row 0, column -1 lies outside a grid of 2 rows and 2 columns",
    ],
    [
      "fraction of a cell",
      () => blank(2, 2).get(0.5, 0),
      "outside: row 0.5, column 0 lies outside a grid of 2 rows and 2 columns",
    ],
    [
      "crop",
      () => crop(blank(2, 2), { row: 1, column: 0, rows: 2, columns: 1 }),
      "outside: 2 rows and 1 columns from row 1, column 0 do not lie inside a grid of 2 rows and 2 columns",
    ],
    [
      "crop below",
      () => crop(blank(2, 2), { row: -1, column: 0, rows: 1, columns: 1 }),
      "outside: 1 rows and 1 columns from row -1, column 0 do not lie inside a grid of 2 rows and 2 columns",
    ],
    [
      "crop to the left",
      () => crop(blank(2, 2), { row: 0, column: -1, rows: 1, columns: 1 }),
      "outside: 1 rows and 1 columns from row 0, column -1 do not lie inside a grid of 2 rows and 2 columns",
    ],
    [
      "crop at half an end",
      () => crop(blank(2, 2), { row: 0, column: 0.5, rows: 1, columns: 1 }),
      "outside: 1 rows and 1 columns from row 0, column 0.5 do not lie inside a grid of 2 rows and 2 columns",
    ],
    [
      "crop at half a pick",
      () => crop(blank(2, 2), { row: 0.5, column: 0, rows: 1, columns: 1 }),
      "outside: 1 rows and 1 columns from row 0.5, column 0 do not lie inside a grid of 2 rows and 2 columns",
    ],
    [
      "paste",
      () => paste(blank(2, 2), blank(1, 2), 0, 1),
      "outside: 1 rows and 2 columns from row 0, column 1 do not lie inside a grid of 2 rows and 2 columns",
    ],
    [
      "sizes",
      () => and(blank(1, 2), blank(2, 1)),
      "unlike-size: grids of 1 x 2 and 2 x 1 cannot be combined; they need the same rows and columns",
    ],
    [
      "columns",
      () => xor(blank(1, 2), blank(1, 3)),
      "unlike-size: grids of 1 x 2 and 1 x 3 cannot be combined; they need the same rows and columns",
    ],
    [
      "rows",
      () => or(blank(1, 2), blank(2, 2)),
      "unlike-size: grids of 1 x 2 and 2 x 2 cannot be combined; they need the same rows and columns",
    ],
    [
      "nothing to repeat",
      () => tile(blank(0, 0), 2, 2),
      "bad-size: a grid of 0 rows and 0 columns has nothing to repeat over 2 rows and 2 columns",
    ],
  ])("%s", (_, make, sentence) => expect(refusal(make)).toBe(sentence));
});
