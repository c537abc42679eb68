/** Ended at any moment while it writes, the command leaves the old file or the new one, and nothing beside it. */
import { spawn } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { bin } from "./support/built.js";
import { folder } from "./support/folder.js";

/** 1600 ends by 1600 picks: two and a half million characters to write. */
const wide = `recipe: 1
title: Wide cloth
ground: { weave: broken twill }
units: { ends: 4, threading: (1-8 7-2)*28 1-8 }
lifts: { picks: 4, rows: ["1 3-5", "2 *399"] }
`;
const argv = ["expand", "wide.yaml", "-o", "cloth.txt", "--force"];
const OLD = "the old cloth\n";

/** Runs the command and ends it after so many milliseconds; gives its exit status, or the signal that ended it. */
function ended(cwd: string, after: number, signal: NodeJS.Signals): Promise<number | NodeJS.Signals | null> {
  const child = spawn(process.execPath, [bin, ...argv], { cwd, stdio: "ignore" });
  const timer = setTimeout(() => child.kill(signal), after);
  return new Promise((resolve) => {
    child.on("close", (status, by) => {
      clearTimeout(timer);
      resolve(by ?? status);
    });
  });
}

describe("the command told to end while it writes", () => {
  const cwd = folder();
  const target = join(cwd, "cloth.txt");
  writeFileSync(join(cwd, "wide.yaml"), wide);

  it.each(["SIGINT", "SIGTERM", "SIGKILL"] as const)(
    "by %s leaves the old file or the new one, whole",
    async (signal) => {
      writeFileSync(target, OLD);
      const begun = performance.now();
      expect(await ended(cwd, 60_000, signal)).toBe(0);
      const whole = performance.now() - begun;
      const cloth = readFileSync(target, "utf8");
      expect(cloth.length).toBeGreaterThan(1_000_000);

      const statuses = new Set<number | NodeJS.Signals | null>();
      const moments = 10;
      for (let moment = 0; moment < moments; moment++) {
        writeFileSync(target, OLD);
        const status = await ended(cwd, whole * (0.3 + (0.8 * moment) / moments), signal);
        statuses.add(status);
        const found = readFileSync(target, "utf8");
        expect(found === OLD || found === cloth, `after moment ${moment}`).toBe(true);
        if (status === 0) expect(found === cloth).toBe(true);
        // What is killed outright has no time to tidy up; the file that is meant is whole all the same.
        if (signal !== "SIGKILL") expect(readdirSync(cwd).sort()).toEqual(["cloth.txt", "wide.yaml"]);
      }
      // Before the command listens, the signal itself ends it; from then on, it ends with 130.
      for (const status of statuses) expect([0, 130, signal]).toContain(status);
      if (signal !== "SIGKILL") expect(statuses).toContain(130);
    },
    60_000,
  );
});
