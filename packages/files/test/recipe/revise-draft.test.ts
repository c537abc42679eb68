import { commonSize, expand, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reviseDraft, soundRecipe, starterRecipe } from "../../src/index.js";
import { applied } from "./applied.js";

const listed = `# loom 3
recipe: 1
title: Small diamond   # kept
ground:
  shafts: 4
  threading: 1 2 3 4
  steps:
    - { raise: 4, sink: 1 } # first
    - { raise: 2, sink: 3 }
    - { raise: 3, sink: 2 }
    - { raise: 1, sink: 4 }
  selvedge: { left: 1 2, right: 3 4 }

# the units
units: { ends: 4, threading: X 1-3 2-1 X }
lifts:
  picks: 4
  rows: # woven first
    - 1 # one
    - 2 # two
    - 3
    - 2 # two again
    - 1

# after
notes: |
  the end
`;
const drawn = `recipe: 1
ground: { weave: broken twill } # as ever
units: { ends: 4, threading: 1-3 }
lifts:
  picks: 4
  picture: |
    ..#
    .#.  
    #..
# the end
`;
/** A draft of other rows, each held for as many picks as all are. */
const lifted = (draft: UnitDraft, lifts: UnitDraft["lifts"]): UnitDraft => ({
  ...draft,
  lifts,
  picksPerRow: lifts.map(() => commonSize(draft.picksPerRow)!),
});
const draftIn = (text: string) => soundRecipe(text, "r").draft;
const lines = (text: string) => text.split("\n");
/** The lines of a text that another has not. */
const changed = (before: string, after: string) =>
  lines(after).filter((line) => !lines(before).includes(line));

