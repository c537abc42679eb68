/** Each kind of task worked out again, slowly and another way, from what is given alone. */

import type { Task } from "@drawcord/lesson";
import { parseShafts } from "@drawcord/units";
import { expect } from "vitest";

interface Corner {
  readonly shafts: readonly number[];
  readonly units: readonly number[];
  readonly rows: readonly number[];
  readonly treadles: readonly { readonly raise: readonly number[]; readonly sink: readonly number[] }[];
  readonly drawn: readonly { readonly row: number; readonly units: readonly number[] }[];
  readonly raised: readonly (readonly boolean[])[];
}

/** The one number of an answer. */
const numberIn = (answer: string) => Number.parseFloat(answer);

/** A sum as a pocket calculator takes it: brackets first, × and ÷ before + and −. */
export function calculator(sum: string): number {
  const inner = /\(([^()]+)\)/.exec(sum);
  if (inner !== null) return calculator(sum.replace(inner[0], `${calculator(inner[1]!)}`));
  const words = sum.trim().split(/\s+/);
  const terms: number[] = [Number(words[0])];
  for (let i = 1; i < words.length; i += 2) {
    const value = Number(words[i + 1]);
    if (words[i] === "×") terms.push(terms.pop()! * value);
    else if (words[i] === "÷") terms.push(terms.pop()! / value);
    else if (words[i] === "+") terms.push(value);
    else if (words[i] === "−") terms.push(-value);
    else throw new Error(`no calculator has a key "${words[i]}"`);
  }
  return terms.reduce((all, term) => all + term, 0);
}

function bit(
  corner: Corner,
  end: number,
  pick: number,
  isDrawn: (unit: number, row: number) => boolean,
): boolean {
  const shaft = corner.shafts[end]!;
  const { raise, sink } = corner.treadles[pick]!;
  if (raise.includes(shaft)) return true;
  if (sink.includes(shaft)) return false;
  return isDrawn(corner.units[end]!, corner.rows[pick]!);
}

/** Every subset of some units. */
function subsets(units: readonly number[]): readonly (readonly number[])[] {
  return Array.from({ length: 2 ** units.length }, (_, bits) => units.filter((_unit, i) => (bits >> i) & 1));
}

const runsOf = (line: string) => Math.max(0, ...line.split(".").map((run) => run.length));

