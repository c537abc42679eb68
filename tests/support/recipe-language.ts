/** The manual of the recipe's language: every key of its schema, and every word of its notations with a picture. */
import { drawSvg, squaresPath } from "@drawcord/draw";
import { coloursOfRecipe, drawdownOfRecipe, type Schema, soundRecipe } from "@drawcord/files";
import { type BitGrid, fromCells } from "@drawcord/grid";
import { groundFromWeave } from "@drawcord/ground";
import { editorSchema } from "@drawcord/review";
import { expand, gridFromLifts, parseLifts, parseThreading } from "@drawcord/units";
import { stringify } from "yaml";
import { barsSvg, numberKeys } from "./number-pictures.js";

/** A word or a key, what is shown of it, and the picture of that. */
interface Shown {
  /** The word as it is written. */
  readonly word: string;
  /** What it does, in a sentence. */
  readonly says: string;
  /** The text that the picture is of. */
  readonly text: string;
  readonly picture: string;
}

/** A file of the manual: the page, or one of its pictures. */
export interface ManualFile {
  readonly name: string;
  readonly text: string;
}

/** The page and its pictures. */
export function recipeLanguage(): readonly ManualFile[] {
  const groups = [
    threadingWords(),
    rowWords(),
    orderWords(),
    yarnWords(),
    weaveWords(),
    pieceKeys(),
    measureKeys(),
  ];
  const pictures = groups.flatMap(({ id, shown }) =>
    shown.map(({ picture }, i) => ({ name: pictureName(id, i), text: picture })),
  );
  return [{ name: "recipe-language.md", text: pageOf(groups) }, ...pictures];
}

/** Words of one notation. */
interface Group {
  readonly id: string;
  readonly title: string;
  readonly lead: string;
  readonly shown: readonly Shown[];
}

function pictureName(id: string, index: number): string {
  return `recipe-language/${id}-${index + 1}.svg`;
}

function pageOf(groups: readonly Group[]): string {
  const schema = editorSchema();
  const notations = groups.map(({ id, lead, shown, title }) =>
    [
      `## ${title}`,
      lead,
      ...shown.map(({ says, text, word }, i) =>
        [
          `### \`${word}\``,
          says,
          `\`\`\`yaml\n${text}\n\`\`\``,
          `![${altOf(word, says)}](${pictureName(id, i)})`,
        ].join("\n\n"),
      ),
    ].join("\n\n"),
  );
  const sections = Object.entries(schema.properties!).map(([key, of]) => sectionOf(key, of));
  return `${[
    "# The language of a recipe",
    "Every key that a recipe may have, and every word of the notations that stand in its values, each with what it weaves. In the pictures a column is a unit and a line is a row, the row woven first at the bottom; a dark square is drawn. Pictures of cloth show the ends as they lie on the face, the first pick at the bottom.",
    "Written from the schema of `@drawcord/files` and from the examples in `tests/support/recipe-language.ts`, which are read as recipes are; `npx vitest run tests/recipe-language.test.ts -u` writes it anew.",
    editorHelp,
    "The least recipe:",
    `\`\`\`yaml\n${least.trimEnd()}\n\`\`\``,
    ...notations,
    "## The keys",
    "Lengths, weights and shares are written with their unit: `43 cm`, `13 1/2 in`, `250 g`, `6 %`; setts as `10 per cm` or `24 per inch`.",
    ...sections,
  ].join("\n\n")}\n`;
}

const editorHelp = `An editor that knows YAML schemas completes the keys and says what each does. The second line of a recipe that \`drawcord init\` writes leads it to the schema, which stands in the package of the command, in \`@drawcord/files\`, and beside the guide as \`recipe.schema.json\`:

\`\`\`yaml
# yaml-language-server: $schema=node_modules/drawcord/recipe.schema.json
\`\`\``;

const least = `recipe: 1
title: First runner
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X*2 9 (1-8 7-2)*4 1 9 X*2 }
lifts: { picks: 4, rows: [9, 1 3-5 9, none] }
`;

