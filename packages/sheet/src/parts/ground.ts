import { type Action, type Feet, tieUpOf } from "@drawcord/ground";
import { type Block, type Frame, type Picture, palette, type Shape, type Text } from "@drawcord/page";
import { printShafts } from "@drawcord/units";
import { ruling } from "../drawing/ruling.js";
import type { SheetPart } from "../part-names.js";
import { label } from "../pictures/label.js";
import { tieMarks } from "../pictures/tie-up.js";
import type { Woven } from "../woven.js";
import { answer } from "./answer.js";
import type { Context } from "./context.js";
import { counted, range } from "./number.js";

/** The ground harness: its threading, the tie-up and the treadling. */
export function groundPart(context: Context): SheetPart {
  const { woven, recipe } = context;
  const { draft, treadles } = woven;
  const { ground } = draft;
  const name =
    recipe.weave === undefined
      ? "The ground is threaded"
      : `The ground is ${article(recipe.weave)}, threaded`;
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: `${name} on ${counted(ground.shafts, "ground shaft")}, shaft 1 nearest the weaver. On every pick the treadle raises some shafts and sinks others; the rest stay where the pattern harness puts them, which is what the long eyes are for.`,
    },
    threadingTable(woven, context.options.reading === "right-to-left"),
    ...(treadles.length === 0 ? [] : [{ kind: "pictures", pictures: [tieUpPicture(woven)] } as const]),
    {
      kind: "table",
      id: "tie-up",
      caption: "What each treadle does to the ground shafts",
      columns: [{ title: "Treadle", kind: "head" }, { title: "Raises shafts" }, { title: "Sinks shafts" }],
      rows: treadles.map(({ raise, sink }, i): Text[] => [`${i + 1}`, printShafts(raise), printShafts(sink)]),
    },
    treadlingTable(woven),
    ...tied(context),
  ];
  return { name: "ground", title: "Ground harness", blocks };
}

function article(name: string): string {
  return /^plain$/i.test(name) ? "plain weave" : `${/^[aeiou]/i.test(name) ? "an" : "a"} ${name}`;
}

/** The ground threading, read the same way as the unit threading. */
function threadingTable({ draft, unitSpans }: Woven, fromRight: boolean): Block {
  const { ground, selvedge } = draft;
  const side = (name: string, shafts: readonly number[] = []): Text[][] =>
    shafts.length === 0
      ? []
      : [[name, (fromRight ? shafts.toReversed() : shafts).join(" "), counted(shafts.length, "end")]];
  const inside = unitSpans.at(-1)!.end - unitSpans[0]!.start;
  const { threading } = ground;
  const order = Array.from({ length: Math.min(threading.length, inside) }, (_, i) =>
    fromRight ? threading[(inside - 1 - i) % threading.length]! : threading[i]!,
  );
  const [first, last] = fromRight
    ? [`From the last end of unit ${unitSpans.length}`, "the first end of unit 1"]
    : ["From the first end of unit 1", "the last unit"];
  const rows: Text[][] = [
    ...side("Left selvedge", selvedge?.left),
    [first, order.join(" "), `${counted(order.length, "end")}, again and again to ${last}`],
    ...side("Right selvedge", selvedge?.right),
  ];
  return {
    kind: "table",
    id: "ground-threading",
    caption: `The ground threading ${fromRight ? "from right to left" : "from left to right"}, as the units are threaded`,
    columns: [{ title: "Where", kind: "head" }, { title: "Ground shafts in order" }, { title: "How many" }],
    rows: fromRight ? rows.reverse() : rows,
  };
}

/** Which treadle for which pick, and with which weft where there are several. */
function treadlingTable({ draft, treadleOfStep }: Woven): Block {
  const { steps } = draft.ground;
  const wefts = steps.map(({ weft }) => weft ?? "weft");
  const several = new Set(wefts).size > 1;
  const treadles = treadleOfStep.map((treadle) => (treadle < 0 ? "rest" : `${treadle + 1}`)).join(" ");
  return {
    kind: "table",
    id: "treadling",
    caption: "The treadling, pick 1 first; begin again when it is through",
    columns: [
      { title: "Picks", kind: "head" },
      { title: "Treadles in order" },
      ...(several ? [{ title: "Wefts in order" }] : []),
    ],
    rows: [[range(1, steps.length), treadles, ...(several ? [wefts.join(", ")] : [])]],
  };
}