export const slowly: Readonly<Record<string, (task: Task) => void>> = {
  numbers({ answers, given }) {
    const g = given as Record<string, number>;
    const ends = g["units"]! * g["unitEnds"]! + g["selvedge"]!;
    const wide = ends / g["sett"]!;
    const picks = g["rows"]! * g["perRow"]!;
    const long = picks / g["pickSett"]!;
    const warp = g["pieces"]! * long * (1 + g["takeUp"]! / 100) + g["waste"]!;
    const yarn = (ends * warp) / 100;
    const expected = [
      ends,
      wide,
      wide * (1 - g["drawIn"]! / 100),
      picks,
      long,
      warp,
      yarn,
      (yarn * g["tex"]!) / 1000,
    ];
    // Unrounded all the way: the rounding of the board stays within what the key allows.
    for (const [i, { answer, within = "0" }] of answers.entries()) {
      expect(Math.abs(numberIn(answer) - expected[i]!)).toBeLessThanOrEqual(numberIn(within) + 1e-9);
    }
  },
  sett({ answers, given }) {
    const { ends, firm, intersections, wraps } = given as Record<string, number>;
    const closest = (wraps! * ends!) / (ends! + intersections!);
    expect(Math.abs(numberIn(answers[0]!.answer) - closest)).toBeLessThanOrEqual(0.2);
    expect(Math.abs(numberIn(answers[1]!.answer) - (closest * firm!) / 100)).toBeLessThanOrEqual(0.5);
    if (answers[2] === undefined) return;
    const dents = Number(/reed of (\d+)/.exec(answers[2].question)![1]);
    const miss = (each: number) => Math.abs((dents * each) / 10 - numberIn(answers[1]!.answer));
    const each = Number(answers[2].answer);
    for (const other of [each - 1, each + 1])
      if (other > 0) expect(miss(each)).toBeLessThanOrEqual(miss(other) + 1e-9);
  },
  plan({ answers, given }) {
    const { first, lifts, row } = given as {
      first: number;
      lifts: readonly (readonly number[])[];
      row: number;
    };
    const set = (text: string) => new Set(text === "none" ? [] : parseShafts(text));
    const held = set(answers[0]!.answer);
    const now = lifts[row - first - 1]!;
    expect([...held]).toEqual(now);
    const before = new Set(lifts[row - first - 2]!);
    for (const handle of set(answers[1]!.answer)) before.add(handle);
    for (const handle of set(answers[2]!.answer)) expect(before.delete(handle)).toBe(true);
    expect([...before].sort((a, b) => a - b)).toEqual(now);
    const counts = lifts.map((lift, i) => [lift.length, i + 1 + first] as const).sort(([a], [b]) => b - a);
    const most = counts.filter(([count]) => count === counts[0]![0]).map(([, at]) => `${at}`);
    expect([answers[3]!.answer, ...(answers[3]!.also ?? [])].sort()).toEqual(most.sort());
  },
  drawdown({ fill, given }) {
    const corner = given as Corner;
    const isDrawn = (unit: number, row: number) =>
      corner.drawn.some((one) => one.row === row && one.units.includes(unit));
    const path = fill!.filled.shapes.find((shape) => shape.kind === "path" && shape.role === "raised");
    const squares = new Set(
      path?.kind === "path" ? [...path.d.matchAll(/M(\d+) (\d+)h1/g)].map(([, x, y]) => `${x} ${y}`) : [],
    );
    for (const [pick] of corner.rows.entries()) {
      for (const [end] of corner.shafts.entries()) {
        expect(squares.has(`${end} ${corner.rows.length - 1 - pick}`)).toBe(bit(corner, end, pick, isDrawn));
      }
    }
    expect(fill!.blank.shapes.some((shape) => shape.kind === "path" && shape.role === "raised")).toBe(false);
  },
  back({ answers, given }) {
    const corner = given as Corner;
    const named = [...new Set(corner.units)];
    corner.drawn.forEach(({ row }, i) => {
      // Every lift that there could be, and those that give this cloth.
      const fits = subsets(named).filter((units) =>
        corner.rows.every(
          (one, pick) =>
            one !== row ||
            corner.shafts.every(
              (_, end) =>
                bit(corner, end, pick, (unit) => units.includes(unit)) === corner.raised[pick]![end],
            ),
        ),
      );
      const { also = [], answer } = answers[i]!;
      const sure = named.filter((unit) => fits.every((units) => units.includes(unit)));
      expect(answer).toBe(sure.join(" ") || "none");
      const open = named.filter((unit) => !sure.includes(unit) && fits.some((units) => units.includes(unit)));
      expect(also.length > 0).toBe(open.length > 0);
      if (open.length > 0) expect(also[0]).toContain(`${open.join(" ")} as well or not`);
    });
  },
  float({ answers, given }) {
    const cloth = given as readonly (readonly boolean[])[];
    const [first] = cloth;
    const ends = first!.map((_, end) => cloth.map((pick) => (pick[end] ? "#" : ".")).join(""));
    const picks = cloth.map((pick) => pick.map((raised) => (raised ? "." : "#")).join(""));
    for (const [i, lines] of [ends, picks].entries()) {
      const most = Math.max(...lines.map(runsOf));
      expect(answers[2 * i]!.answer).toBe(`${most}`);
      const all = lines.flatMap((line, at) => (runsOf(line) === most ? [`${at + 1}`] : []));
      expect([answers[2 * i + 1]!.answer, ...(answers[2 * i + 1]!.also ?? [])]).toEqual(all);
    }
  },
  slip({ answers, given }) {
    const { shafts, slipped } = given as { shafts: number; slipped: readonly number[] };
    // Of all edits of one unit just one makes a run of points from 1 to the last shaft and back.
    const mends: string[] = [];
    for (const unit of slipped.keys()) {
      for (let shaft = 1; shaft <= shafts; shaft++) {
        const edited = slipped.map((one, i) => (i === unit ? shaft : one));
        const turns = edited.every((one, i) => {
          const phase = i % (2 * (shafts - 1));
          return one === (phase < shafts ? phase + 1 : 2 * shafts - 1 - phase);
        });
        if (turns && shaft !== slipped[unit]) mends.push(`${unit + 1} ${slipped[unit]} ${shaft}`);
      }
    }
    const [unit, wrong, right] = answers;
    expect(mends).toEqual([`${unit!.answer} ${wrong!.answer} ${right!.answer}`]);
  },
  ground({ answers, given }) {
    const { choices, shafts } = given as {
      shafts: number;
      choices: readonly { readonly raise: readonly number[]; readonly sink: readonly number[] }[];
    };
    // A pair of ends or picks cuts where one is up and the other down; drawn beside undrawn, both ways round.
    const clean = choices.map(({ raise, sink }) => {
      const up = (shaft: number, pick: number, drawn: boolean) =>
        raise[pick] === shaft || (drawn && sink[pick] !== shaft);
      for (const drawn of [true, false]) {
        for (let pick = 0; pick < shafts; pick++) {
          if (up(shafts, pick, drawn) === up(1, pick, !drawn)) return false;
        }
        for (let shaft = 1; shaft <= shafts; shaft++) {
          if (up(shaft, shafts - 1, drawn) === up(shaft, 0, !drawn)) return false;
        }
      }
      return true;
    });
    const named = [..."ABCD"].filter((_, i) => clean[i]);
    expect(named.length).toBeGreaterThan(0);
    expect([answers[0]!.answer, ...(answers[0]!.also ?? [])]).toEqual(named);
    expect(answers[2]!.answer).toBe([..."ABCD"].filter((_, i) => clean[i] === false).join(" ") || "none");
  },
};