/** The keys of a section, each with its meaning and an example. */
function sectionOf(key: string, schema: Schema): string {
  const rows = keysOf([key], schema).map(([path, of]) => {
    const example = of.examples?.[0];
    const shown = example === undefined ? "" : `\`${inLine(example)}\``;
    return `| \`${path.join(".")}\` | ${cell(of.description ?? "")} | ${cell(shown)} |`;
  });
  return [
    `### \`${key}\``,
    cell(schema.description ?? ""),
    ["| key | what it says | for example |", "| --- | --- | --- |", ...rows].join("\n"),
  ].join("\n\n");
}

/** Every key under a schema with the way to it; `NAME` stands for a name of the weaver's own, `[]` for each entry of a list. */
function keysOf(path: readonly string[], schema: Schema): readonly (readonly [readonly string[], Schema])[] {
  const { additionalProperties: free, items, properties = {} } = schema;
  const named = Object.entries(properties).flatMap(([key, of]) => keysOf([...path, key], of));
  const own = free === undefined || free === false ? [] : keysOf([...path, "NAME"], free);
  const listed =
    items === undefined || items.properties === undefined
      ? []
      : keysOf([...path.slice(0, -1), `${path.at(-1)}[]`], items);
  return [[path, schema], ...named, ...own, ...listed];
}

function cell(text: string): string {
  return text.replaceAll("|", "\\|").replaceAll("\n", " ");
}

/** A value in one line of YAML. */
function inLine(value: unknown): string {
  return stringify(value, { collectionStyle: "flow", lineWidth: 0 }).trim().replaceAll("\n", "\\n");
}

