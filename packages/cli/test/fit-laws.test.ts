/** The law of `fit`, over recipes of many shapes: what it writes passes, and comes to what it says. */
import { type Recipe, reviseRecipe, soundRecipe } from "@drawcord/files";
import { checkRecipe, numberRules, statedValues } from "@drawcord/review";
import { convert, parseQuantity, plan, type Quantity, quantity } from "@drawcord/yarn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Fit, nearestFits } from "../src/fit/fit.js";
import { fitLength } from "../src/fit/length.js";
import { fitted } from "../src/fit/passes.js";
import { projectOfPiece } from "../src/fit/piece.js";
import { fitPieces, fitWarp } from "../src/fit/warp.js";
import { fitWidth } from "../src/fit/width.js";

const threadings = [
  "X*3 (1-4 3-2)*5 1 X*3",
  "1 (1-4 3-2)*6 1",
  "X*2 1-4 3-1 X*2",
  "1-4 3-1",
  "(1-2)*4 (3 4)*6 (2 1)*4",
];
const orders = [
  ["hem", "leaf*6", "hem"],
  ["leaf*4"],
  ["line", "leaf*4 with edge on 4", "line"],
  ["hem", "leaf", "hem upside-down"],
  ["hem*2", "leaf*3", "line", "leaf*3 upside-down", "hem*2"],
];
const filling = [["leaf*fill"], ["hem", "leaf *fill with edge on 4", "hem"]];

interface Shape {
  readonly threading: string;
  readonly order: readonly string[];
  readonly pieces: number;
  readonly sett: number;
  readonly losses: readonly [drawIn: number, takeUp: number, shrinkage: number];
  readonly inches: boolean;
  readonly striped: boolean;
}

const shape = (order: fc.Arbitrary<readonly string[]>): fc.Arbitrary<Shape> =>
  fc.record({
    threading: fc.constantFrom(...threadings),
    order,
    pieces: fc.integer({ min: 0, max: 3 }),
    sett: fc.integer({ min: 90, max: 130 }).map((tenths) => tenths / 10),
    losses: fc.tuple(fc.nat({ max: 12 }), fc.nat({ max: 12 }), fc.nat({ max: 12 })),
    inches: fc.boolean(),
    striped: fc.boolean(),
  });

/** A sound recipe of a shape, that says its own width and length and states every number; of 0 pieces it names none. */
function recipeOf(of: Shape): Recipe {
  const { inches, losses, order, pieces, sett, striped, threading } = of;
  const [drawIn, takeUp, shrinkage] = losses;
  const lifts = `order: [${order.map((line) => JSON.stringify(line)).join(", ")}]`;
  const named = Array.from(
    { length: pieces },
    (_, i) => `  - { name: p${i}, count: ${i + 1}, length: ${40 + 9 * i} cm, lifts: { ${lifts} } }\n`,
  );
  const text = (more: string, length: string) => `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: ${threading} }
lifts:
  picks: 4
  blocks: { hem: { rows: [none, 1] }, line: { rows: [4] }, edge: { rows: [1, none, 1] }, leaf: { rows: [1, 1-2, 2 3, 3, 3, 1] } }
${pieces === 0 ? `  ${lifts}\n` : `pieces:\n${named.join("")}`}${more}yarns:
  warp: { count: 10/2 Ne, fibre: cotton }
  weft: { count: 10/2 Ne, fibre: cotton }
  blue: { count: 10/2 Ne, fibre: cotton }
cloth:
  sett: ${inches ? `${(sett * 2.54).toFixed(3)} per inch` : `${sett} per cm`}
  picks: ${sett} per cm
  draw-in: ${drawIn} %
  take-up: ${takeUp} %
  shrinkage: ${shrinkage} %
project: { hems: 3 cm, gaps: 2 cm, waste: 60 cm${pieces === 0 ? `, pieces: 3, length: ${length}` : ""} }
`;
  const plainEnds = soundRecipe(text("colours: { warp: warp*3 blue }\n", "40 cm"), "law").draft;
  const ends = 4 * plainEnds.threading.length;
  const colours = striped
    ? `colours: { warp: blue*8 warp*${ends - 16} blue*8 }\n`
    : "colours: { warp: warp*3 blue }\n";
  const first = soundRecipe(text(colours, "40 cm"), "law");
  return stating(soundRecipe(text(colours, lengthOf(first)), "law"));
}

