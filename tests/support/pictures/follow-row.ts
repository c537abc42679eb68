/** A row of the page for the loom, drawn from the plan that stands in the page that the command writes. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type FollowPlan, type PickStep, placeInWords, stepAt } from "@drawcord/follow";
import { type Shape, toSvg } from "@drawcord/page";
import { printShafts } from "@drawcord/units";
import { drawcord } from "../built.js";
import { folder } from "../folder.js";
import { root } from "../packages.js";
import { line } from "./words.js";

/** The colours of the page in its light look. */
const LOOK = {
  paper: "#fbf7ee",
  ink: "#1d1b18",
  muted: "#5a5348",
  line: "#b9ae9b",
  draw: "#7a2e1f",
  go: "#24406e",
};

/** Where the weaver is: the first pick of row 33. */
const WOVEN = 128;

const [WIDTH, HEIGHT, HANDLE] = [150, 62, 9];

/** The picture as SVG. */
export async function followPicture(): Promise<string> {
  const made = join(folder(), "loom.html");
  await drawcord(["follow", join(root, "shared/recipes/runner.recipe.yaml"), "-o", made]);
  const found = /<script type="application\/json" id="plan">(.*?)<\/script>/s.exec(
    readFileSync(made, "utf8"),
  );
  const plan = JSON.parse(found![1]!) as FollowPlan;
  const place = { turn: 0, woven: WOVEN };
  const step = stepAt(plan, place)!;
  const { block } = step;
  const rows = plan.pieces[0]!.rows.length;
  const shapes: Shape[] = [
    {
      kind: "rect",
      x: 0,
      y: 0,
      width: WIDTH,
      height: HEIGHT,
      fill: LOOK.paper,
      stroke: LOOK.line,
      strokeWidth: 0.4,
    },
    line("Row", 8, 12, { face: "serif", fill: LOOK.muted, size: 4.4 }),
    line(`${step.row + 1}`, 8, 30, { face: "serif-bold", fill: LOOK.ink, size: 20 }),
    line(`of ${rows}`, 32, 30, { face: "serif", fill: LOOK.muted, size: 4.4 }),
    line(`${block!.name}, ${block!.time} of ${block!.times}`, 8, 38, {
      face: "serif",
      fill: LOOK.muted,
      size: 4.4,
    }),
    line(`its row ${step.row - block!.start + 1} of ${block!.rows}`, 8, 44, {
      face: "serif",
      fill: LOOK.muted,
      size: 4.4,
    }),
    line("Draw", 56, 14, { face: "serif", fill: LOOK.draw, size: 5 }),
    line(runs(step.draw), 76, 14, { face: "serif-bold", fill: LOOK.draw, size: 6.4 }),
    line("Let go", 56, 23, { face: "serif", fill: LOOK.go, size: 5 }),
    line(runs(step.letGo), 76, 23, { face: "serif-bold", fill: LOOK.go, size: 6.4 }),
    line(`Treadle ${step.treadle}`, 8, 55, { face: "serif-bold", fill: LOOK.ink, size: 6 }),
    line(`${plan.wefts[step.weft]!.name} from the ${step.from} ${step.from === "left" ? "→" : "←"}`, 56, 55, {
      face: "serif",
      fill: LOOK.ink,
      size: 5,
    }),
    ...handles(plan, step),
  ];
  const alt = `The page for the loom. ${placeInWords(plan, place)}`;
  return `${toSvg({ width: WIDTH, height: HEIGHT, shapes }, { alt })}\n`;
}

function runs(handles: readonly number[]): string {
  return handles.length === 0 ? "–" : printShafts(handles).replaceAll("-", "–").replaceAll(" ", "  ");
}

/** The handles as they hang: those held hang low, an arrow at each that is to be moved. */
function handles({ handles: count }: FollowPlan, { draw, letGo, lift }: PickStep): Shape[] {
  const left = WIDTH - 6 - count * 6.6;
  return Array.from({ length: count }, (_, i): Shape[] => {
    const handle = i + 1;
    const x = left + i * 6.6 + 3.3;
    const [goes, comes] = [draw.includes(handle), letGo.includes(handle)];
    const low = lift.handles.includes(handle);
    const y = 27 + (low ? HANDLE / 2 : 0);
    const fill = goes ? LOOK.draw : comes ? LOOK.go : low ? LOOK.ink : LOOK.paper;
    const way = goes ? `M${x - 1.3} ${y + 5}h2.6l-1.3 1.6z` : `M${x - 1.3} ${y + 6.6}h2.6l-1.3 -1.6z`;
    return [
      { kind: "path", d: `M${x} 27v${y - 27}`, stroke: LOOK.muted, width: 0.3 },
      { kind: "rect", x: x - 2, y, width: 4, height: 4, fill, stroke: LOOK.ink, strokeWidth: 0.3 },
      ...(goes || comes ? [{ kind: "path", d: way, fill } as const] : []),
      line(`${handle}`, x, 44, { anchor: "middle", face: "serif", fill: LOOK.muted, size: 3.2 }),
    ];
  }).flat();
}
