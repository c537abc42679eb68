import type { Document, Picture } from "@drawcord/page";
import { sectionDrawing } from "@drawcord/sheet";
import { expand, type UnitDraft } from "@drawcord/units";
import { squaresDrawing } from "../drawing/squares.js";
import { harnessDrawing } from "./harness.js";
import { whyCrossing } from "./why.js";
import { whyInWords } from "./words.js";

/** So many threads are shown on each side of the crossing. */
const AROUND = 6;

/**
 * How one crossing comes about, as a page: in words, in the drawdown about it, and as cuts along its pick and its end.
 * @param draft the draft of a recipe
 * @param end the end, from 1
 * @param pick the pick, from 1
 * @throws {LessonError} as `whyCrossing`
 * @example whyDocument(draft, 5, 1).parts[0].name // "why"
 */
export function whyDocument(draft: UnitDraft, end: number, pick: number): Document {
  const crossing = whyCrossing(draft, end, pick);
  const { drawdown, rowOfPick, shaftOfEnd, unitOfEnd } = expand(draft);
  const ends = around(end - 1, drawdown.columns);
  const picks = around(pick - 1, drawdown.rows);
  const changes = (list: readonly number[], of: Int32Array) =>
    list.flatMap((thread, i) => (i > 0 && of[thread] !== of[list[i - 1]!] ? [i] : []));
  const figure: Picture = {
    id: "crossing",
    caption: `The drawdown about end ${end} and pick ${pick}. Under each end its ground shaft, at the left the picks, at the right the shafts raised and sunk`,
    alt: `Ends ${ends[0]! + 1} to ${ends.at(-1)! + 1} and picks ${picks[0]! + 1} to ${picks.at(-1)! + 1}; the crossing is ${crossing.raised ? "filled" : "empty"}.`,
    drawing: squaresDrawing({
      columns: ends.length,
      rows: picks.length,
      filled: (column, row) => drawdown.get(picks[row]!, ends[column]!),
      under: (column) => `${shaftOfEnd[ends[column]!]}`,
      left: (row) => `${picks[row]! + 1}`,
      right: (row) => {
        const { raise, sink } = draft.ground.steps[picks[row]! % draft.ground.steps.length]!;
        return `up ${raise.join(" ") || "none"}, down ${sink.join(" ") || "none"}`;
      },
      heavyColumns: changes(ends, unitOfEnd),
      heavyRows: changes(picks, rowOfPick),
      cell: 4,
      ringed: [ends.indexOf(end - 1), picks.indexOf(pick - 1)],
    }),
  };
  const { cause, drawn, shaft, unit } = crossing;
  const harness: Picture = {
    id: "harnesses",
    caption: `End ${end} from the back of the loom to the cloth, at pick ${pick}`,
    alt: `The way of the end through both harnesses: it lies ${crossing.raised ? "over" : "under"} the pick.`,
    drawing: harnessDrawing({ cause, drawn, shaft, ...(unit === undefined ? {} : { unit }) }),
  };
  const cuts: readonly Picture[] = [
    {
      id: "along-pick",
      caption: `Pick ${pick} through the ends, the face above`,
      alt: `Pick ${pick} passes ${overWords(ends.map((one) => !drawdown.get(pick - 1, one)))}.`,
      drawing: sectionDrawing(
        ends.map((one) => !drawdown.get(pick - 1, one)),
        ends.map((one) => `${one + 1}`),
      ),
    },
    {
      id: "along-end",
      caption: `End ${end} through the picks, the face above`,
      alt: `End ${end} passes ${overWords(picks.map((one) => drawdown.get(one, end - 1)))}.`,
      drawing: sectionDrawing(
        picks.map((one) => drawdown.get(one, end - 1)),
        picks.map((one) => `${one + 1}`),
      ),
    },
  ];
  return {
    title: `How end ${end} and pick ${pick} cross`,
    subtitle: crossing.raised ? "the end lies over the pick" : "the end lies under the pick",
    parts: [
      {
        name: "why",
        title: "How this square comes about",
        blocks: [
          ...whyInWords(crossing).map((text) => ({ kind: "paragraph", text }) as const),
          { kind: "pictures", pictures: [figure, harness, ...cuts] },
        ],
      },
    ],
  };
}

function around(thread: number, threads: number): readonly number[] {
  const first = Math.max(0, Math.min(thread - AROUND, threads - 2 * AROUND - 1));
  const count = Math.min(2 * AROUND + 1, threads);
  return Array.from({ length: count }, (_, i) => first + i);
}

/** `over 3, under 1, over 3`. */
function overWords(over: readonly boolean[]): string {
  const runs: { up: boolean; count: number }[] = [];
  for (const up of over) {
    const last = runs.at(-1);
    if (last?.up === up) last.count++;
    else runs.push({ up, count: 1 });
  }
  return runs.map(({ count, up }) => `${up ? "over" : "under"} ${count}`).join(", ");
}