/** How the ground is tied up by the loom's action: the recipe's, or a countermarch where it names none. */
function tied({ woven, recipe }: Context): Block[] {
  const named = recipe.loom.action;
  const action = named ?? "countermarch";
  const tie = tieUpOf(woven.draft.ground, action);
  const intro =
    named === undefined ? "The recipe names no action; on a countermarch" : `On a ${actionNames[action]}`;
  if (!tie.possible)
    return [{ kind: "paragraph", text: answer(`${intro} this ground cannot be tied up: ${tie.why}.`) }];
  const lines = [
    `${intro} it takes ${counted(tie.ties.length, "treadle")} and ${counted(tie.count, "tie")}.`,
    ...(tie.pairs === undefined
      ? []
      : [
          `Hang in pairs over a pulley: ${tie.pairs.map((pair) => `shafts ${pair.join(" and ")}`).join(", ")}.`,
        ]),
    ...(tie.feet === undefined ? [] : [feetText(tie.feet)]),
    ...tie.notes.map((text) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`),
  ];
  const text: Block = { kind: "paragraph", text: answer(lines.join(" ")) };
  // A countermarch is tied just as the tie-up shows.
  if (action === "countermarch") return [text];
  return [
    text,
    {
      kind: "table",
      id: "ties",
      caption: "Cords from treadles to shafts",
      columns: [
        { title: "Treadle", kind: "head" },
        { title: "Ties that raise" },
        { title: "Ties that sink" },
      ],
      rows: tie.ties.map(({ raise, sink }, i): Text[] => [
        `${i + 1}`,
        answer(printShafts(raise)),
        answer(printShafts(sink)),
      ]),
    },
  ];
}

const actionNames: Readonly<Record<Action, string>> = {
  countermarch: "countermarch",
  pulleys: "counterbalance with damask pulleys",
  jack: "jack loom",
  sinking: "sinking-shed loom",
  list: "dobby",
};

function feetText(feet: Feet): string {
  if (!feet.alternate) return `The feet cannot alternate: ${feet.why}.`;
  return `The feet alternate when the treadles hang, from left to right, in the order ${feet.hanging.join(" ")}.`;
}

function tieUpPicture({ draft, treadles }: Woven): Picture {
  const { shafts } = draft.ground;
  const cell = Math.min(7, 150 / treadles.length, 90 / shafts);
  const frame: Frame = { x: 7, y: 1, sx: cell, sy: cell };
  const foot = 1 + shafts * cell;
  const paper: Shape[] = [
    ...ruling({ columns: treadles.length, rows: shafts, frame, every: 1 }),
    ...Array.from({ length: shafts }, (_, i) =>
      label(6, 1 + (shafts - i - 0.5) * cell + 0.8, `${i + 1}`, {
        anchor: "end",
        fill: palette.ink,
        size: Math.min(2.4, cell),
      }),
    ),
    ...treadles.map((_, i) =>
      label(7 + (i + 0.5) * cell, foot + 3, `${i + 1}`, {
        anchor: "middle",
        fill: palette.ink,
        size: Math.min(2.4, cell),
      }),
    ),
    ...tieMarks([{ raise: [1], sink: [] }], 1, { x: 7, y: foot + 4.4, sx: 3, sy: 3 }),
    label(10.6, foot + 6.8, "raised"),
    ...tieMarks([{ raise: [], sink: [1] }], 1, { x: 20, y: foot + 4.4, sx: 3, sy: 3 }),
    label(23.6, foot + 6.8, "sunk"),
    label(31, foot + 6.8, "blank: left to the pattern harness"),
  ];
  const size = { width: Math.max(7 + treadles.length * cell + 2, 70), height: foot + 8 };
  return {
    id: "tie-up-picture",
    caption: "Tie-up: treadles across, ground shafts upwards from the weaver",
    alt: `Tie-up of ${counted(treadles.length, "treadle")} and ${counted(shafts, "ground shaft")}. The table of treadles says the same in numbers.`,
    drawing: { ...size, shapes: [...paper, ...tieMarks(treadles, shafts, frame)] },
  };
}
