import { readFileSync } from "node:fs";
import { drawdownOfDraft } from "@drawcord/check";
import { toText } from "@drawcord/grid";
import { expand, wovenRows } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  coloursOfRecipe,
  draftOfRecipe,
  drawdownOfRecipe,
  FileError,
  formatRecipe,
  placesOf,
  type Recipe,
  reviseDraft,
  soundRecipe,
  soundWif,
  writeRecipe,
  writeWif,
} from "../../src/index.js";
import { meaning } from "./meaning.js";

const head = `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: "X 9 1-4 3-1 9 X" }
`;
const blocks = `{ hem: { rows: [none] }, edge: { rows: [9] }, moth: { picture: "#...\\n.##.\\n..##" } }`;
const yarns = `yarns:
  warp: { count: 20/2 Ne }
  weft: { count: 20/2 Ne }
  madder: { count: 20/2 Ne }
  gold: { count: 20/2 Ne }
`;
const read = (text: string): Recipe => soundRecipe(text, "test");
const refusal = (text: string): string => {
  try {
    read(text);
  } catch (error) {
    if (error instanceof FileError) return `${error.code}: ${error.sentence}`;
    throw error;
  }
  return "none";
};

const linesOfRows = (recipe: Recipe) =>
  placesOf(recipe)
    .rows()
    .map(({ line }) => line);

describe("pieces on one warp", () => {
  const lines = fc.array(
    fc
      .tuple(
        fc.constantFrom("hem", "edge", "moth"),
        fc.constantFrom("", " *2", " upside-down", " mirrored on 1-4", " with edge", " *2 with edge"),
      )
      .map(([block, change]) => (block !== "moth" && change.includes("with") ? block : block + change)),
    { minLength: 1, maxLength: 4 },
  );

  it("one piece written as pieces weaves what it weaves without", () => {
    fc.assert(
      fc.property(lines, (order) => {
        const plain = read(`${head}lifts: { picks: 4, blocks: ${blocks}, order: [${order.join(", ")}] }\n`);
        const piece = read(
          `${head}lifts: { picks: 4, blocks: ${blocks} }\npieces: [{ name: moths, lifts: { order: [${order.join(", ")}] } }]\n`,
        );
        expect(piece.draft).toEqual(plain.draft);
        expect(piece.pieces[0]!.wefts).toEqual(plain.pieces[0]!.wefts);
        expect(linesOfRows(piece)).toEqual(linesOfRows(plain));
      }),
      { numRuns: 40 },
    );
  });

  it("expanded one by one are the stretches of the whole", () => {
    fc.assert(
      fc.property(lines, lines, (first, second) => {
        // Rows of four picks over a treadling of four: the second piece begins where the treadling does.
        const whole = read(
          `${head}lifts: { picks: 4, blocks: ${blocks}, order: [${[...first, ...second].join(", ")}] }\n`,
        );
        const { pieces } = read(
          `${head}lifts: { picks: 4, blocks: ${blocks} }\npieces:\n  - { name: a, lifts: { order: [${first.join(", ")}] } }\n  - { name: b, count: 3, lifts: { order: [${second.join(", ")}] } }\n`,
        );
        const drawdowns = pieces.map(({ draft }) => toText(expand(draft).drawdown));
        expect(drawdowns.toReversed().join("\n")).toBe(toText(expand(whole.draft).drawdown));
        expect(pieces.map(({ count }) => count)).toEqual([1, 3]);
      }),
      { numRuns: 40 },
    );
  });

  it("have treadlings, limits, blocks and a counterchange of their own", () => {
    const { draft, pieces } = read(`${head}limits: { float: 9, open-cuts: 5 % }
lifts: { picks: 4, blocks: ${blocks} }
pieces:
  - { name: one, lifts: { order: [moth] } }
  - name: two
    counterchange: 1-4
    ground: { steps: [{ raise: 1, sink: 4 }, { raise: 2, sink: 3 }] }
    limits: { float: 7 }
    lifts: { picks: 2, blocks: { dot: { rows: [1 4] } }, order: [dot, moth] }
`);
    expect(draft).toBe(pieces[0]!.draft);
    expect(pieces[1]!.draft.lifts).toEqual([
      [2, 3],
      [1, 2],
      [1, 4],
      [2, 3, 4],
    ]);
    expect(pieces[1]!.draft.picksPerRow).toEqual([2, 2, 2, 2]);
    expect(pieces[1]!.draft.ground.steps).toHaveLength(2);
    expect(pieces[1]!.draft.ground.threading).toBe(pieces[0]!.draft.ground.threading);
    expect(pieces.map(({ limits }) => limits)).toEqual([
      { float: { threads: 9 }, openCuts: 5 },
      { float: { threads: 7 }, openCuts: 5 },
    ]);
  });

  it("are filled to their length, and the rows left over are told", () => {
    const { pieces } = read(`${head}cloth: { picks: 10 per cm, shrinkage: { length: 10 % } }
project: { hems: 4 cm }
lifts: { picks: 4, blocks: ${blocks} }
pieces: [{ name: a, length: 41 cm, lifts: { order: [hem *2, moth *fill, hem *2] } }]
`);
    // 45 cm finished with hems, 50 cm on the loom: 500 picks, 125 rows, of which 121 are the moth's: 40 times and 1 over.
    expect(pieces[0]).toMatchObject({ wantedRows: 125, over: 1 });
    expect(pieces[0]!.draft.lifts).toHaveLength(124);
    expect(
      wovenRows(pieces[0]!.order!, (block) => pieces[0]!.blocks![block]!.length)[121]!.blocks[0],
    ).toEqual({
      block: "moth",
      row: 2,
      again: 39,
    });
  });
});

