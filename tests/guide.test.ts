import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { bin, runProgram } from "./support/built.js";
import { folder } from "./support/folder.js";
import { guideSteps, shownAnew } from "./support/guide.js";
import { root } from "./support/packages.js";

const pages = readdirSync(join(root, "docs/guide"))
  .filter((file) => file.endsWith(".md"))
  .map((file) => join(root, "docs/guide", file));

/** What the lines of a shell give together, `drawcord` and `npx drawcord` being the built one. */
async function run(commands: readonly string[], cwd: string): Promise<string> {
  let output = "";
  for (const command of commands) {
    const line = command.replace(/^(?:npx )?drawcord\b/, `"${process.execPath}" "${bin}"`);
    const { stdout, stderr } = await runProgram("/bin/sh", ["-c", line], {
      cwd,
      env: { NO_COLOR: "1", COLUMNS: "100" },
    });
    output += stdout + stderr;
  }
  return output;
}

describe("the guide", () => {
  it("has pages, and outputs in them", () => {
    const shown = pages.flatMap((page) =>
      guideSteps(readFileSync(page, "utf8")).filter(
        (step) => step.step === "run" && step.shown !== undefined,
      ),
    );
    expect(pages.length).toBeGreaterThan(8);
    expect(shown.length).toBeGreaterThan(20);
  });

  it.each(pages)("%s shows what its commands print", async (page) => {
    const cwd = folder();
    cpSync(join(root, "shared"), join(cwd, "shared"), { recursive: true });
    const markdown = readFileSync(page, "utf8");
    let anew = "";
    let told = 0;
    for (const step of guideSteps(markdown)) {
      if (step.step === "write") {
        writeFileSync(join(cwd, step.file), step.text);
        continue;
      }
      const output = await run(step.commands, cwd);
      const { shown } = step;
      if (shown === undefined) continue;
      anew += markdown.slice(told, shown.from) + shownAnew(shown.text, output);
      told = shown.to;
    }
    await expect(anew + markdown.slice(told)).toMatchFileSnapshot(page);
  });
});
