/**
 * A weaver who has nothing but the printed sheet: she makes drafts of the lift card, the list of threading and the tie-up. She
 * knows none of the package's own types or functions.
 */
import { expect } from "vitest";
import type { Printed, PrintedTable } from "./printed.js";

/** `1 3-5` as numbers; `none` as no numbers. */
function numbers(text: string): number[] {
  if (text === "none" || text === "") return [];
  return text.split(/\s+/).flatMap((part) => run(part));
}

/** `8-5` as 8 7 6 5. */
function run(text: string): number[] {
  const [from, to] = text.split(/[-–]/).map(Number) as [number, number?];
  if (to === undefined) return [from];
  const step = from <= to ? 1 : -1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => from + i * step);
}

/** `1 2 1 3 ×2` as the treadles of eight picks; `–` is none. */
function treadlesIn(text: string): number[] {
  const [, once, times] = /^(.*?)(?: ×(\d+))?$/.exec(text)!;
  const treadles = once!.split(" ").map((word) => (word === "–" ? 0 : Number(word)));
  return Array.from({ length: Number(times ?? 1) }, () => treadles).flat();
}

/** Handles as a card prints them; bars between tens, a dash or a word for none. */
function handlesIn(text: string): number[] {
  const words = text.split(/\s+/).filter((word) => !/^[|–]$/.test(word) && word !== "none");
  return words.flatMap(run);
}

interface WovenRow {
  readonly lift: number[];
  readonly treadles: number[];
}

/** The lifts and treadles of every row, by its number. Draw and let go must lead to what is then drawn. */
function rowsOnCard({ rows: lines }: PrintedTable, said: string): WovenRow[] {
  const rows = new Map<number, WovenRow & { draw: number[]; go: number[] }>();
  const every = /Every row: treadles ([\d– ×]+),/.exec(said);
  let each = every === null ? [] : treadlesIn(every[1]!);
  for (const cells of lines) {
    if (cells.slice(1).join("") === "") {
      const told = /treadles ([\d– ×]+),/.exec(cells[0]!);
      if (told !== null) each = treadlesIn(told[1]!);
      continue;
    }
    const [named, draw, go, drawn, treadles] = cells as [string, string, string, string, string?];
    const which = named
      .split(/\s+/)
      .filter((word) => /\d/.test(word))
      .map(Number);
    for (const [i, row] of which.entries()) {
      expect(rows.has(row), `row ${row} stands once`).toBe(false);
      rows.set(row, {
        lift: handlesIn(drawn),
        treadles: treadles === undefined ? each : treadlesIn(treadles),
        // Rows on one line are woven at other times, or they follow one another and change nothing.
        draw: i > 0 && which[i - 1] === row - 1 ? [] : handlesIn(draw),
        go: i > 0 && which[i - 1] === row - 1 ? [] : handlesIn(go),
      });
    }
  }
  const ordered = Array.from({ length: rows.size }, (_, i) => rows.get(i + 1)!);
  const held = new Set<number>();
  for (const { lift, draw, go } of ordered) {
    for (const handle of go) expect(held.delete(handle)).toBe(true);
    for (const handle of draw) held.add(handle);
    expect([...held].sort((a, b) => a - b)).toEqual(lift);
  }
  return ordered;
}

/** The threads of the warp, from the list of threading. */
function warpOn({ caption, head, rows }: PrintedTable) {
  const ends: { shaft: number; unit: number }[] = [];
  const units = new Map<number, { shafts: number[]; ends: number }>();
  expect(head.filter((title) => /^(Unit|Pattern|Cord|Ground|Ends)$/.test(title)).length).toBe(4);
  for (const [name, patterns, ground, soFar] of rows as [string, string, string, string][]) {
    if (ground === undefined || ground === "") continue;
    const before = ends.length;
    const edge = /selvedge/.test(name);
    const named = edge ? [0] : run(name);
    const each = ground.endsWith(" in each")
      ? named.map(() => ground.slice(0, -" in each".length))
      : ground.split(" / ");
    for (const [i, unit] of named.entries()) {
      const grounds = each[i]!.split(" ").map(Number);
      ends.push(...grounds.map((shaft) => ({ shaft, unit })));
      if (edge) continue;
      const on = patterns.split(" ")[i]!;
      units.set(unit, { shafts: on === "X" ? [] : on.split("+").map(Number), ends: grounds.length });
    }
    expect(ends.length).toBe(Number(soFar.replaceAll(/\s/g, "")));
    expect(ends.length).toBeGreaterThan(before);
  }
  if (caption.includes("from right to left")) ends.reverse();
  const inOrder = [...units.entries()].sort(([a], [b]) => a - b).map(([, unit]) => unit);
  const inside = ends.filter(({ unit }) => unit > 0).map(({ shaft }) => shaft);
  const first = ends.findIndex(({ unit }) => unit > 0);
  const edges = ends.map(({ shaft }) => shaft);
  return {
    inside,
    unitEnds: inOrder.map((unit) => unit.ends),
    threading: inOrder.map((unit) => unit.shafts),
    selvedge: { left: edges.slice(0, first), right: edges.slice(first + inside.length) },
  };
}

