import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draft } from "../../units/test/arbitraries.js";
import { makeSheet, sectionDrawing } from "../src/index.js";
import { bareRecipe, exampleRecipe } from "./recipes.js";

/** `over 3, under 1`: a side for each thread. */
function sidesOf(alt: string): readonly boolean[] {
  return [...alt.matchAll(/(over|under) (\d+)/g)].flatMap(([, side, count]) =>
    Array.from({ length: Number(count) }, () => side === "over"),
  );
}

function cutsOf(recipe: Parameters<typeof makeSheet>[0]) {
  const blocks = makeSheet(recipe, { parts: ["sections"] }).parts.flatMap((part) => part.blocks);
  return blocks.flatMap((block) => (block.kind === "pictures" ? block.pictures : []));
}

describe("cross-sections", () => {
  it("run as the cloth is woven, for any draft: the sides of each thread are those of the drawdown", () => {
    fc.assert(
      fc.property(draft(), (from) => {
        const { drawdown } = expand(from);
        for (const { alt, caption, id } of cutsOf(bareRecipe(from))) {
          const [line, first] = caption.match(/\d+/g)!.map((text) => Number(text) - 1) as [number, number];
          const isPick = id.startsWith("section-pick");
          const woven = sidesOf(alt).map((_, i) =>
            isPick ? !drawdown.get(line, first + i) : drawdown.get(first + i, line),
          );
          expect(sidesOf(alt)).toEqual(woven);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("are of ground, figure and border, along a pick and along an end", () => {
    const cuts = cutsOf(exampleRecipe("runner"));
    const ids = cuts.map(({ id }) => id).sort();
    const places = ["border", "figure", "ground"];
    expect(ids).toEqual(["end", "pick"].flatMap((way) => places.map((place) => `section-${way}-${place}`)));
    // The ground of a broken twill on four shows its weft, the figure its warp.
    const share = (id: string) =>
      sidesOf(cuts.find((cut) => cut.id === id)!.alt).filter((over) => over).length / 12;
    expect(share("section-pick-ground")).toBe(0.75);
    expect(share("section-pick-figure")).toBe(0.25);
  });

  it("draw a thread above those that it passes over, and below the others", () => {
    const { shapes } = sectionDrawing([true, true, false], ["1", "2", "3"]);
    const thread = shapes.find((shape) => shape.kind === "path" && shape.width === 1.1);
    const points = thread?.kind === "path" ? [...thread.d.matchAll(/(?:L| )(\d+) ([\d.]+)(?=[CL]|$)/g)] : [];
    expect(points.map(([, , y]) => Number(y) < 9)).toEqual([true, true, false, false]);
  });
});
