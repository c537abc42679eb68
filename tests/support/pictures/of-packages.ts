/** The small pictures of the packages' READMEs, each as the built command draws it of a few kites. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { drawcord } from "../built.js";
import { folder } from "../folder.js";

const ground = "{ weave: broken twill, ends: 4 }";
const kites = `recipe: 1
title: Kites
ground: ${ground}
units: { ends: 4, threading: X*2 1-5 4-2 1-5 4-1 X*2 }
lifts:
  picks: 4
  blocks:
    ground: { rows: [none] }
    kite: { rows: ["5", 4-5, 3-5, 2-5, 1-5, 2-5, 3-5, 4-5, "5", none] }
  order: [ground*2, kite*3, ground]
cloth: { sett: 12 per cm, picks: 11 per cm }
`;
/** Its sink plan does not mirror its raise plan, so that borders stay open. */
const ragged =
  "{ shafts: 4, threading: 1 2 3 4, steps: [{ raise: 1, sink: 4 }, { raise: 3, sink: 2 }, { raise: 2, sink: 1 }, { raise: 4, sink: 3 }] }";

const inputs: Readonly<Record<string, string>> = {
  "kites.recipe.yaml": kites,
  "ragged.recipe.yaml": kites.replace(ground, ragged),
  "leaf.txt": "....#....\n...###...\n..##.##..\n.##.#.##.\n..##.##..\n...###...\n....#....\n",
};

/** Where each picture stands, what the command is asked, and which of the files that it writes it is. */
export const packagePictures: readonly (readonly [path: string, args: readonly string[], made: string])[] = [
  [
    "packages/draw/pictures/kites.svg",
    [
      "expand",
      "kites.recipe.yaml",
      "--format",
      "svg",
      "--scale",
      "3",
      "--warp=#e6dcc6",
      "--weft=#2c3f66",
      "-o",
      "kites.svg",
    ],
    "kites.svg",
  ],
  [
    "packages/units/pictures/two-harnesses.svg",
    ["sheet", "kites.recipe.yaml", "--part", "corner", "-o", "kites.md"],
    "kites-corner-drawdown.svg",
  ],
  [
    "packages/check/pictures/open-cuts.svg",
    ["sheet", "ragged.recipe.yaml", "--part", "findings", "-o", "ragged.md"],
    "ragged-findings-picture.svg",
  ],
  [
    "packages/chart/pictures/three-shafts.svg",
    ["chart", "leaf.txt", "--shafts", "3", "--picture", "leaf.svg"],
    "leaf.svg",
  ],
  [
    "packages/lesson/pictures/find-the-open-cut.svg",
    ["exercise", "kites.recipe.yaml", "--task", "cut", "-o", "class.md"],
    "class-cut-1-1.svg",
  ],
];

/** What the command writes, on white paper, for pages that are read on a dark ground. */
export async function packagePicture(args: readonly string[], made: string): Promise<string> {
  const cwd = folder();
  for (const [name, text] of Object.entries(inputs)) writeFileSync(join(cwd, name), text);
  const { status, stderr } = await drawcord(args, { cwd });
  if (status !== 0) throw new Error(stderr);
  const svg = readFileSync(join(cwd, made), "utf8");
  return svg.replace(
    /<svg[^>]*>(?:\s*<title[^>]*>[^<]*<\/title>)?/,
    '$&<rect width="100%" height="100%" fill="#ffffff"/>',
  );
}
