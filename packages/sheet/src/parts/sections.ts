import type { Picture } from "@drawcord/page";
import type { SheetPart } from "../part-names.js";
import { sectionDrawing } from "../pictures/section.js";
import type { Stretch, Woven } from "../woven.js";
import type { Context } from "./context.js";

/** So many threads are cut across in one picture. */
const MOST = 12;

/** Cuts through the cloth along a pick and along an end: in the ground, in the figure, and over the border between them. */
export function sectionsPart({ woven }: Context): SheetPart {
  const along = [...alongPick(woven), ...alongEnd(woven)];
  const places = ["ground", "figure", "border"] as const;
  return {
    name: "sections",
    title: "Cross-sections",
    blocks: [
      {
        kind: "paragraph",
        tone: "lead",
        text: "The cloth cut along one pick and along one end, the face above: round threads are cut across, the line is the thread that runs on. Long stretches on one side are floats; at the border the line should change sides.",
      },
      {
        kind: "pictures",
        pictures: places.flatMap((place) =>
          along.filter((cut) => cut.place === place).map(({ picture }) => picture),
        ),
      },
    ],
  };
}

type CutPlace = "ground" | "figure" | "border";

interface SectionCut {
  readonly place: CutPlace;
  readonly picture: Picture;
}

function alongPick(woven: Woven): readonly SectionCut[] {
  const { drawdown, squares } = woven.expansion;
  const found = bestLine(squares.rows, squares.columns, (row, unit) => squares.get(row, unit));
  const pick = woven.rowSpans[found.line]?.start ?? 0;
  return windowsOf(found.states, woven.unitSpans).map(({ place, threads }) => ({
    place,
    picture: {
      id: `section-pick-${place}`,
      caption: `${wordsOf(place)}: pick ${pick + 1} through ends ${threads[0]! + 1} to ${threads.at(-1)! + 1}`,
      alt: `From left to right the pick passes ${pathWords(threads.map((end) => !drawdown.get(pick, end)))}.`,
      drawing: sectionDrawing(
        threads.map((end) => !drawdown.get(pick, end)),
        threads.map((end) => `${end + 1}`),
      ),
    },
  }));
}

function alongEnd(woven: Woven): readonly SectionCut[] {
  const { drawdown, squares } = woven.expansion;
  const found = bestLine(squares.columns, squares.rows, (unit, row) => squares.get(row, unit));
  const end = woven.unitSpans[found.line]?.start ?? 0;
  return windowsOf(found.states, woven.rowSpans).map(({ place, threads }) => ({
    place,
    picture: {
      id: `section-end-${place}`,
      caption: `${wordsOf(place)}: end ${end + 1} through picks ${threads[0]! + 1} to ${threads.at(-1)! + 1}`,
      alt: `From the first pick on the end passes ${pathWords(threads.map((pick) => drawdown.get(pick, end)))}.`,
      drawing: sectionDrawing(
        threads.map((pick) => drawdown.get(pick, end)),
        threads.map((pick) => `${pick + 1}`),
      ),
    },
  }));
}

/** The row, or unit, in which both figure and ground run longest. */
function bestLine(lines: number, length: number, drawn: (line: number, at: number) => boolean) {
  let best = { line: 0, states: [] as readonly boolean[], worth: -1 };
  for (let line = 0; line < lines; line++) {
    const states = Array.from({ length }, (_, at) => drawn(line, at));
    const runs = runsOf(states);
    const longest = (state: boolean) =>
      Math.max(0, ...runs.filter((run) => run.state === state).map(({ end, start }) => end - start));
    const worth = Math.min(longest(true), longest(false), 4) * 1000 + longest(true) + longest(false);
    if (worth > best.worth) best = { line, states, worth };
  }
  return best;
}

interface StateRun extends Stretch {
  readonly state: boolean;
}

function runsOf(states: readonly boolean[]): readonly StateRun[] {
  const runs: StateRun[] = [];
  for (const [at, state] of states.entries()) {
    const last = runs.at(-1);
    if (last?.state === state) runs[runs.length - 1] = { ...last, end: at + 1 };
    else runs.push({ state, start: at, end: at + 1 });
  }
  return runs;
}

/** Threads of the longest stretch of ground, of the longest of figure, and on both sides of a border. */
function windowsOf(
  states: readonly boolean[],
  spans: readonly Stretch[],
): readonly { readonly place: CutPlace; readonly threads: readonly number[] }[] {
  const runs = runsOf(states);
  const longest = (state: boolean) =>
    runs.filter((run) => run.state === state).toSorted((a, b) => b.end - b.start - (a.end - a.start))[0];
  const within = (run: StateRun | undefined) =>
    run === undefined ? [] : numbersBetween(spans[run.start]!.start, spans[run.end - 1]!.end);
  const border = runs.slice(1).map(({ start }) => start);
  const middle = border[Math.floor(border.length / 2)];
  const at = middle === undefined ? undefined : spans[middle]!.start;
  const all = numbersBetween(spans[0]?.start ?? 0, spans.at(-1)?.end ?? 0);
  const over =
    at === undefined ? [] : all.filter((thread) => thread >= at - MOST / 2 && thread < at + MOST / 2);
  const found = [
    { place: "ground", threads: within(longest(false)) },
    { place: "figure", threads: within(longest(true)) },
    { place: "border", threads: over },
  ] as const;
  return found
    .filter(({ threads }) => threads.length > 0)
    .map(({ place, threads }) => ({ place, threads: threads.slice(0, MOST) }));
}

function numbersBetween(start: number, end: number): readonly number[] {
  return Array.from({ length: end - start }, (_, i) => start + i);
}

function wordsOf(place: CutPlace): string {
  return { ground: "Ground", figure: "Figure", border: "Border" }[place];
}

/** `over 3, under 1, over 3`. */
function pathWords(over: readonly boolean[]): string {
  return runsOf(over)
    .map(({ end, start, state }) => `${state ? "over" : "under"} ${end - start}`)
    .join(", ");
}
