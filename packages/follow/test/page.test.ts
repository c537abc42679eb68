import { createHash } from "node:crypto";
import { followPage, followPlan } from "@drawcord/follow";
import { describe, expect, it } from "vitest";
import { exampleRecipe, smallRecipe } from "./recipes.js";

const between = (page: string, start: string, end: string) => page.split(start)[1]!.split(end)[0]!;
const hash = (text: string) => `sha256-${createHash("sha256").update(text).digest("base64")}`;

describe("the page", () => {
  const page = followPage(followPlan(exampleRecipe("runner")));

  it("lets in its own script and style alone, each by its hash", () => {
    const policy = between(page, 'http-equiv="Content-Security-Policy" content="', '"');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain(`script-src '${hash(between(page, "<script>", "</script>"))}'`);
    expect(policy).toContain(`style-src '${hash(between(page, "<style>", "</style>"))}'`);
    expect(page).not.toMatch(/ style=| src=| href=| on\w+="/);
    expect(page).not.toMatch(/https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
  });

  it("is small, and its script can be read", () => {
    expect(page.length).toBeLessThan(80_000);
    expect(between(page, "<script>", "</script>")).toContain("function forward(plan");
  });

  it("shows a title as it is written, whatever marks are in it", () => {
    const title = `</script><b>"Runner" & co`;
    const odd = followPage(followPlan({ ...smallRecipe, title }));
    expect(odd.split("</script>").length).toBe(3);
    expect(odd).not.toContain("<b>");
    const plan = JSON.parse(between(odd, 'id="plan">', "</script>"));
    expect(plan.title).toBe(title);
  });

  it("refuses more rows than a device holds with ease", () => {
    const [piece] = smallRecipe.pieces;
    const lifts = Array.from({ length: 100_001 }, () => [1]);
    const long = { ...smallRecipe, pieces: [{ ...piece!, draft: { ...piece!.draft, lifts } }] };
    expect(() => followPlan(long)).toThrow(
      "the pieces have 100001 rows; a page for the loom holds up to 100000",
    );
  });
});