function altOf(word: string, says: string): string {
  return `${word}: ${says}`.replace(/[[\]`]/g, "");
}

function threadingWords(): Group {
  const words = [
    ["7", "The unit hangs on shaft 7.", "7"],
    ["X", "A static unit, which hangs on no pattern shaft and always weaves ground.", "X 1-3 X"],
    ["1-8", "One unit each on shafts 1 to 8, in order.", "1-8"],
    ["8-1", "The same downwards; after 1-8 it makes a point.", "1-8 7-1"],
    ["3+9", "A unit on both shafts, drawn with either.", "1-4 3+9 4-1"],
    ["5*4", "Four units on shaft 5.", "1 5*4 1"],
    ["(...)*3", "The group three times.", "(1-4 3-2)*3 1"],
    [
      "X*2 9 (1-8 7-2)*2 1 9 X*2",
      "All together: static units, a border on shaft 9 and two points.",
      "X*2 9 (1-8 7-2)*2 1 9 X*2",
    ],
  ] as const;
  return {
    id: "threading",
    title: "The threading",
    lead: "`units: threading` has a word for each unit or run of units, from left to right. The picture has a column for each unit and a line for each shaft, shaft 1 at the bottom.",
    shown: words.map(([word, says, text]) => {
      const threading = parseThreading(text);
      const shafts = threading.reduce((most, unit) => Math.max(most, ...unit), 1);
      return {
        word,
        says,
        text: `units: { ends: 4, threading: ${text} }`,
        picture: squaresSvg(
          fromCells(shafts, threading.length, (shaft, unit) => threading[unit]!.includes(shaft + 1)),
          text,
        ),
      };
    }),
  };
}

function rowWords(): Group {
  const words = [
    ["9", "Shaft 9 alone is drawn.", ["9"]],
    ["1 3-5 9", "Shafts 1, 3 to 5 and 9 are drawn.", ["1 3-5 9"]],
    ["none", "No shaft is drawn.", ["1-9", "none", "1-9"]],
    ["*3", "Three rows alike.", ["2 4 *3"]],
  ] as const;
  return {
    id: "rows",
    title: "The rows",
    lead: "`rows` has a line for each row, the row woven first at the top of the list. The picture has a column for each shaft.",
    shown: words.map(([word, says, lines]) => ({
      word,
      says,
      text: `lifts:\n  picks: 4\n  rows: [${lines.join(", ")}]`,
      picture: squaresSvg(gridFromLifts(parseLifts(lines), 9), lines.join("; ")),
    })),
  };
}

/** Half a moth, the middle at the right, and two blocks of a border. */
const blocks = `    moth:
      picture: |
        ......#.
        .###...#
        .#####.#
        ..######
        ...#####
        ..###.##
        ..##...#
        .......#
    vine:
      rows: [9, 10, 10, 9]
    dot:
      rows: [1 2, 1 2]
    chain:
      rows: [1, 1, 1 2, 2, 1 2]
`;

function recipeWith(order: readonly string[], extra = ""): string {
  return `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: 9-10 (1-8 7-2)*2 1 10-9 }
cloth: { picks: 10 per cm, shrinkage: 0 % }
lifts:
  picks: 4
  blocks:
${blocks}  order: [${order.join(", ")}]
${extra}`;
}

function orderWords(): Group {
  const words: readonly (readonly [word: string, says: string, order: readonly string[], extra?: string])[] =
    [
      ["moth", "The block as it stands.", ["moth"]],
      ["*3", "Three times, one after the other.", ["moth *2"]],
      [
        "*fill",
        "As often as whole repeats go into the length of the piece, here 20 rows; what is over is told.",
        ["vine", "dot *fill", "vine"],
        "project: { length: 8 cm }",
      ],
      [
        "on 9-10",
        "On other shafts: its shaft 1 on the first of those named, its shaft 2 on the second, and so on.",
        ["dot on 9-10", "dot on 7-8"],
      ],
      ["upside-down", "The last row first.", ["moth upside-down"]],
      [
        "mirrored on 1-8",
        "The first of the shafts is drawn for the last, and so on; without `on` all pattern shafts are meant, the border's too.",
        ["moth mirrored on 1-8"],
      ],
      ["turned on 1-8", "Both at once: half a turn.", ["moth turned on 1-8"]],
      [
        "exchanged on 1-8",
        "Drawn for undrawn on these shafts: figure becomes ground.",
        ["moth exchanged on 1-8"],
      ],
      ["brick on 1-8", "Once as it stands, and once moved by half of the shafts.", ["moth brick on 1-8"]],
      [
        "half-drop on 1-4 beside 5-8",
        "What shafts 1 to 4 draw comes again on 5 to 8, half of the rows later.",
        ["moth half-drop on 1-4 beside 5-8"],
      ],
      [
        "framed 2 rows of 1-10 beside 9-10",
        "Two rows across before the block and two after it, and the shafts of the edge drawn all along.",
        ["moth framed 2 rows of 1-10 beside 9-10"],
      ],
      [
        "framed in chain mitred on 1-8 beside 9-10",
        "In a border that turns its corners, built from the block `chain`, which stands upright with its shaft 1 outermost: on shafts 9 and 10 at the sides, and turned level over shafts 1 to 8 before and after. From every corner it runs to the middle of the side, where it meets itself. The sides come together in a mitre; without `on` all shafts that are not of the sides lie between them.",
        ["moth framed in chain mitred on 1-8 beside 9-10"],
      ],
      [
        "framed in chain meeting on 1-8 beside 9-10",
        "The same with the level sides run out to the edge, so that the upright ones meet them.",
        ["moth framed in chain meeting on 1-8 beside 9-10"],
      ],
      ["fitted to 20 rows", "As often as it goes whole into so many rows.", ["moth fitted to 20 rows"]],
      [
        "*4 every-other turned on 1-8",
        "Four times, the second and the fourth changed.",
        ["moth *2 every-other turned on 1-8"],
      ],
      [
        "with",
        "Both in the same rows, each on its own shafts; the shorter is repeated to the length of the longer.",
        ["moth with vine"],
      ],
      [
        "cut-short",
        "At the end of a line with `with`: the last repeat of the shorter block may be cut.",
        ["dot *3 with vine cut-short"],
      ],
    ];
  return {
    id: "order",
    title: "The weaving order",
    lead: `\`order\` has a line for each block as it is woven, the first woven first: its name, and what is done with it from left to right. The pictures are woven by the threading \`9-10 (1-8 7-2)*2 1 10-9\`, of these blocks:\n\n\`\`\`yaml\nlifts:\n  picks: 4\n  blocks:\n${blocks.trimEnd()}\n\`\`\``,
    shown: words.map(([word, says, order, extra = ""]) => {
      const recipe = soundRecipe(recipeWith(order, extra), word);
      return {
        word,
        says,
        text: `order: [${order.join(", ")}]${extra === "" ? "" : `\n${extra}`}`,
        picture: squaresSvg(expand(recipe.draft).squares, order.join("; ")),
      };
    }),
  };
}

