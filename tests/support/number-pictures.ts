/** Pictures of what the keys of numbers do, drawn to the measures that the plan works out. */
import { projectOf, soundRecipe } from "@drawcord/files";
import { type Plan, plan, type Quantity, toMetric } from "@drawcord/yarn";

/** A bar: what it is of, and its parts one after another, in millimetres. */
export interface Bar {
  readonly label: string;
  readonly parts: readonly Part[];
}

interface Part {
  readonly mm: number;
  /** Whether the key decides it. */
  readonly isKey: boolean;
}

/** A key, what it does, the text that the picture is of, and the bars. */
export interface NumberKey {
  readonly word: string;
  readonly says: string;
  readonly text: string;
  readonly bars: readonly Bar[];
}

/** The plan of a warp without losses but those that the text gives. */
export function planOf(text: string): Plan {
  const recipe = `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X 1-8 X }
lifts: { picks: 4, rows: [1-4 *25, 5-8 *25] }
${text}
`;
  return plan(projectOf(soundRecipe(recipe, "number key")));
}

const plain = "draw-in: 0 %, take-up: 0 %, shrinkage: 0 %";

/** Two pieces of 20 cm on a warp with all that may lie between and beside them. */
const warp = {
  fringe: 8,
  hems: 6,
  gaps: 3,
  sampling: 10,
  waste: 30,
};

const project = `project: { pieces: 2, length: 20 cm, hems: ${warp.hems} cm, fringe: ${warp.fringe} cm, gaps: ${warp.gaps} cm, sampling: ${warp.sampling} cm, waste: ${warp.waste} cm }`;

/** The text that the pictures of the warp are of. */
export const wholeWarp = `cloth: { sett: 10 per cm, picks: 10 per cm, ${plain} }\n${project}`;

/** The stretches of the warp in their order, each with the key that decides it. */
export const stretches: readonly (readonly [key: string, mm: number])[] = [
  ["sampling", 10 * warp.sampling],
  ...[1, 2].flatMap((piece): [string, number][] => [
    ...(piece === 1 ? [] : ([["gaps", 10 * warp.gaps]] as [string, number][])),
    ["fringe", 5 * warp.fringe],
    ["hems", 5 * warp.hems],
    ["length", 200],
    ["hems", 5 * warp.hems],
    ["fringe", 5 * warp.fringe],
  ]),
  ["waste", 10 * warp.waste],
];

/** The keys with something to see. */
export function numberKeys(): readonly NumberKey[] {
  const ofWarp: readonly (readonly [key: string, says: string])[] = [
    ["length", "The length of a finished piece; hems and fringes are not counted."],
    ["hems", "Turned in at both ends of every piece: half of it at each."],
    ["fringe", "Left unwoven at both ends of every piece: half of it at each."],
    ["gaps", "Left unwoven between two pieces, beside their fringes."],
    ["sampling", "Woven to try, before the pieces."],
    ["waste", "What the loom cannot weave."],
  ];
  return [
    ...ofWarp.map(([word, says]) => ({
      word: `project: ${word}`,
      says,
      text: project,
      bars: [{ label: "the warp", parts: stretches.map(([key, mm]) => ({ mm, isKey: key === word })) }],
    })),
    compared(
      "cloth: sett",
      "How many ends lie side by side in a length of the reed: the closer, the narrower.",
      [
        ["10 per cm", `cloth: { sett: 10 per cm, picks: 10 per cm, ${plain} }`, (of) => of.widthInReed],
        ["5 per cm", `cloth: { sett: 5 per cm, picks: 10 per cm, ${plain} }`, (of) => of.widthInReed],
      ],
    ),
    lost(
      "cloth: draw-in",
      "How much narrower the cloth is than its width in the reed.",
      "draw-in: 10 %, take-up: 0 %, shrinkage: 0 %",
    ),
    lost(
      "cloth: shrinkage",
      "What the wash takes, across and along.",
      "draw-in: 0 %, take-up: 0 %, shrinkage: 10 %",
    ),
    taken(
      "cloth: take-up",
      "How much longer the warp is than the cloth, for it bends over and under the picks.",
      "draw-in: 0 %, take-up: 10 %, shrinkage: 0 %",
    ),
    spare(),
  ];
}

