import { StoppedError } from "@drawcord/base";
import { describe, expect, it } from "vitest";
import { makeSheet, shortParts } from "../src/index.js";
import { bareRecipe, smallDraft } from "./recipes.js";

const recipe = bareRecipe(smallDraft);

describe("a sheet in the making", () => {
  it("tells of each part that is made", () => {
    const told: string[] = [];
    makeSheet(recipe, { progress: (done, of) => told.push(`${done}/${of}`) });
    expect(told).toEqual(
      Array.from({ length: shortParts.length + 1 }, (_, i) => `${i}/${shortParts.length + 1}`),
    );
  });

  it("stops where its signal says so", () => {
    const controller = new AbortController();
    const progress = (done: number) => done === 3 && controller.abort();
    const { signal } = controller;
    expect(() => makeSheet(recipe, { signal, progress: (done) => void progress(done) })).toThrow(
      StoppedError,
    );
  });
});
