import { array, assert, constantFrom, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { edited, editsBetween } from "../docs/bench/edits.js";
import { keyAt, keysAt, valuesAt } from "../docs/bench/schema-keys.js";

const texts = array(constantFrom("a", "b", "\n", "ab\n"), { maxLength: 12 }).map((parts) => parts.join(""));

describe("the edits between two texts", () => {
  it("make the one of the other, whatever differs", () =>
    assert(property(texts, texts, (before, after) => edited(before, editsBetween(before, after)) === after)));

  it("are as short as what differs", () =>
    expect(editsBetween("threading: 1 2 3\nrows: 4", "threading: 1 5 3\nrows: 4")).toEqual([
      { from: 13, to: 14, text: "5" },
    ]));
});

/** What the keys at `|` are. */
function keysIn(text: string): readonly string[] {
  return keysAt(text.replace("|", ""), text.indexOf("|")).map(({ name }) => name);
}

describe("the keys at a place of a recipe", () => {
  it("are those of its section", () => {
    expect(keysIn("|")).toContain("ground");
    expect(keysIn("recipe: 1\nunits:\n  ends: 4\n  |")).toContain("threading");
    expect(keysIn("units: { ends: 4, |")).toContain("threading");
    expect(keysIn("pieces:\n  - name: moths\n    |")).toContain("count");
    expect(keysIn("units: { ends: 4 }\n|")).toContain("lifts");
    expect(keysIn("limits:\n  levels:\n    |")).toContain("open-cut");
  });

  it("are explained, and their words offered", () => {
    expect(keyAt("units:\n  threading: 1", 10)).toMatchObject({ name: "threading", from: 9, to: 18 });
    expect(valuesAt("loom:\n  action: ", 16)).toContain("countermarch");
    expect(valuesAt("units:\n  ends: ", 15)).toEqual([]);
  });
});