/** The drafts that a sheet tells, a piece each in weaving order. */
export function draftsOn(printed: readonly Printed[]) {
  const tables = printed.filter((one): one is PrintedTable => one.kind === "table");
  const named = (words: string) => tables.find(({ caption }) => caption.includes(words));
  const { inside, ...warp } = warpOn(named("order of threading")!);
  const treadles = new Map(
    (named("as they hang")?.rows ?? []).map(([treadle, raise, sink]) => [
      Number(treadle),
      { raise: numbers(raise!), sink: numbers(sink!) },
    ]),
  );
  const said = printed.map((one) => (one.kind === "text" ? one.text : "")).join("\n");
  const shafts = Number(/on (\d+) ground shafts?/.exec(said)![1]);
  const lifts: { said: string; card: PrintedTable }[] = [];
  let before = "";
  for (const one of printed) {
    if (one.kind === "text") before += `\n${one.text}`;
    else if (one.caption.includes("lift card")) {
      const last = lifts.at(-1);
      // A card of several leaves goes on where nothing else is said between.
      if (last !== undefined && before === "")
        last.card = { ...last.card, rows: [...last.card.rows, ...one.rows] };
      else lifts.push({ said: before, card: one });
      before = "";
    }
  }
  return lifts.map(({ said: told, card }) => {
    const rows = rowsOnCard(card, told);
    const steps = rows
      .flatMap((row) => row.treadles)
      .map((treadle) => treadles.get(treadle) ?? { raise: [], sink: [] });
    return {
      ...warp,
      ground: { shafts, threading: inside, steps },
      lifts: rows.map(({ lift }) => lift),
      picksPerRow: rows.map((row) => row.treadles.length),
    };
  });
}

/** The shaft draft that a sheet tells: ends on shafts, treadles tied to shafts, and what is trodden on each pick. */
export function shaftDraftOn(printed: readonly Printed[]) {
  const tables = printed.filter((one): one is PrintedTable => one.kind === "table");
  const named = (words: string) => tables.find(({ caption }) => caption.includes(words));
  const list = named("order of threading")!;
  const fromRight = list.caption.includes("from right to left");
  const ends = list.rows.flatMap(([name, shafts]) => {
    const numbered = run(name!);
    const each = shafts!.split(" ");
    expect(each.length).toBe(numbered.length);
    return each.map((text) => (text === "–" ? [] : text.split("+").map(Number)));
  });
  const tieUp = named("as they hang")?.rows.map(([, raise, sink]) => ({
    raise: numbers(raise!),
    sink: numbers(sink!),
  }));
  const picks = new Map<number, number[]>();
  const cards = tables.filter(({ caption }) => caption.includes("lift card"));
  for (const cells of cards.flatMap(({ rows }) => rows)) {
    if (cells.slice(1).join("") === "") continue;
    const [boxes, moved] = cells as [string, string];
    for (const word of boxes.split(/\s+/).filter((one) => /\d/.test(one))) {
      expect(picks.has(Number(word)), `pick ${word} stands once`).toBe(false);
      picks.set(Number(word), handlesIn(moved));
    }
  }
  const moves = Array.from({ length: picks.size }, (_, i) => picks.get(i + 1)!);
  const rising = tieUp === undefined || tieUp.every(({ sink }) => sink.length === 0);
  const said = printed.map((one) => (one.kind === "text" ? one.text : "")).join("\n");
  return {
    shafts: Number(/on (\d+) shafts?,/.exec(said)![1]),
    threading: fromRight ? ends.reverse() : ends,
    rising: tieUp === undefined ? !said.includes("sink its shafts") : rising,
    shedding:
      tieUp === undefined
        ? ({ kind: "lift-plan", liftPlan: moves } as const)
        : ({
            kind: "tie-up",
            tieUp: tieUp.map(({ raise, sink }) => (rising ? raise : sink)),
            treadling: moves,
          } as const),
    warp: {},
    weft: {},
  };
}
