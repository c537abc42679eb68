import { cutOf, type Ground, type GroundStep } from "@drawcord/ground";
import { type Answer, sayTask, type TaskKind } from "../task.js";

/** Raise and sink of 4 and 8 ends that begin rightly: of the mirrored pairs that cut clean all round. */
const SINKS = [
  [4, 3, 2, 1],
  [4, 2, 3, 1],
  [7, 4, 1, 6, 3, 8, 5, 2],
] as const;

/** Which start of a ground cuts clean. */
export const groundTask: TaskKind = {
  summary: "choose the start of the ground that cuts clean, and say why",
  make(_, dice, level) {
    const sink = dice.one(level === 2 ? SINKS.slice(0, 2) : SINKS);
    const shafts = sink.length;
    const starts = shuffledStarts(shafts, dice.whole(0, shafts - 1), dice.one([1, 3]));
    const choices = starts.map((start) => {
      const sunk = sink.map((_, i) => sink[(i + start) % shafts]!);
      return { raise: sunk.map((shaft) => shafts + 1 - shaft), sink: sunk };
    });
    const open = choices.map((choice) => {
      const { lengthways, sideways } = cutOf(groundOf(shafts, choice));
      return { lengthways: lengthways.open, sideways: sideways.open };
    });
    const clean = open.flatMap((cut, i) => (cut.lengthways + cut.sideways === 0 ? [letter(i)] : []));
    const rest = open.flatMap((cut, i) => (cut.lengthways + cut.sideways === 0 ? [] : [letter(i)]));
    const why = clean.map((name) => whyClean(name, choices["ABCD".indexOf(name)]!));
    const answers: readonly Answer[] = [
      {
        question: "Which start cuts clean where rows meet?",
        answer: clean[0] ?? "none",
        ...(clean.length > 1 ? { also: clean.slice(1) } : {}),
      },
      { question: "Why?", answer: why[0] ?? "", also: [...why.slice(1), FACT], own: true },
      { question: "Which let ends slip?", answer: rest.join(" ") || "none" },
    ];
    return {
      title: "Choose the ground",
      minutes: 8,
      points: 6,
      ask: [
        sayTask(
          `A ground of ${shafts} ends is threaded straight, and a row is ${shafts} picks. Where one row meets the next, ends cut if the shaft sunk last is the one raised first, and the shaft raised last the one sunk first. Rows of one start meet each other.`,
        ),
        {
          kind: "table",
          id: "starts",
          caption: "The same order begun at several picks",
          columns: [
            { title: "Start", kind: "head" },
            { title: "Shafts raised, pick by pick" },
            { title: "Shafts sunk" },
          ],
          rows: choices.map((choice, i) => [letter(i), choice.raise.join("  "), choice.sink.join("  ")]),
        },
      ],
      answers,
      steps: [],
      given: { shafts, choices },
      room: 0,
    };
  },
};

const FACT = "figure and ground then bind crosswise where rows meet";

function whyClean(
  name: string,
  { raise, sink }: { readonly raise: readonly number[]; readonly sink: readonly number[] },
) {
  return `${name}: the last pick sinks shaft ${sink.at(-1)} and the first raises it; the last raises shaft ${raise.at(-1)} and the first sinks it`;
}

/** Four starts of which one is the order's own. @param by odd, so that no start of an even order comes twice */
function shuffledStarts(shafts: number, first: number, by: number): readonly number[] {
  const starts = [0, 1, 2, 3].map((i) => (first + i * by) % shafts);
  return starts.includes(0) ? starts : starts.with(first % 4, 0);
}

function groundOf(
  shafts: number,
  { raise, sink }: { raise: readonly number[]; sink: readonly number[] },
): Ground {
  const steps = raise.map((up, i): GroundStep => ({ raise: [up], sink: [sink[i]!] }));
  return { shafts, threading: Array.from({ length: shafts }, (_, i) => i + 1), steps };
}

function letter(i: number): string {
  return "ABCD"[i]!;
}
