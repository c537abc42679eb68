import { followPlan } from "@drawcord/follow";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heavyWords } from "../src/place/heavy.js";
import { type Kept, keptUnder, readKept } from "../src/place/kept.js";
import { type LogEntry, logged } from "../src/place/log.js";
import { START } from "../src/place/place.js";
import { exampleRecipe, smallRecipe } from "./recipes.js";

const plan = followPlan(smallRecipe);
const fresh = { cloth: plan.cloth, place: START, weaver: "", weavers: [], log: [], marks: [] };

describe("what is kept", () => {
  const kept: Kept = {
    cloth: plan.cloth,
    place: { turn: 1, woven: 5, until: 2 },
    weaver: "Ana",
    weavers: ["Ana", "Bo"],
    log: [{ weaver: "Ana", did: "wove", turn: 0, from: 0, to: 12, began: 1, ended: 2 }],
    marks: [{ weaver: "Bo", turn: 0, pick: 3, note: "a skip", at: 3 }],
  };

  it("comes back as it was written down", () => {
    expect(readKept(plan, JSON.stringify(kept))).toEqual({ kept, changed: false, unreadable: false });
  });

  it("is told apart by the warp, and looked at when the cloth on it has changed", () => {
    const other = followPlan(exampleRecipe("band"));
    expect(keptUnder(other)).not.toBe(keptUnder(plan));
    const [piece] = smallRecipe.pieces;
    const lifts = [[1], [2], [3]];
    const changed = followPlan({
      ...smallRecipe,
      pieces: [{ ...piece!, draft: { ...piece!.draft, lifts } }],
    });
    expect(keptUnder(changed)).toBe(keptUnder(plan));
    expect(readKept(changed, JSON.stringify(kept))).toMatchObject({
      changed: true,
      kept: { place: kept.place },
    });
  });

  it("that cannot be read begins at the first pick, and says so", () => {
    const broken = fc.oneof(
      fc.string(),
      fc.json(),
      fc.constantFrom(...Object.keys(kept)).map((name) => JSON.stringify({ ...kept, [name]: 7 })),
    );
    fc.assert(
      fc.property(broken, (text) => {
        expect(readKept(plan, text)).toEqual({ kept: fresh, changed: false, unreadable: true });
      }),
    );
    expect(readKept(plan, null)).toEqual({ kept: fresh, changed: false, unreadable: false });
  });
});

describe("the log", () => {
  const minute = 60_000;
  const at = (woven: number, until?: number) => ({
    turn: 0,
    woven,
    ...(until === undefined ? {} : { until }),
  });
  const weave = (log: readonly LogEntry[], from: number, to: number, weaver: string, now: number) =>
    logged(log, at(from), at(to), weaver, now);

  it("is one entry while one weaver goes on, and another after a pause or for another weaver", () => {
    let log = weave([], 0, 1, "Ana", 0);
    log = weave(log, 1, 2, "Ana", 2 * minute);
    log = weave(log, 2, 3, "Bo", 3 * minute);
    log = weave(log, 3, 4, "Bo", 40 * minute);
    expect(log).toEqual([
      { weaver: "Ana", did: "wove", turn: 0, from: 0, to: 2, began: 0, ended: 2 * minute },
      { weaver: "Bo", did: "wove", turn: 0, from: 2, to: 3, began: 3 * minute, ended: 3 * minute },
      { weaver: "Bo", did: "wove", turn: 0, from: 3, to: 4, began: 40 * minute, ended: 40 * minute },
    ]);
  });

  it("forgets a press too many that was taken back", () => {
    const log = weave([], 0, 1, "Ana", 0);
    expect(weave(log, 1, 0, "Ana", 1)).toEqual([]);
  });

  it("tells picks taken out from picks woven", () => {
    const log = logged(weave([], 0, 9, "Ana", 0), at(9, 4), at(8, 4), "Ana", 1);
    expect(logged(log, at(8, 4), at(7, 4), "Ana", 2).map(({ did, from, to }) => [did, from, to])).toEqual([
      ["wove", 0, 9],
      ["took out", 9, 7],
    ]);
  });

  it("leads to the pick where the weavers are, however often they go on and back", () =>
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.boolean(), fc.constantFrom("Ana", "Bo"), fc.nat(3)), { maxLength: 60 }),
        (presses) => {
          let woven = 0;
          let now = 0;
          let log: readonly LogEntry[] = [];
          for (const [on, weaver, wait] of presses) {
            const next = Math.max(0, woven + (on ? 1 : -1));
            now += wait * 20 * minute;
            log = logged(log, at(woven), at(next), weaver, now);
            woven = next;
          }
          let reached = 0;
          for (const { from, to } of log) {
            expect(from).toBe(reached);
            expect(to).toBeGreaterThan(from);
            reached = to;
          }
          expect(reached).toBe(woven);
        },
      ),
    ));
});

describe("a heavy lift", () => {
  it("is told by its weight, or by its units where the weight is not known", () => {
    const wide = { ...plan, threading: Array.from({ length: 90 }, () => [1]) };
    expect(heavyWords(wide, { handles: [1], units: 90, grams: 4999 })).toBe("");
    expect(heavyWords(wide, { handles: [1], units: 90, grams: 5000 })).toMatch(/90 units.* 5 kg .*heavy/);
    expect(heavyWords(wide, { handles: [1], units: 90, grams: 35_300 })).toMatch(/35\.3 kg .*too much/);
    expect(heavyWords(wide, { handles: [1], units: 60 })).toMatch(/60 units.*weigh one/);
    expect(heavyWords(wide, { handles: [1], units: 59 })).toBe("");
    expect(heavyWords(plan, { handles: [1], units: 6 })).toBe("");
  });
});
