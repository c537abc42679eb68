/** The bench of slips: `SLIPS=40 SEED=7 npm run slips` plants many times as many, of another seed. */
import { describe, expect, it } from "vitest";
import { figured } from "./figures.js";
import {
  measurePair,
  measureSlip,
  measureSound,
  newTally,
  type Row,
  type Sound,
  type Tally,
  table,
} from "./measure.js";
import { kinds } from "./plant.js";
import { sectioned } from "./sections.js";
import { families, grounds, soundDraft, type Toss, tosser, whole } from "./sound.js";

const times = Number(process.env["SLIPS"] ?? 0);
const seed = Number(process.env["SEED"] ?? 20261128);

/** Prints the table, and what was missed, where the bench was asked for. */
function print(name: string, tally: Tally): void {
  if (times === 0) return;
  process.stdout.write(`${name}, seed ${seed}\n${table(tally)}\n`);
  if (process.env["MISSED"]) {
    process.stdout.write(`${tally.wrong.slice(0, 80).join("\n")}\nmissed\n${tally.missed.join("\n")}\n`);
  }
}

function shares({ alarmed, noted, pairs, rows, sound }: Tally): Record<string, number> {
  const sum = (of: "planted" | "first" | "regular" | "regularFirst" | "other") =>
    rows.reduce((all, row: Row) => all + row[of], 0);
  return {
    first: sum("first") / sum("planted"),
    regular: sum("regularFirst") / sum("regular"),
    otherwise: sum("other") / sum("planted"),
    alarmed: alarmed / sound,
    noted: noted / sound,
    pairs: pairs.both / pairs.planted,
  };
}

/** Plants a slip of every kind in a sound draft, and one of any kind in its plan together with one of another in its ground. */
function measureAll(sound: Sound, toss: Toss, tally: Tally): void {
  const options = measureSound(sound, tally);
  for (const kind of kinds) measureSlip(sound, options, kind, toss, tally);
  const [ofPlan, ofOther] = [kinds.slice(0, 9), kinds.slice(9)];
  const any = <T>(of: readonly T[]) => of[whole(toss, 0, of.length - 1)]!;
  measurePair(sound, options, [any(ofPlan), any(ofOther)], toss, tally);
  measurePair(sound, options, [any(ofPlan.slice(0, 3)), any(ofPlan.slice(3))], toss, tally);
}

describe("slips planted in sound drafts", () => {
  it("are named first by one hand's drafts", () => {
    const toss = tosser(seed);
    const tally = newTally();
    for (let i = 0; i < Math.max(1, times); i++) {
      for (const family of families) {
        for (const ground of grounds) {
          measureAll({ family, draft: soundDraft(family, ground, toss) }, toss, tally);
        }
      }
    }
    print("the first hand", tally);
    const found = shares(tally);
    expect(found["first"]).toBeGreaterThan(0.7);
    expect(found["regular"]).toBeGreaterThan(0.85);
    expect(found["otherwise"]).toBeLessThan(0.05);
    expect(found["alarmed"]).toBeLessThan(0.05);
    expect(found["pairs"]).toBeGreaterThan(0.5);
  });

  it("are named first by another hand's", () => {
    const tally = newTally();
    const toss = tosser(seed + 1);
    for (let i = 0; i < Math.max(6, 12 * times); i++) {
      measureAll(sectioned(seed * 1000 + i), toss, tally);
    }
    print("the second hand", tally);
    const found = shares(tally);
    expect(found["first"]).toBeGreaterThan(0.65);
    expect(found["regular"]).toBeGreaterThan(0.8);
    expect(found["otherwise"]).toBeLessThan(0.06);
    expect(found["alarmed"]).toBeLessThan(0.1);
  });

  it("are named first by a third hand's", () => {
    const tally = newTally();
    const toss = tosser(seed + 2);
    for (let i = 0; i < Math.max(6, 12 * times); i++) {
      measureAll(figured(seed * 1000 + i), toss, tally);
    }
    print("the third hand", tally);
    const found = shares(tally);
    expect(found["first"]).toBeGreaterThan(0.65);
    expect(found["regular"]).toBeGreaterThan(0.8);
    expect(found["otherwise"]).toBeLessThan(0.06);
    expect(found["alarmed"]).toBeLessThan(0.1);
  });
});
