/** One slip in the runner: its cause and its mend as the command says them, the cloth as it is and as it would be. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type BitGrid, crop, fromText } from "@drawcord/grid";
import { palette, type Shape, toSvg } from "@drawcord/page";
import { drawcord } from "../built.js";
import { folder } from "../folder.js";
import { root } from "../packages.js";
import { clothWindow } from "./cloth.js";
import { line, paragraph } from "./words.js";

const RIGHT = "(1-12 11-2)*3";
const WRONG = "(1-12 11-2) 1-7 9 9-12 11-2 (1-12 11-2)";

/** The wing of the moth that the slip is in, and the ends of the unit that hangs wrong, from 0. */
const SEEN = { ends: [120, 172], picks: [84, 144] } as const;
const UNIT = [144, 148] as const;

const SIZE = 0.85;
const TEXT = 62;
const COLOURS = ["#e9e2d0", "#7a2e3a"] as const;

/** The picture as SVG, from what the built command prints. */
export async function slipPicture(): Promise<string> {
  const cwd = folder();
  const runner = readFileSync(join(root, "shared/recipes/runner.recipe.yaml"), "utf8");
  writeFileSync(join(cwd, "runner.recipe.yaml"), runner.replace(RIGHT, WRONG));
  const print = async (...args: string[]) => (await drawcord(args, { cwd })).stdout;
  const report = await print("check", "runner.recipe.yaml", "--format", "json");
  const { causes } = JSON.parse(report) as { causes: { message: string; why: string; line: number }[] };
  const [cause] = causes as [(typeof causes)[0]];
  const mend = / {2}mend: (.*)/.exec(await print("check", "runner.recipe.yaml"))![1]!;
  await print("check", "runner.recipe.yaml", "--mend", "mended.recipe.yaml");
  const cloth = async (file: string) => fromText((await print("expand", file)).trimEnd());
  const [is, wouldBe] = [await cloth("runner.recipe.yaml"), await cloth("mended.recipe.yaml")];

  const wide = (SEEN.ends[1] - SEEN.ends[0]) * SIZE;
  const high = (SEEN.picks[1] - SEEN.picks[0]) * SIZE;
  const [left, right] = [TEXT + 10, TEXT + 16 + wide];
  const [width, height] = [right + wide + 6, high + 17];
  const shapes: Shape[] = [
    { kind: "rect", x: 0, y: 0, width, height, fill: palette.paper },
    ...saidOf(cause, mend),
    line("as it is", left, 8, { fill: palette.muted }),
    ...clothWindow(seen(is), left, 11, SIZE, COLOURS),
    frame(left, high, palette.error),
    line("as it would be", right, 8, { fill: palette.muted }),
    ...clothWindow(seen(wouldBe), right, 11, SIZE, COLOURS),
    frame(right, high, palette.note),
  ];
  const alt = `${cause.message}; ${cause.why}. Mend: ${mend}. The cloth as it is, the wing broken, and as it would be.`;
  return `${toSvg({ width, height, shapes }, { alt })}\n`;
}

function saidOf(
  { message, why, line: at }: { message: string; why: string; line: number },
  mend: string,
): Shape[] {
  const head = paragraph(message, 6, 19, TEXT, { face: "sans-bold", size: 4 });
  const below = 19 + head.length * 5.4 + 2;
  const reason = paragraph(why, 6, below, TEXT, { size: 3.8 });
  return [
    line(`cause, line ${at}`, 6, 12, { fill: palette.accent, size: 3.8 }),
    ...head,
    ...reason,
    line("mend", 6, below + reason.length * 5.2 + 4, { fill: palette.accent, size: 3.8 }),
    ...paragraph(mend, 6, below + reason.length * 5.2 + 10, TEXT, { face: "sans-bold", size: 4 }),
  ];
}

function seen(grid: BitGrid): BitGrid {
  const [[fromEnd, toEnd], [fromPick, toPick]] = [SEEN.ends, SEEN.picks];
  return crop(grid, { row: fromPick, column: fromEnd, rows: toPick - fromPick, columns: toEnd - fromEnd });
}

/** About the ends of the unit that hangs wrong. */
function frame(x: number, high: number, stroke: string): Shape {
  const from = x + (UNIT[0] - SEEN.ends[0]) * SIZE;
  const width = (UNIT[1] - UNIT[0]) * SIZE;
  return {
    kind: "rect",
    x: from - 0.4,
    y: 10,
    width: width + 0.8,
    height: high + 2,
    stroke,
    strokeWidth: 0.6,
  };
}