function compared(
  word: string,
  says: string,
  rows: readonly (readonly [label: string, text: string, of: (plan: Plan) => Quantity | undefined])[],
): NumberKey {
  const bars = rows.map(([label, text, of]) => ({
    label,
    parts: [{ mm: mmOf(of(planOf(text))), isKey: true }],
  }));
  return { word, says, text: rows.map(([, text]) => text).join("\n# or\n"), bars };
}

/** Widths in the reed, on the loom and after the wash. */
function lost(word: string, says: string, losses: string): NumberKey {
  const text = `cloth: { sett: 10 per cm, picks: 10 per cm, ${losses} }`;
  const of = planOf(text);
  const bars = (
    [
      ["in the reed", of.widthInReed],
      ["on the loom", of.clothWidth],
      ["finished", of.finishedWidth],
    ] as const
  ).map(([label, width], i, all) => ({
    label,
    parts: [{ mm: mmOf(width), isKey: i > 0 && mmOf(width) < mmOf(all[i - 1]![1]) }],
  }));
  return { word, says, text, bars };
}

/** The cloth of a piece and the warp that it takes. */
function taken(word: string, says: string, losses: string): NumberKey {
  const text = `cloth: { sett: 10 per cm, picks: 10 per cm, ${losses} }\nproject: { pieces: 1, length: 20 cm, waste: 0 cm, hems: 0 cm }`;
  const of = planOf(text);
  const cloth = mmOf(of.clothLength);
  return {
    word,
    says,
    text,
    bars: [
      { label: "the cloth", parts: [{ mm: cloth, isKey: false }] },
      {
        label: "its warp",
        parts: [
          { mm: cloth, isKey: false },
          { mm: mmOf(of.warpOfPiece) - cloth, isKey: true },
        ],
      },
    ],
  };
}

/** The yarn that is woven, and what is to be had. */
function spare(): NumberKey {
  const text = `cloth: { sett: 10 per cm, picks: 10 per cm, ${plain} }\nproject: { pieces: 1, length: 20 cm, hems: 0 cm, waste: 30 cm, spare: 10 % }\nyarns: { warp: { count: Nm 22/2 } }`;
  const [bought] = planOf(text).buy;
  const [used, need] = [toMetric(bought!.used).value, toMetric(bought!.need).value];
  return {
    word: "project: spare",
    says: "Yarn to have over what is woven, for mistakes, knots and the weaver's hand.",
    text,
    bars: [
      { label: "woven", parts: [{ mm: 100, isKey: false }] },
      {
        label: "to have",
        parts: [
          { mm: 100, isKey: false },
          { mm: (100 * (need - used)) / used, isKey: true },
        ],
      },
    ],
  };
}

function mmOf(quantity: Quantity | undefined): number {
  if (quantity === undefined) throw new Error("the plan does not know this measure");
  return toMetric(quantity).value;
}

const WIDTH = 440;
const LABEL = 90;
const HIGH = 16;

/** The bars to one scale, under one another, each with its name. */
export function barsSvg(bars: readonly Bar[], title: string): string {
  const longest = Math.max(...bars.map(({ parts }) => parts.reduce((sum, { mm }) => sum + mm, 0)));
  const scale = (WIDTH - LABEL - 2) / longest;
  const drawn = bars.map(({ label, parts }, i) => {
    const y = i * (HIGH + 8) + 1;
    let x = LABEL;
    const rects = parts.map(({ isKey, mm }) => {
      const width = mm * scale;
      const rect = `<rect x="${round(x)}" y="${y}" width="${round(width)}" height="${HIGH}" fill="${isKey ? "#2b3a5e" : "#efe8d8"}" stroke="#8a8270" stroke-width="0.6"/>`;
      x += width;
      return rect;
    });
    return `<text x="0" y="${y + 12}" font-size="12" font-family="sans-serif" fill="#1d1b18">${label}</text>${rects.join("")}`;
  });
  const height = bars.length * (HIGH + 8) - 6;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}" role="img"><title>${title}</title><rect width="${WIDTH}" height="${height}" fill="#fdfbf6"/>${drawn.join("")}</svg>\n`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
