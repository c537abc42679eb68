import { toHtml } from "@drawcord/page";
import fc from "fast-check";
import type { DefaultTreeAdapterTypes } from "parse5";
import { describe, expect, it } from "vitest";
import { draft } from "../../units/test/arbitraries.js";
import { makeSheet } from "../src/index.js";
import { byTag, pageOf, textOf } from "./read-back.js";
import { bareRecipe, exampleRecipe, smallDraft } from "./recipes.js";
import { titles } from "./titles.js";

const attributes = (element: DefaultTreeAdapterTypes.Element) =>
  Object.fromEntries(element.attrs.map(({ name, value }) => [name, value]));

/** Every element of a page. */
function all(html: string): DefaultTreeAdapterTypes.Element[] {
  const found: DefaultTreeAdapterTypes.Element[] = [];
  const visit = (node: DefaultTreeAdapterTypes.ParentNode) => {
    for (const child of node.childNodes) {
      if (!("tagName" in child)) continue;
      found.push(child);
      visit(child);
    }
  };
  visit(pageOf(html));
  return found;
}

describe("the page", () => {
  const html = toHtml(makeSheet(exampleRecipe("runner")));

  it("needs nothing from elsewhere and runs nothing", () => {
    for (const element of all(html)) {
      expect(["script", "link", "iframe", "object", "embed", "img", "base"]).not.toContain(element.tagName);
      for (const [name, value] of Object.entries(attributes(element))) {
        expect(name).not.toMatch(/^on|^src|^xlink/);
        if (name === "href") expect(value).toMatch(/^#/);
      }
    }
    expect(html).toContain("default-src 'none'");
    expect(html).not.toMatch(/url\(|@import/);
  });

  it("has one heading of the first rank, one of the second for each part, and an id for each link", () => {
    const page = pageOf(html);
    expect(byTag(page, "h1").map(textOf)).toEqual(["Moth and lantern runner"]);
    const links = byTag(page, "a").map((link) => attributes(link)["href"]!.slice(1));
    expect(links.length).toBeGreaterThan(5);
    expect(byTag(page, "h2").length).toBe(links.length);
    const ids = all(html).flatMap((element) => attributes(element)["id"] ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    expect(links.every((link) => ids.includes(link))).toBe(true);
  });

  it("names every column and row of every table, every picture, and every box to tick", () => {
    const page = pageOf(html);
    for (const table of byTag(page, "table")) {
      expect(textOf(byTag(table, "caption")[0]!)).not.toBe("");
      const [head, ...rows] = byTag(table, "tr");
      expect(
        byTag(head!, "th").every((cell) => attributes(cell)["scope"] === "col" && textOf(cell) !== ""),
      ).toBe(true);
      expect(
        rows
          .filter((row) => byTag(row, "th").length > 0 || !textOf(row).includes("begin here"))
          .every((row) => byTag(row, "th").some((cell) => /^row/.test(attributes(cell)["scope"]!))),
      ).toBe(true);
    }
    for (const svg of byTag(page, "svg")) expect(textOf(byTag(svg, "title")[0]!)).not.toBe("");
    const labels = byTag(page, "input").map((box) => attributes(box)["aria-label"]);
    expect(labels).toContain("5: done");
    // The boxes of units and rows stand in labels of their own.
    const boxed = byTag(page, "label").map(textOf);
    expect(boxed.filter((text) => text === "81").length).toBe(2);
    expect(boxed).toContain("143");
  });

  it("tells a weaver what to pull for each row", () => {
    const card = byTag(pageOf(html), "table").find((table) => attributes(table)["id"] === "lift-card")!;
    const rows = byTag(byTag(card, "tbody")[0]!, "tr").map((row) => byTag(row, "td").map(textOf));
    // Upwards: the first row of the card is the last of its table, above the heading that it stands under.
    expect(rows.slice(-6).reverse()).toEqual([
      [],
      ["–", "–", "none"],
      [],
      ["1–13", "–", "1–13"],
      [],
      ["–", "1–12", "13"],
    ]);
  });
});

describe("a title", () => {
  it.each(Object.entries(titles))("with %s comes through whole", (_, title) => {
    const page = pageOf(toHtml(makeSheet(bareRecipe(smallDraft, { title }))));
    expect(byTag(page, "h1").map(textOf)).toEqual([title]);
    expect(byTag(page, "title").map(textOf)[0]).toBe(title);
  });

  it("of any characters stays text", () => {
    const text = fc.string({ unit: fc.constantFrom(..."<>&\"'/`= \u0000\u202eשa🦋"), maxLength: 40 });
    const plain = byTag(pageOf(toHtml(makeSheet(bareRecipe(smallDraft, { title: "x" })))), "p").length;
    fc.assert(
      fc.property(text, (title) => {
        const page = pageOf(toHtml(makeSheet(bareRecipe(smallDraft, { title }))));
        const shown = title.replaceAll("\u0000", "\ufffd").replaceAll("\u202e", "\ufffd");
        expect(textOf(byTag(page, "h1")[0]!)).toBe(shown);
        expect(byTag(page, "p").length).toBe(plain);
      }),
    );
  });
});

describe("a recipe without yarns and sett", () => {
  it("still gives its sheet, and says what is missing", () => {
    const text = textOf(pageOf(toHtml(makeSheet(bareRecipe(smallDraft)))));
    expect(text).toContain(
      "The recipe gives neither sett nor picks, so the cloth is drawn with square interlacements",
    );
    expect(text).toContain("The recipe names no colour for the warp");
    expect(text).toContain("A cloth without a name");
  });
});

describe("the same recipe", () => {
  it("gives the same page, byte for byte", () => {
    fc.assert(
      fc.property(draft(), (from) => {
        expect(toHtml(makeSheet(bareRecipe(from)))).toBe(
          toHtml(makeSheet(bareRecipe(structuredClone(from)))),
        );
      }),
      { numRuns: 20 },
    );
  });
});
