import { many } from "@drawcord/base";
import type { NoTieUp, TieUp } from "@drawcord/ground";
import type { Paint } from "../paint.js";
import { rowsOf, sentences } from "./layout.js";

/** What each treadle, or each bar of a list, is tied to, and how they are trodden; or why an action cannot be. */
export function tiesPart(ties: TieUp | NoTieUp, paint: Paint, width: number): string[] {
  const action = ties.action === "list" ? "dobby (list of bars)" : ties.action;
  if (!ties.possible) return [paint.strong(`Ties, ${action}: not possible`), ...sentences([ties.why], width)];
  const bars = ties.action === "list";
  const rows = ties.ties.map(({ raise, sink }, i): [string, string] => {
    const up = raise.length > 0 ? [`raise ${raise.join(" ")}`] : [];
    const down = sink.length > 0 ? [`sink ${sink.join(" ")}`] : [];
    return [`${bars ? "bar" : "treadle"} ${i + 1}`, [...up, ...down].join(", ") || "nothing moves"];
  });
  const { feet, pairs } = ties;
  return [
    paint.strong(`Ties, ${action}: ${many(ties.count, bars ? "peg" : "tie")}`),
    ...rowsOf(
      [
        ...(pairs ? [["pairs", pairs.map((pair) => pair.join("-")).join(" ")] as [string, string]] : []),
        ...rows,
        ...(bars
          ? []
          : [["treadling", ties.treadling.map((treadle) => treadle || "-").join(" ")] as [string, string]]),
        ...(feet?.alternate
          ? [
              [
                "feet",
                `left ${feet.left.join(" ")}, right ${feet.right.join(" ")}; hang the treadles ${feet.hanging.join(" ")}`,
              ] as [string, string],
            ]
          : []),
      ],
      width,
    ),
    ...sentences([...(feet && !feet.alternate ? [feet.why] : []), ...ties.notes], width),
  ];
}