describe("colours", () => {
  const coloured = (more: string, lifts = "order: [moth *2]") => `${head}${yarns}${more}
lifts: { picks: 2, blocks: { moth: { rows: [1, 2], weft: gold madder*2 } , hem: { rows: [none] } }, ${lifts} }
`;

  it("of the ends are an order in the notation of the threading", () => {
    expect(
      read(`${head}${yarns}colours: { warp: "gold*2 (warp madder)*2" }\nlifts: { picks: 4, rows: [9] }`).warp,
    ).toEqual(["gold", "gold", "warp", "madder", "warp", "madder"]);
  });

  it("of the picks are those of the block, then of the piece, then of all", () => {
    const { pieces } = read(
      coloured("colours: { weft: madder }", "").replace(", }", " }") +
        `pieces:
  - { name: a, lifts: { order: [hem *2, moth *2] } }
  - { name: b, weft: weft gold, lifts: { order: [hem *2, moth] } }
`,
    );
    const all = (piece: number) => pieces[piece]!.wefts.join(" ");
    expect(all(0)).toBe("madder madder madder madder gold madder madder gold madder madder gold madder");
    expect(all(1)).toBe("weft gold weft gold gold madder madder gold");
  });

  it("of a pattern weft run over its own picks alone", () => {
    const { pieces } = read(`recipe: 1
ground: { weave: plain with pattern weft tied in halves within 7 }
units: { ends: 4, threading: 1-4 }
${yarns}colours: { wefts: { pattern: gold madder } }
lifts: { picks: 8, rows: [1] }
`);
    expect(pieces[0]!.wefts).toEqual(["weft", "gold", "weft", "madder", "weft", "gold", "weft", "madder"]);
  });
});

it("a recipe of pieces and colours that is written reads back as the same", () => {
  const text = `${head}${yarns}cloth: { picks: 10 per cm }
colours: { warp: "gold*8 warp*20 gold*8" }
lifts: { picks: 4, blocks: ${blocks} }
pieces:
  - { name: a, count: 2, length: 30 cm, weft: madder, lifts: { order: [moth *fill with edge] } }
  - { name: b, weft: madder*2 gold, limits: { float: 7 }, lifts: { picks: 2, order: [moth upside-down] }, ground: { steps: [{ raise: 1, sink: 4 }, { raise: 2, sink: 3, weft: gold }] } }
`;
  const found = meaning(text);
  expect(found?.pieces).toHaveLength(2);
  expect(meaning(writeRecipe(read(text)))).toEqual(found);
  const single = `${head}${yarns}colours: { warp: gold warp, weft: madder*2 gold }\nlifts: { picks: 4, rows: [1, 9] }\n`;
  expect(meaning(writeRecipe(read(single)))).toEqual(meaning(single));
});

it("a row of a block that pieces share is changed where it stands, and lifts are never written over it", () => {
  const text = `${head}lifts: { picks: 4, blocks: { moth: { rows: [1, 2] } } } # for all
pieces: [{ name: a, lifts: { order: [moth] } }, { name: b, lifts: { order: [moth *2] } }]
`;
  const { draft } = read(text);
  const { rewritten, text: revised } = reviseDraft(text, "test", { ...draft, lifts: [[1], [3]] });
  expect(rewritten).toEqual([]);
  expect(revised).toBe(text.replace("rows: [1, 2]", "rows: [1, 3]"));
  expect(() => reviseDraft(text, "test", { ...draft, lifts: [[1], [2], [3]] })).toThrow(
    `the lifts of a recipe with "pieces" are changed row by row in their blocks; these cannot be`,
  );
});

it("a recipe of pieces that is laid out keeps its comments and what it says", () => {
  const text = `${head}lifts: { picks: 4, blocks: ${blocks} } # shared by all
pieces:
  # the moths first
  - { name: a, lifts: { order: [moth with edge] } } # twice
`;
  const laid = formatRecipe(text, "test");
  expect(meaning(laid)).toEqual(meaning(text));
  for (const comment of ["# shared by all", "# the moths first", "# twice"]) expect(laid).toContain(comment);
  expect(formatRecipe(laid, "test")).toBe(laid);
});

