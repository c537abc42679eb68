import { readFileSync } from "node:fs";
import { type Part, partToSvg, type Table } from "@drawcord/page";
import { expect, it } from "vitest";
import { makeSheet } from "../src/index.js";
import { exampleRecipe } from "./recipes.js";

/** Lines of the card up to the one with row 143, and some above it. */
const LINES = 24;

it("the picture in the README is the foot of the runner's lift card, with row 143 on it", async () => {
  const sheet = makeSheet(exampleRecipe("runner"), { parts: ["lifts"] });
  const [part] = sheet.parts;
  const card = part!.blocks.find((block): block is Table => block.kind === "table")!;
  const foot: Part = {
    ...part!,
    blocks: [
      {
        ...card,
        rows: card.rows.slice(0, LINES),
        heads: card.heads!.filter(({ row }) => row < LINES),
      },
    ],
  };
  const svg = partToSvg({ ...sheet, parts: [foot] }, foot);
  expect(svg).toMatch(/<text[^>]*>143<\/text>/);
  await expect(svg).toMatchFileSnapshot("../pictures/lift-card.svg");
  expect(readFileSync(new URL("../README.md", import.meta.url), "utf8")).toContain("pictures/lift-card.svg");
});
