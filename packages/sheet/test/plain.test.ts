import { readFileSync } from "node:fs";
import { drawdownOfDraft, type ShaftDraft } from "@drawcord/check";
import { soundWif } from "@drawcord/files";
import { toHtml, toMarkdown } from "@drawcord/page";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layDocument } from "../../page/src/layout/document.js";
import { toPdf } from "../../page/src/print.js";
import { makeDraftSheet, partNames, SheetError } from "../src/index.js";
import { wovenOf } from "../src/plain/woven.js";
import { type Printed, printedHtml, printedMarkdown, printedPdf } from "./printed.js";
import { shaftDraftOn } from "./weaver.js";

const towel = soundWif(
  readFileSync(new URL("../../../shared/drafts/towel.wif", import.meta.url)),
  "towel.wif",
).draft;

/** Drafts of all kinds: ends on no shaft and on several, picks that tread nothing, rising and sinking sheds. */
const shaftDraft = fc.integer({ min: 1, max: 6 }).chain((shafts) => {
  const set = (most: number) => fc.uniqueArray(fc.integer({ min: 1, max: most }), { maxLength: most });
  const sorted = (most: number) => set(most).map((list) => list.sort((a, b) => a - b));
  const tieUp = fc.array(sorted(shafts), { minLength: 1, maxLength: 5 }).chain((tied) =>
    fc.record({
      kind: fc.constant("tie-up" as const),
      tieUp: fc.constant(tied),
      treadling: fc.array(sorted(tied.length), { minLength: 1, maxLength: 40 }),
    }),
  );
  const liftPlan = fc.record({
    kind: fc.constant("lift-plan" as const),
    liftPlan: fc.array(sorted(shafts), { minLength: 1, maxLength: 40 }),
  });
  return fc.record({
    shafts: fc.constant(shafts),
    threading: fc.array(sorted(shafts), { minLength: 1, maxLength: 40 }),
    shedding: fc.oneof(tieUp, liftPlan),
    // A tie-up that ties nothing says neither up nor down.
    rising: fc.constant(true),
    warp: fc.constant({}),
    weft: fc.constant({}),
  });
});

const weaves = (printed: readonly Printed[], draft: ShaftDraft) =>
  drawdownOfDraft(shaftDraftOn(printed)).equals(drawdownOfDraft(draft));

describe("the sheet of a plain draft", () => {
  it("has the cloth, its yarns, the warping, the threading, the tie-up, the card and whether it was checked", () => {
    const { title, parts } = makeDraftSheet(towel);
    expect(title).toBe("Lozenge towel");
    expect(parts.map(({ name }) => name)).toEqual([
      "cloth",
      "project",
      "warping",
      "threading",
      "ground",
      "lifts",
      "cautions",
    ]);
    const whole = makeDraftSheet(towel, { parts: partNames });
    expect(whole.parts.map(({ name }) => name).slice(-2)).toEqual(["corner", "findings"]);
  });

  it("weaves the towel from a page in a browser, from Markdown and from paper", async () => {
    const sheet = makeDraftSheet(towel, { parts: ["threading", "ground", "lifts"] });
    expect(weaves(printedHtml(toHtml(sheet)), towel)).toBe(true);
    expect(weaves(printedMarkdown(toMarkdown(sheet)), towel)).toBe(true);
    expect(weaves(await printedPdf(await toPdf(sheet)), towel)).toBe(true);
  });

  it("weaves any draft, read either way, on a shed that rises or sinks", () => {
    fc.assert(
      fc.property(
        shaftDraft,
        fc.boolean(),
        fc.constantFrom("right-to-left", "left-to-right"),
        (from, rising, reading) => {
          const tied =
            from.shedding.kind === "lift-plan" || from.shedding.tieUp.some((one) => one.length > 0);
          const draft = { ...from, rising: rising || !tied };
          const sheet = makeDraftSheet(draft, { reading, parts: ["threading", "ground", "lifts"] });
          return weaves(printedHtml(toHtml(sheet)), draft);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("draws the cloth that the draft weaves", () => {
    fc.assert(
      fc.property(shaftDraft, (draft) => wovenOf(draft).expansion.drawdown.equals(drawdownOfDraft(draft))),
      { numRuns: 60 },
    );
  });

  it("tells the colours of its chains and of its picks by letters with swatches", () => {
    const texts = JSON.stringify(makeDraftSheet(towel).parts);
    expect(texts).toContain("8\u00a0A, 8\u00a0B, 64\u00a0A");
    expect(texts).toContain("#a8452f");
  });

  it("leaves no page nearly empty but the last", () => {
    const { pages } = layDocument(makeDraftSheet(towel), 170, 255);
    for (const { filled } of pages.slice(0, -1)) expect(filled).toBeGreaterThan(255 / 3);
  });

  it("refuses a draft without picks, and one that no paper holds", () => {
    const of = (picks: number) => () =>
      makeDraftSheet({
        ...towel,
        shedding: { kind: "lift-plan", liftPlan: Array.from({ length: picks }, () => [1]) },
      });
    expect(of(0)).toThrow(SheetError);
    expect(of(0)).toThrow("the draft has 401 ends and 0 picks; a cloth has at least one of each");
    expect(of(20_001)).toThrow("a sheet holds up to 20000 of each");
  });
});