describe("a recipe of pieces is refused", () => {
  const shared = `lifts: { picks: 4, blocks: ${blocks} }\n`;
  it.each([
    [
      "for a fill without a length",
      `${shared}pieces: [{ name: a, lifts: { order: [moth *fill] } }]`,
      `bad-notation: pieces, item 1.lifts.order, item 1: "*fill" fills a piece to its length; the length of this one is not known`,
    ],
    [
      "for unlike lengths together",
      `${shared}pieces: [{ name: a, lifts: { order: [moth with pair], blocks: { pair: { rows: [9, none] } } } }]`,
      `bad-notation: pieces, item 1.lifts.order, item 1: "moth" has 3 rows and "pair" 2; expected a length that whole repeats of "pair" come to, or "cut-short"`,
    ],
    [
      "for two pieces of one name",
      `${shared}pieces: [{ name: a, lifts: { order: [moth] } }, { name: a, lifts: { order: [moth] } }]`,
      `bad-value: a piece before this one is called "a" too; each needs its own name`,
    ],
    [
      "for a plan beside the pieces",
      `lifts: { picks: 4, rows: [1] }\npieces: [{ name: a, lifts: { rows: [1] } }]`,
      `bad-value: lifts.rows stands beside "pieces"; what is woven stands in the pieces, and "lifts" holds what they share: blocks and picks`,
    ],
    [
      "for no picks",
      `pieces: [{ name: a, lifts: { rows: [1] } }]`,
      `missing-key: pieces, item 1.lifts needs the key "picks", here or in the lifts that all pieces share`,
    ],
    [
      "for blocks that nothing weaves",
      shared,
      `missing-key: lifts needs the key "rows" or "picture" or "order"`,
    ],
    ["without lifts", "", `missing-key: a recipe needs the key "lifts"`],
    [
      "for a piece with no length to be filled by the block",
      `cloth: { picks: 10 per cm }\n${shared}pieces: [{ name: a, length: 8 mm, lifts: { order: [moth *fill] } }]`,
      `bad-notation: pieces, item 1.lifts.order, item 1: the piece has 2 rows and the other blocks take 0; "moth" takes 3 and has no room`,
    ],
    [
      "for a yarn that there is not",
      `${yarns}${shared}pieces: [{ name: a, weft: maddr, lifts: { order: [moth] } }]`,
      `unknown-yarn: pieces, item 1.weft names "maddr", which is no yarn of this recipe; did you mean "madder"?`,
    ],
    [
      "for a bracket left open",
      `${yarns}colours: { warp: (gold }\nlifts: { picks: 4, rows: [1] }`,
      `bad-notation: colours.warp: the end of the order was found; expected ")"`,
    ],
    [
      "for a yarn that nothing is woven of",
      `${yarns}lifts: { picks: 4, rows: [1] }`,
      `unknown-key: unknown key "madder" in yarns; the keys here are warp, weft`,
    ],
  ])("%s", (_why, text, sentence) => {
    expect(refusal(head + text)).toBe(sentence);
  });

  it("ten thousand pieces are read, in no long time", () => {
    const many = Array.from({ length: 10_000 }, (_, i) => `  - { name: p${i}, lifts: { order: [moth] } }`);
    const { pieces } = read(`${head}${shared}pieces:\n${many.join("\n")}\n`);
    expect(pieces).toHaveLength(10_000);
  });
});

describe("the fourth recipe of the winter course", () => {
  const url = new URL("../../../../shared/recipes/seasons.recipe.yaml", import.meta.url);
  const recipe = read(readFileSync(url, "utf8"));

  it("fills each of its four pieces to the length it says, with no row over", () => {
    expect(recipe.pieces.map(({ name, count }) => `${count} ${name}`)).toEqual([
      "2 tulips",
      "2 daisies",
      "2 acorns",
      "2 stars",
    ]);
    for (const { draft, over, wantedRows } of recipe.pieces) {
      expect(over).toBe(0);
      expect(draft.lifts).toHaveLength(wantedRows!);
    }
  });

  it("has the border that all share, and stripes for each end of the warp", () => {
    const borders = recipe.pieces.map(({ draft }) =>
      draft.lifts.map((lift) => lift.filter((shaft) => shaft > 14).join(" ")).join("\n"),
    );
    expect(new Set(borders).size).toBe(1);
    expect(recipe.warp).toHaveLength(expand(recipe.draft).drawdown.columns);
  });

  it("is expanded whole in the colours of its yarns", () => {
    const { warp, weft } = coloursOfRecipe(recipe);
    expect(warp).toHaveLength(356);
    expect(weft).toHaveLength(4 * 440);
    const { draft } = soundWif(writeWif(draftOfRecipe(recipe)), "seasons.wif");
    expect(draft.warp.colours).toEqual(warp);
    expect(draft.weft.colours).toEqual(weft);
    expect(drawdownOfDraft(draft).equals(drawdownOfRecipe(recipe))).toBe(true);
  });
});