function yarnWords(): Group {
  const words: readonly (readonly [word: string, says: string, colours: string])[] = [
    [
      "indigo*4 white*4",
      "Four ends of indigo, four of white, over and over.",
      "warp: indigo*4 white*4\n  weft: white",
    ],
    [
      "(white*2 madder)*3 indigo*3",
      "A group comes again as in the threading.",
      "warp: (white*2 madder)*3 indigo*3\n  weft: white",
    ],
    ["weft", "An order over the picks of the ground weft.", "warp: white\n  weft: madder*4 white*4"],
  ];
  return {
    id: "yarns",
    title: "Orders of yarns",
    lead: "`colours` says which yarn lies where, by its name under `yarns`: over the ends, from end 1 on, and over the picks. A piece and a block may have a `weft`, and `wefts` by name, of their own.",
    shown: words.map(([word, says, colours]) => ({
      word,
      says,
      text: `colours:\n  ${colours}`,
      picture: clothSvg(
        `recipe: 1
ground: { weave: twill 2/2 }
units: { ends: 4, threading: X*6 }
lifts: { picks: 4, rows: [none *5] }
colours:
  ${colours}
yarns:
${yarnsNamed(colours)}`,
        word,
      ),
    })),
  };
}

/** The section of the yarns that a text names. */
function yarnsNamed(text: string): string {
  const yarns = { indigo: "#2b3a5e", white: "#efe8d8", madder: "#a8452f" };
  return Object.entries(yarns)
    .filter(([name]) => text.includes(name))
    .map(([name, colour]) => `  ${name}: { count: Nm 22/2, colour: "${colour}" }\n`)
    .join("");
}

function weaveWords(): Group {
  const words: readonly (readonly [word: string, says: string])[] = [
    ["plain", "Plain weave; no figure can show on it but with a pattern weft."],
    ["twill 1/3", "A twill: one up, three down."],
    ["broken twill", "The four-end broken twill, weft-faced; the figure weaves its warp-faced counterpart."],
    ["satin 8 step 3", "An eight-end satin that moves by three."],
    [
      "plain with pattern weft",
      "After each pick of the ground one of the pattern weft, tied in halves so that it floats no farther than the recipe allows; `tied in thirds`, `tied in twill 4`, `within 7`, `tied on 3 4` (named shafts) and `untied` are other ways.",
    ],
  ];
  return {
    id: "weaves",
    title: "The ground weave",
    lead: "`ground: weave` names a weave; all that there are, and how they may be varied, are told by `drawcord ground --help`. The pictures show two units of ground beside two that are drawn, over four rows.",
    shown: words.map(([word, says]) => {
      const ground = groundFromWeave(word, { unitEnds: 8, picksPerRow: 8 });
      const draft = { ground, unitEnds: 8, threading: [[], [1]], lifts: [[], [1]], picksPerRow: 8 };
      return {
        word,
        says,
        text: `ground: { weave: ${word} }`,
        picture: drawSvg(expand(draft).drawdown, { scale: 6, title: word, warp: "#2b3a5e", weft: "#efe8d8" }),
      };
    }),
  };
}