/** Each piece as long as its rows are, and every number stated. */
function stating(recipe: Recipe): Recipe {
  const lengths = recipe.pieces.flatMap((piece) =>
    piece.path.length === 0
      ? []
      : [{ path: [...piece.path, "length"], value: lengthOf({ ...recipe, pieces: [piece] }) }],
  );
  const agreed = soundRecipe(reviseRecipe(recipe.text, "law", lengths).text, "law");
  const stated = Object.entries(statedValues(agreed)).map(([name, value]) => ({
    path: ["stated", name],
    value,
  }));
  return soundRecipe(reviseRecipe(agreed.text, "law", stated).text, "law");
}

/** The finished length that the rows of a recipe of one piece make. */
function lengthOf(recipe: Recipe): string {
  const { length: _, ...woven } = projectOfPiece(recipe, recipe.pieces[0]!);
  return `${convert(plan(woven).finishedLength!, "cm").value.toFixed(2)} cm`;
}

const bytes = (recipe: Recipe) => new TextEncoder().encode(recipe.text);
const numbersOf = (recipe: Recipe) =>
  checkRecipe(recipe, { rules: numberRules })
    .findings.filter(({ severity }) => severity !== "note")
    .map(({ message }) => message);

/** Both of the nearest fits pass, one below and one above, and each comes to what it says. */
function holds(recipe: Recipe, fits: readonly Fit[], wanted: Quantity, made: (of: Recipe) => Quantity): void {
  const { above, below } = nearestFits(fits, wanted);
  expect(above ?? below).toBeDefined();
  for (const fit of [below, above]) {
    if (fit === undefined) continue;
    const { finds, text } = fitted(bytes(recipe), recipe, fit);
    expect(finds).toEqual([]);
    const written = soundRecipe(text, "law");
    expect(numbersOf(written), text).toEqual([]);
    expect(convert(made(written), fit.comes.unit).value).toBeCloseTo(fit.comes.value, 2);
  }
}

const few = { numRuns: 4 };
const sizes = fc.tuple(fc.integer({ min: 80, max: 900 }), fc.boolean());
const sizeOf = ([mm, inches]: readonly [number, boolean]): Quantity =>
  inches ? quantity(Number((mm / 25.4).toFixed(2)), "in") : quantity(mm / 10, "cm");

describe("what fit writes passes", () => {
  it("before anything is fitted the numbers agree", () => {
    fc.assert(
      fc.property(shape(fc.constantFrom(...orders, ...filling)), (of) => {
        expect(numbersOf(recipeOf(of))).toEqual([]);
      }),
      few,
    );
  });

  it("for a length, of the only piece or of one of several", () => {
    fc.assert(
      fc.property(shape(fc.constantFrom(...orders, ...filling)), sizes, (of, size) => {
        const recipe = recipeOf(of);
        const piece = recipe.pieces.at(-1)!;
        const wanted = sizeOf(size);
        holds(recipe, fitLength(bytes(recipe), recipe, piece, wanted), wanted, (written) => {
          const { length: _, ...woven } = projectOfPiece(written, written.pieces.at(-1)!);
          return plan(woven).finishedLength!;
        });
      }),
      few,
    );
  });

  it("for a width", () => {
    fc.assert(
      fc.property(shape(fc.constantFrom(...orders)), sizes, (of, size) => {
        const recipe = recipeOf(of);
        const wanted = sizeOf(size);
        const made = (written: Recipe) => plan(projectOfPiece(written, written.pieces[0]!)).finishedWidth!;
        // Narrower than its figure no cloth can be without losing some of it.
        fc.pre(convert(wanted, "mm").value > convert(made(recipe), "mm").value);
        holds(recipe, fitWidth(bytes(recipe), recipe, wanted), wanted, made);
      }),
      few,
    );
  });

  it("for a warp, and for a number of pieces", () => {
    fc.assert(
      fc.property(
        shape(fc.constantFrom(...orders, ...filling)),
        fc.integer({ min: 50, max: 400 }),
        fc.integer({ min: 1, max: 12 }),
        (of, decimetres, count) => {
          const recipe = recipeOf(of);
          const piece = recipe.pieces.at(-1)!;
          const wound = parseQuantity(`${decimetres / 10} m`);
          holds(
            recipe,
            fitWarp(bytes(recipe), recipe, piece, wound),
            wound,
            (written) => written.project.warp!,
          );
          const pieces = fitPieces(bytes(recipe), recipe, piece, count);
          holds(recipe, [pieces], pieces.comes, (written) =>
            quantity(
              piece.path.length > 0 ? written.pieces.at(-1)!.count : written.project.pieces!,
              "pieces",
            ),
          );
        },
      ),
      few,
    );
  });
});
