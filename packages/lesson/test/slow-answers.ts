/** Each kind of task worked out again, slowly and another way, from what is given alone. */

import { applyTogether } from "@drawcord/causes";
import type { Task } from "@drawcord/lesson";
import { type Change, parseShafts, type UnitDraft } from "@drawcord/units";
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

/** The rules of a small plan, as the sheet tells them, that a draft does not keep. */
function rulesBroken({ ground, lifts, picksPerRow, selvedge, threading }: UnitDraft): readonly string[] {
  const units = threading.map((shafts) => shafts[0] ?? 0);
  const most = Math.max(...units);
  const turns = (at: number) => {
    const phase = at % (2 * (most - 1));
    return phase < most ? phase + 1 : 2 * most - 1 - phase;
  };
  const inside = units.slice(2, -2);
  const held = typeof picksPerRow === "number" ? [picksPerRow] : picksPerRow;
  const mirrored = lifts.every((lift, row) => lift.join() === lifts.at(-1 - row)!.join());
  // Where a tie is missing, the other of its treadle says which it was.
  const filled = ground.steps.map(({ raise, sink }) => [raise[0] ?? 5 - sink[0]!, sink[0] ?? 5 - raise[0]!]);
  const clean = filled.at(-1)!.join() === filled[0]!.toReversed().join();
  const straight = (own: readonly number[] = []) => own.every((shaft, end) => shaft === (end % 4) + 1);
  const tied = ground.steps.every(
    ({ raise, sink }) => raise.length === 1 && sink.length === 1 && raise[0] === 5 - sink[0]!,
  );
  return [
    ...(inside.every((shaft, i) => shaft === turns(i)) ? [] : ["threading"]),
    ...(mirrored ? [] : ["lifts"]),
    ...(tied ? [] : ["ties"]),
    ...(clean ? [] : ["start"]),
    ...(straight(selvedge?.left) && straight(selvedge?.right) ? [] : ["selvedge"]),
    ...(held.every((picks) => picks === held[0]) ? [] : ["picks"]),
  ];
}

const runsOf = (line: string) => Math.max(0, ...line.split(".").map((run) => run.length));

export const slowly: Readonly<Record<string, (task: Task) => void>> = {
  numbers({ answers, given }) {
    const g = given as Record<string, number>;
    const ends = g["ends"]! + g["selvedge"]!;
    const wide = ends / g["sett"]!;
    const picks = g["rows"]! * g["perRow"]!;
    const long = picks / g["pickSett"]!;
    const each = long * (1 + g["takeUp"]! / 100);
    const warp = g["pieces"]! * each + g["waste"]!;
    const yarn = (ends * warp) / 100;
    const expected = [
      g["ends"]! / g["unitEnds"]!,
      ends,
      (g["sett"]! * 10) / g["reed"]!,
      wide,
      wide * (1 - g["drawIn"]! / 100),
      picks,
      long,
      warp,
      Math.floor(g["room"]!),
      yarn,
      (yarn * g["tex"]!) / 1000,
    ];
    expect(answers.length).toBeGreaterThanOrEqual(7);
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
    const dents = Number(/ (\d+) dents/.exec(answers[2].question)![1]);
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
    const { pick } = given as {
      pick?: { handle: number; shafts: number[]; firstEnd: number; raise: number[]; sink: number[] };
    };
    if (pick === undefined) return;
    const risen = pick.shafts.flatMap((shaft, i) => {
      if (pick.raise.includes(shaft)) return [pick.firstEnd + i];
      return now.includes(pick.handle) && !pick.sink.includes(shaft) ? [pick.firstEnd + i] : [];
    });
    expect(answers[4]!.answer).toBe(risen.join(" ") || "none");
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
  thread({ answers, given }) {
    const { lifts, raised, treadles } = given as {
      lifts: readonly (readonly number[])[];
      raised: readonly (readonly boolean[])[];
      treadles: Corner["treadles"];
    };
    // Every handle tried for every unit: just one weaves what is there.
    for (const [unit, { answer }] of answers.entries()) {
      const fits = [1, 2, 3, 4].filter((handle) =>
        raised.every((row, pick) =>
          [0, 1, 2, 3].every((end) => {
            const { raise, sink } = treadles[pick % 4]!;
            const up =
              raise.includes(end + 1) ||
              (lifts[Math.floor(pick / 4)]!.includes(handle) && !sink.includes(end + 1));
            return row[unit * 4 + end] === up;
          }),
        ),
      );
      expect(fits.join()).toBe(answer);
    }
  },
  cut({ answers, given }) {
    const cloth = given as readonly (readonly boolean[])[];
    const text = cloth.map((row) => row.map((up) => (up ? "#" : ".")).join(""));
    const left = [1, 2, 3, 4].filter((pick) => /^(?:##|\.\.)$/.test(text[pick - 1]!.slice(3, 5)));
    const right = [1, 2, 3, 4].filter((pick) => /^(?:##|\.\.)$/.test(text[pick - 1]!.slice(7, 9)));
    const top = [5, 6, 7, 8].filter((end) => text[3]![end - 1] === text[4]![end - 1]);
    const said = [left, right, top].map((list) => list.join(" ") || "none");
    expect(answers.map(({ answer }) => answer)).toEqual([
      ...said,
      `${left.length + right.length + top.length}`,
    ]);
  },
  slack({ answers, given }) {
    const { cloth, inside, outside } = given as {
      cloth: readonly (readonly boolean[])[];
      inside: number;
      outside: number;
    };
    const text = cloth.map((row) => row.map((up) => (up ? "#" : ".")).join(""));
    const found: string[] = [];
    for (let pick = 0; pick < 9; pick++) {
      for (let end = 0; end < 13; end++) {
        const squares = text
          .slice(pick, pick + 4)
          .map((row) => row.slice(end, end + 4))
          .join("");
        if (/^(?:#+|\.+)$/.test(squares)) found.push(`${end + 1} to ${end + 4}, ${pick + 1} to ${pick + 4}`);
      }
    }
    const [ends, picks, one, other] = answers.map(({ answer }) => answer);
    expect(found).toEqual([`${ends}, ${picks}`]);
    for (const [end, said] of [
      [inside, one],
      [outside, other],
    ] as const) {
      const column = text.map((row) => row[end - 1]).join("");
      expect(`${(column.match(/#(?=\.)|\.(?=#)/g) ?? []).length}`).toBe(said);
    }
  },
  slip({ answers, given }) {
    const { changes, slipped, sound } = given as {
      changes: readonly (readonly Change[])[];
      slipped: UnitDraft;
      sound: UnitDraft;
    };
    // The plan goes by the rules that the sheet tells; of the slipped one just so many do not hold as there are slips.
    expect(rulesBroken(sound)).toEqual([]);
    expect(rulesBroken(slipped).length).toBe(changes.length);
    expect(answers.length).toBe(2 * changes.length);
    // Every mend alone keeps one rule more, and all together keep them all.
    for (const own of changes) {
      expect(rulesBroken(applyTogether(slipped, own)).length).toBe(changes.length - 1);
    }
    expect(rulesBroken(applyTogether(slipped, changes.flat()))).toEqual([]);
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
