import { findingsOf } from "@drawcord/check";
import { projectOf, soundRecipe } from "@drawcord/files";
import { plan } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";
import { leastRecipe, wholeRecipe } from "../../files/test/samples.js";
import { checkRecipe } from "../src/check-recipe.js";
import { optionsOf } from "../src/options.js";
import { statedNumbers } from "../src/stated.js";

const stating = (claims: string) =>
  soundRecipe(wholeRecipe.replace(/^stated: .*$/m, `stated: { ${claims} }`), "stating");

const findings = (claims: string): string[] => {
  const { findings: all } = checkRecipe(stating(claims));
  return all.filter(({ rule }) => rule === "stated-number").map(({ message }) => message);
};

const line = wholeRecipe.split("\n").findIndex((text) => text.startsWith("stated:")) + 1;

describe("stated numbers", () => {
  it("are none where none are stated, and then none are worked out", () => {
    expect(statedNumbers(soundRecipe(leastRecipe, "least"))).toEqual([]);
    expect(optionsOf(soundRecipe(leastRecipe, "least")).stated).toBeUndefined();
  });

  it("agree with what the plan says, to the rounding in which they are printed", () => {
    const project = plan(projectOf(stating("ends: 1")));
    const claims = [
      `ends: ${project.ends.value}`,
      `lingos: ${project.lingos!.value}`,
      `pieces: ${project.pieces.value}`,
      `width-in-reed: ${(project.widthInReed!.value / 25.4).toFixed(1)} in`,
      `finished-width: ${project.finishedWidth!.value.toFixed(0)} mm`,
      "finished-length: 120 cm",
      `warp-length: ${(project.warpLength!.value / 1000).toFixed(2)} m`,
      `left-over: ${project.leftOver!.value.toFixed(0)} mm`,
      `warp-yarn: ${project.warpYarn!.mass!.value.toFixed(0)} g`,
      `weft-yarn: ${project.weftYarn.reduce((sum, { length }) => sum + length.value, 0).toFixed(0)} m`,
      `cloth-weight: ${project.clothWeight!.value.toFixed(0)} g/m2`,
    ];
    expect(findings(claims.join(", "))).toEqual([]);
    expect(statedNumbers(stating(claims.join(", ")))).toHaveLength(claims.length);
  });

  it("that disagree are named with what they come out as, the difference and the line", () => {
    const project = projectOf(stating("ends: 1"));
    const width = plan(project).widthInReed!.value / 25.4;
    expect(new Set(findings("ends: 900, width-in-reed: 20 in, pieces: 9"))).toEqual(
      new Set([
        `line ${line} states 900 ends, and there are ${project.ends}, ${900 - project.ends} fewer`,
        `line ${line} states 20 in in the reed; worked out, ${round(width)} in, ${round(20 - width)} in less`,
        `line ${line} states 9 pieces, and there are 4, 5 fewer`,
      ]),
    );
  });

  it("are left alone where the plan cannot be, which a rule of its own tells", () => {
    const text = wholeRecipe.replace(/count: [^,}]+/, "count: 10000 Ne ");
    const recipe = soundRecipe(text, "thin");
    expect(statedNumbers(recipe).map(({ name }) => name)).toEqual(["ends", "longest-float"]);
    expect(findingsOf(checkRecipe(recipe), "impossible-number")).toMatchObject([
      { trouble: expect.stringMatching(/expected 0\.5 to 5000 tex$/) },
    ]);
  });

  it("are rounded as they are written: 3.00 m to the centimetre", () => {
    const metres = plan(projectOf(stating("ends: 1"))).warpLength!.value / 1000;
    const claim = (digits: number) => `warp-length: ${(metres + 0.02).toFixed(digits)} m`;
    expect(findings(claim(2))).toHaveLength(1);
    expect(findings(`warp-length: ${Math.floor(metres)}.00 m`)).toHaveLength(1);
    expect(findings(claim(0))).toEqual([]);
  });

  it("are left out where the recipe does not say enough to work them out", () => {
    const recipe = soundRecipe(`${leastRecipe}stated: { width-in-reed: 12 in, units: 2 }`, "bare");
    expect(statedNumbers(recipe)).toMatchObject([{ name: "units", claim: 2, unit: "units", line: 5 }]);
  });
});

/** To the second decimal, as findings print it. */
function round(value: number): number {
  return Number(value.toFixed(2));
}