function pieceKeys(): Group {
  const design = (pieces: string): string => `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: 9-10 (1-8 7-2)*2 1 10-9 }
lifts:
  picks: 4
  blocks:
${blocks}pieces:
${pieces}`;
  const words: readonly (readonly [word: string, says: string, pieces: string])[] = [
    [
      "pieces",
      "One design after another on the same threading, each with its count, wefts, length and lifts; here two are drawn, the first at the bottom.",
      "  - name: moths\n    count: 4\n    lifts: { order: [vine, moth] }\n  - name: dots\n    lifts: { order: [dot *4] }",
    ],
    [
      "counterchange",
      "Figure and ground exchanged in the whole piece, on the shafts named.",
      "  - name: moths\n    counterchange: 1-8\n    lifts: { order: [vine, moth] }",
    ],
  ];
  return {
    id: "pieces",
    title: "Pieces",
    lead: "A warp is dressed once and woven into many pieces. `lifts` then holds what they share: blocks, and the picks of a row.",
    shown: words.map(([word, says, pieces]) => {
      const recipe = soundRecipe(design(pieces), word);
      const squares = recipe.pieces.map(({ draft }) => expand(draft).squares);
      return { word, says, text: `pieces:\n${pieces}`, picture: squaresSvg(stacked(squares), word) };
    }),
  };
}

/** Keys of numbers where there is something to see: cloths for counts, bars for measures. */
function measureKeys(): Group {
  const cloth = (ground: string, ends: number, picks: number) => `recipe: 1
ground: ${ground}
units: { ends: ${ends}, threading: X 1-2 X }
lifts: { picks: ${picks}, rows: [1, 2] }
colours: { warp: indigo, weft: white }
yarns:
${yarnsNamed("indigo white")}`;
  const twill = "{ weave: broken twill, ends: 4 }";
  const edged = "{ weave: broken twill, ends: 4, selvedge: { weave: plain, ends: 6 } }";
  const cloths: readonly (readonly [word: string, says: string, text: string, whole: string])[] = [
    [
      "units: ends",
      "The ends of a unit rise together: with eight a square of the figure is twice as wide as with four.",
      "units: { ends: 8, threading: X 1-2 X }",
      cloth(twill, 8, 4),
    ],
    [
      "lifts: picks",
      "The picks for which a row is held: with eight a square of the figure is twice as high as with four.",
      "lifts: { picks: 8, rows: [1, 2] }",
      cloth(twill, 4, 8),
    ],
    [
      "ground: selvedge",
      "Ends outside the units, which the pattern harness never draws, here in plain weave at both edges.",
      `ground: ${edged}`,
      cloth(edged, 4, 4),
    ],
  ];
  return {
    id: "numbers",
    title: "Numbers and measures",
    lead: "What the keys of numbers do, where there is something to see. In the pictures of measures what the key decides is dark; they are to the scale that the plan works out.",
    shown: [
      ...cloths.map(([word, says, text, whole]) => ({ word, says, text, picture: clothSvg(whole, word) })),
      ...numberKeys().map(({ bars, says, text, word }) => ({
        word,
        says,
        text,
        picture: barsSvg(bars, word),
      })),
    ],
  };
}

/** Squares above each other, an empty row between two pieces. */
function stacked(grids: readonly BitGrid[]): BitGrid {
  const rows = grids.flatMap((grid, i) => [
    ...(i === 0 ? [] : [undefined]),
    ...Array.from({ length: grid.rows }, (_, row) => ({ grid, row })),
  ]);
  return fromCells(rows.length, grids[0]!.columns, (row, unit) => {
    const at = rows[row];
    return at?.grid.get(at.row, unit) === true;
  });
}

function clothSvg(text: string, title: string): string {
  const recipe = soundRecipe(text, title);
  return drawSvg(drawdownOfRecipe(recipe), { ...coloursOfRecipe(recipe), scale: 6, title });
}

const CELL = 10;

/** Squares on a ruled ground, the first row at the bottom. */
function squaresSvg(grid: BitGrid, title: string): string {
  const { columns, rows } = grid;
  const rules = [
    ...Array.from({ length: columns + 1 }, (_, i) => `M${i} 0v${rows}`),
    ...Array.from({ length: rows + 1 }, (_, i) => `M0 ${i}h${columns}`),
  ].join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${columns * CELL}" height="${rows * CELL}" viewBox="-0.05 -0.05 ${columns + 0.1} ${rows + 0.1}" role="img"><title>${escaped(title)}</title><rect width="${columns}" height="${rows}" fill="#fdfbf6"/><path fill="#2b3a5e" d="${squaresPath(grid)}"/><path fill="none" stroke="#c9c2b2" stroke-width="0.05" d="${rules}"/></svg>
`;
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}