describe("a recipe brought to another draft", () => {
  it("says what it changed, by the places in the text before", () => {
    const draft = draftIn(listed);
    const lifts = draft.lifts.with(1, [1, 2]).with(3, [2, 3]);
    const threading = draft.threading.with(0, [3]);
    const { edits } = reviseDraft(listed, "r", { ...draft, threading, lifts });
    expect(edits.map(({ range, text }) => [range.line, range.column, range.end.column, text])).toEqual([
      [15, 30, 41, "3 1-3 2 1 X"],
      [20, 7, 8, "1 2"],
      [22, 7, 8, "2 3"],
    ]);
  });

  it("changes one row where it stands", () => {
    const draft = draftIn(listed);
    const { rewritten, text } = reviseDraft(listed, "r", { ...draft, lifts: draft.lifts.with(3, [2, 3]) });
    expect(rewritten).toEqual([]);
    expect(text).toBe(listed.replace("- 2 # two again", "- 2 3 # two again"));
  });

  it("takes one row out", () => {
    const draft = draftIn(listed);
    const { text } = reviseDraft(listed, "r", lifted(draft, draft.lifts.toSpliced(2, 1)));
    expect(text).toBe(listed.replace("    - 3\n", ""));
    const flow = listed.replace(/rows:[\s\S]*?\n\n/, "rows: [1, 2, 3, 2, 1]\n\n");
    expect(reviseDraft(flow, "r", lifted(draft, draft.lifts.toSpliced(4, 1))).text).toContain(
      "rows: [1, 2, 3, 2]\n",
    );
  });

  it("hangs one unit elsewhere", () => {
    const draft = draftIn(listed);
    const { text } = reviseDraft(listed, "r", { ...draft, threading: draft.threading.with(0, [3]) });
    expect(changed(listed, text)).toHaveLength(1);
    expect(draftIn(text).threading[0]).toEqual([3]);
  });

  it("begins the treadling later, and threads a selvedge anew", () => {
    const draft = draftIn(listed);
    const [first, ...steps] = draft.ground.steps;
    const later: UnitDraft = { ...draft, ground: { ...draft.ground, steps: [...steps, first!] } };
    const { text } = reviseDraft(listed, "r", { ...later, selvedge: { left: [2, 1], right: [3, 4] } });
    expect(text).toContain("    - { raise: 2, sink: 3 } # first\n");
    expect(text).toContain("  selvedge: { left: 2 1, right: 3 4 }\n");
    expect(draftIn(text).ground.steps).toEqual([...steps, first]);
  });

  it("draws a square of a picture", () => {
    const draft = draftIn(drawn);
    const { rewritten, text } = reviseDraft(drawn, "r", { ...draft, lifts: draft.lifts.with(1, [2, 3]) });
    expect(rewritten).toEqual([]);
    expect(text).toBe(drawn.replace(".#.", ".##"));
  });

  it("writes a ground out step by step where its weave alone cannot say it, and leaves the rest", () => {
    const draft = draftIn(drawn);
    const steps = draft.ground.steps.map((step) => ({ ...step, raise: step.sink, sink: step.raise }));
    const { rewritten, text } = reviseDraft(drawn, "r", { ...draft, ground: { ...draft.ground, steps } });
    expect(rewritten).toEqual(["ground"]);
    expect(draftIn(text).ground.steps).toEqual(steps);
    expect(text.slice(text.indexOf("units:"))).toBe(drawn.slice(drawn.indexOf("units:")));
  });

  it("changes a block where all its uses change", () => {
    const recipe = starterRecipe();
    const draft = draftIn(recipe);
    const everywhere = draft.lifts.map((lift) => (lift.join() === "9" ? [8, 9] : lift));
    const whole = reviseDraft(recipe, "r", { ...draft, lifts: everywhere });
    expect(whole.rewritten).toEqual([]);
    expect(whole.text).toContain("border: { rows: [ none, 8 9, none ] }");
  });

  it("makes one use of a block a block of its own where that use alone changes", () => {
    const recipe = starterRecipe();
    const draft = draftIn(recipe);
    const once = { ...draft, lifts: draft.lifts.with(1, [8, 9]) };
    const apart = reviseDraft(recipe, "r", once);
    expect(apart.rewritten).toEqual([]);
    expect(draftIn(apart.text).lifts).toEqual(once.lifts);
    expect(changed(recipe, apart.text)).toEqual([
      "    border-2: { rows: [ none, 8 9, none ] }",
      "    - border-2",
    ]);

    const order = "order:\n    - border # hem\n    - lozenge*3 # middle\n    - border\n";
    const listed = recipe.replace(/order:\n( {4}- .*\n)+/, order);
    const middle = draftIn(listed);
    // The fifth row of the second of three.
    const row = 3 + 18 + 4;
    const turned = { ...middle, lifts: middle.lifts.with(row, [5]) };
    const split = reviseDraft(listed, "r", turned);
    expect(split.rewritten).toEqual([]);
    expect(draftIn(split.text).lifts).toEqual(turned.lifts);
    expect(split.text).toContain(
      "    - border # hem\n    - lozenge\n    - lozenge-2\n    - lozenge # middle\n    - border",
    );

    const short = lifted(middle, middle.lifts.toSpliced(row, 1));
    const taken = reviseDraft(listed, "r", short);
    expect(taken.rewritten).toEqual([]);
    expect(draftIn(taken.text).lifts).toEqual(short.lifts);
  });

  it("keeps the comments of a section that it writes out anew", () => {
    const weave = drawn.replace(
      "ground: { weave: broken twill } # as ever",
      'ground: # as ever\n  # The old one.\n  weave: "broken twill" # "four" # ends\n  selvedge: { left: 1 2 } # narrow',
    );
    const draft = draftIn(weave);
    const steps = draft.ground.steps.map((step) => ({ ...step, raise: step.sink, sink: step.raise }));
    const { text } = reviseDraft(weave, "r", { ...draft, ground: { ...draft.ground, steps } });
    expect(text).toContain('# The old one.\n# "four" # ends\nground: # as ever\n  shafts: 4\n');
    expect(text).toMatch(/\n {2}selvedge:.*# narrow\n/);

    const blocks = drawn.replace(
      /lifts:[\s\S]*$/,
      `lifts: # in blocks
  picks: 4 # as the twill
  # A border
  blocks:
    border: { rows: [1, "none"] } # "#" is drawn
    # The moth
    moth:
      picture: |
        ..#
        #.. 
  order: [border upside-down, border, moth*2] # from the hem
# the end
`,
    );
    const before = draftIn(blocks);
    const lifts = before.lifts.with(0, [2]);
    const { rewritten, text: apart } = reviseDraft(blocks, "r", { ...before, lifts });
    expect(rewritten).toEqual(["lifts"]);
    expect(draftIn(apart).lifts).toEqual(lifts);
    expect(apart).toContain(
      '\n# A border\n# "#" is drawn\n# The moth\n# from the hem\nlifts: # in blocks\n  picks: 4 # as the twill\n',
    );
    expect(apart.endsWith("# the end\n")).toBe(true);
  });

  it("weaves the draft it was given, whatever changes, and keeps every comment", () => {
    const lift = fc.uniqueArray(fc.integer({ min: 1, max: 3 }), { maxLength: 3 }).map((set) => set.sort());
    const cases = fc.record({
      recipe: fc.constantFrom(listed, drawn, listed.replaceAll("\n", "\r\n")),
      lifts: fc.array(lift, { minLength: 1, maxLength: 6 }),
      unit: fc.nat(),
      on: lift,
      turn: fc.nat(3),
    });
    fc.assert(
      fc.property(cases, ({ recipe, lifts, on, turn, unit }) => {
        const before = draftIn(recipe);
        const { steps } = before.ground;
        const draft: UnitDraft = {
          ...lifted(before, lifts),
          threading: before.threading.with(unit % before.threading.length, on),
          ground: { ...before.ground, steps: [...steps.slice(turn), ...steps.slice(0, turn)] },
        };
        const { edits, text } = reviseDraft(recipe, "r", draft);
        expect(applied(recipe, edits)).toBe(text);
        const comments = [...recipe.matchAll(/# [a-z0-9 ]+/g)].map(([comment]) => comment);
        // Taken out with the row that it stood beside.
        const gone = comments.filter((comment) => !text.includes(comment));
        expect(gone.length).toBeLessThanOrEqual(Math.max(0, before.lifts.length - lifts.length));
        return expand(draftIn(text)).drawdown.equals(expand(draft).drawdown);
      }),
      { numRuns: 60 },
    );
  });
});
