import fs, { mkdirSync, readdirSync, readFileSync, unlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { array, assert, asyncProperty, constantFrom, integer, nat, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { answering } from "../../../tests/support/system.js";
import { jobsInOrder } from "../src/checking/in-order.js";
import { shardOf } from "../src/checking/shard.js";
import { bar } from "../src/progress.js";
import { run } from "./run.js";

const recipe = (picks: number, row = "1") => `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: X 1 2 1 X }
lifts: { picks: ${picks}, rows: [none, ${row}, 2, 1, none] }
`;
const good = recipe(4);

/** A folder of recipes: clean ones, some that warn, and some that cannot be read. */
function archive(files: number): string {
  const cwd = folder();
  mkdirSync(join(cwd, "archive/deep"), { recursive: true });
  for (let i = 0; i < files; i++) {
    const text = i % 5 === 3 ? "recipe: 1\n" : recipe((i % 3) + 3);
    const name = `${i % 2 === 0 ? "deep/" : ""}draft-${String(i).padStart(3, "0")}.recipe.yaml`;
    writeFileSync(join(cwd, "archive", name), text);
  }
  writeFileSync(join(cwd, "archive/notes.yaml"), "shopping: yarn\n");
  return cwd;
}

describe("in order", () => {
  it("gives the results in the order of the items, whichever lane is done first", async () => {
    await assert(
      asyncProperty(array(nat(3)), integer({ min: 1, max: 5 }), async (turns, count) => {
        let busy = 0;
        const lane = () => {
          let working = false;
          return async (item: { turns: number; i: number }) => {
            expect(working).toBe(false);
            working = true;
            busy = Math.max(busy, item.i);
            for (let turn = 0; turn < item.turns; turn++) await Promise.resolve();
            working = false;
            return item.i;
          };
        };
        const items = turns.map((turns, i) => ({ turns, i }));
        const results: number[] = [];
        for await (const result of jobsInOrder(items, Array.from({ length: count }, lane)))
          results.push(result);
        expect(results).toEqual(items.map(({ i }) => i));
      }),
    );
  });

  it("runs the lanes at the same time, and no further ahead than a little", async () => {
    let begun = 0;
    let release = () => {};
    const first = new Promise<void>((resolve) => {
      release = resolve;
    });
    const lane = async (item: number) => {
      begun++;
      if (item === 0) await first;
      return item;
    };
    const results = jobsInOrder(
      Array.from({ length: 1000 }, (_, i) => i),
      [lane, lane],
    );
    const oldest = results.next();
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(begun).toBeGreaterThan(2);
    expect(begun).toBeLessThan(100);
    release();
    expect(await oldest).toEqual({ done: false, value: 0 });
  });
});

describe("shards", () => {
  it("are all items in their order, as evenly as can be", () => {
    assert(
      property(array(nat()), integer({ min: 1, max: 12 }), (items, parts) => {
        const shards = Array.from({ length: parts }, (_, i) => shardOf({ part: i + 1, parts }, items));
        expect(shards.flat()).toEqual(items);
        const sizes = shards.map(({ length }) => length);
        expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("joined are the output of a run without shards, in every format whose files stand for themselves", async () => {
    const cwd = archive(11);
    for (const format of ["ndjson", "github"]) {
      for (const parts of [1, 3, 20]) {
        const whole = await run(["check", "archive", "--format", format], { cwd });
        const shards = [];
        for (let part = 1; part <= parts; part++) {
          const shard = `${part}/${parts}`;
          shards.push(await run(["check", "archive", "--format", format, "--shard", shard], { cwd }));
        }
        expect(shards.map(({ stdout }) => stdout).join("")).toBe(whole.stdout);
        expect(shards.map(({ stderr }) => stderr).join("")).toBe(whole.stderr);
        expect(Math.max(...shards.map(({ status }) => status))).toBe(whole.status);
      }
    }
  });

  it("prints an array of json even where a shard holds one file only", async () => {
    const cwd = archive(3);
    const { stdout } = await run(["check", "archive", "--format", "json", "--shard", "1/3"], { cwd });
    expect(JSON.parse(stdout)).toHaveLength(1);
  });
});

describe("a folder", () => {
  it("is every recipe in it at any depth, in the order of the names", async () => {
    const cwd = archive(3);
    const { stdout } = await run(["check", "archive", "--format", "ndjson"], { cwd });
    const files = stdout.match(/(?<=^\{"file":")[^"]*/gm);
    expect(files).toEqual([
      "archive/deep/draft-000.recipe.yaml",
      "archive/deep/draft-002.recipe.yaml",
      "archive/draft-001.recipe.yaml",
    ]);
  });
});

describe("one bad file", () => {
  it("never stops the rest, nor does a pattern or a folder with nothing in it", async () => {
    const cwd = archive(4);
    mkdirSync(join(cwd, "empty"));
    const { status, stderr, stdout } = await run(
      ["check", "*.draft", "empty", "archive", "none.yaml", "--format", "ndjson"],
      { cwd },
    );
    expect(status).toBe(2);
    expect(stdout.trimEnd().split("\n")).toHaveLength(3);
    expect(stderr.split("\n").map((line) => line.replace(/:.*/, ""))).toEqual([
      "*.draft",
      "empty",
      // All that is wrong with it, a line each.
      "archive/draft-003.recipe.yaml",
      "archive/draft-003.recipe.yaml",
      "archive/draft-003.recipe.yaml",
      "none.yaml",
      "",
    ]);
  });

  it("that vanishes before its turn is told and the next one is read", async () => {
    const cwd = archive(3);
    const stdin = (async function* () {
      unlinkSync(join(cwd, "archive/deep/draft-002.recipe.yaml"));
      yield Buffer.from(good);
    })();
    const outcome = await run(["check", "-", "archive", "--format", "ndjson"], { cwd, stdin });
    expect(outcome.status).toBe(2);
    expect(outcome.stderr).toMatch(/^archive\/deep\/draft-002\.recipe\.yaml: there is no such file.*\n$/);
    expect(outcome.stdout.match(/"file":"[^"]*"/g)).toEqual([
      '"file":"standard input"',
      '"file":"archive/deep/draft-000.recipe.yaml"',
      '"file":"archive/draft-001.recipe.yaml"',
    ]);
  });

  it("that fails as it is read is told in a sentence", async () => {
    const stdin = (async function* () {
      yield Buffer.from(good.slice(0, 20));
      throw Object.assign(new Error("gone"), { code: "EIO" });
    })();
    expect(await run(["check", "-"], { stdin })).toEqual({
      status: 2,
      stdout: "",
      stderr: "standard input: this file cannot be read (EIO)\n",
    });
  });
});

describe("a reader that goes away", () => {
  it("ends the run at once, and the status does not say that all is well", async () => {
    const cwd = archive(3);
    const outcome = await run(["check", "archive", "--format", "ndjson"], { cwd, takes: 1 });
    expect([outcome.status, outcome.stderr]).toEqual([141, ""]);
    expect(outcome.stdout.trimEnd().split("\n")).toHaveLength(1);
    const last = await run(["check", "archive", "--format", "ndjson"], { cwd, takes: 3 });
    expect(last.status).toBe(0);
  });
});

describe("--cache", () => {
  const cached = (cwd: string, ...more: string[]) =>
    run(["check", "archive", "--cache", "kept", ...more], { cwd });

  it("never changes what is printed, in any format", async () => {
    const cwd = archive(8);
    for (const format of ["ndjson", "pretty", "sarif", "markdown"]) {
      const without = await run(["check", "archive", "--format", format], { cwd });
      expect(await cached(cwd, "--format", format)).toEqual(without);
      expect(await cached(cwd, "--format", format)).toEqual(without);
    }
  });

  it("keeps a report for each content and selection of rules, and takes it instead of checking again", async () => {
    const cwd = archive(6);
    await cached(cwd);
    const kept = readdirSync(join(cwd, "kept"));
    // Five files can be read, of three contents.
    expect(kept).toHaveLength(3);
    for (const name of kept) {
      const path = join(cwd, "kept", name);
      writeFileSync(path, readFileSync(path, "utf8").replace('"ends":20', '"ends":77'));
    }
    const { stdout } = await cached(cwd, "--format", "ndjson");
    expect(stdout.match(/"ends":77,"picks"/g)).toHaveLength(5);
    const other = await cached(cwd, "--format", "ndjson", "--rule", "open-cut");
    expect(other.stdout).not.toContain('"ends":77,"picks"');
  });

  it("is worked out anew by another version", async () => {
    const cwd = archive(1);
    await cached(cwd);
    expect(readdirSync(join(cwd, "kept"))).toHaveLength(1);
    const { readFile } = fs.promises;
    const newer = (async (...args: Parameters<typeof readFile>) =>
      String(args[0]).endsWith("/package.json")
        ? '{"version":"99.0.0"}'
        : readFile(...args)) as typeof readFile;
    const giveBack = answering({}, { readFile: newer });
    await cached(cwd).finally(giveBack);
    expect(readdirSync(join(cwd, "kept"))).toHaveLength(2);
  });

  it("is found again by the content, whatever the file is called", async () => {
    const cwd = archive(1);
    await cached(cwd);
    writeFileSync(join(cwd, "archive/other.recipe.yaml"), recipe(3));
    writeFileSync(join(cwd, "archive/changed.recipe.yaml"), recipe(3).replace("ends: 4", "ends: 8"));
    await cached(cwd);
    expect(readdirSync(join(cwd, "kept"))).toHaveLength(2);
  });

  it("a spoiled report is made anew", async () => {
    const cwd = archive(6);
    const before = await cached(cwd, "--format", "ndjson");
    const spoil = constantFrom("", "{", "[]", "null", '{"key":"other"}', '{"report":{}}');
    const contents = readdirSync(join(cwd, "kept")).map((name) => [
      join(cwd, "kept", name),
      readFileSync(join(cwd, "kept", name), "utf8"),
    ]);
    await assert(
      asyncProperty(spoil, async (text) => {
        for (const [path] of contents) writeFileSync(path!, text);
        expect(await cached(cwd, "--format", "ndjson")).toEqual(before);
        for (const [path, kept] of contents) expect(readFileSync(path!, "utf8")).toBe(kept);
      }),
      { numRuns: 12 },
    );
  });

  it("that cannot be a folder is refused", async () => {
    const cwd = archive(1);
    writeFileSync(join(cwd, "file"), "");
    for (const name of ["file", "file/in"]) {
      expect(await run(["check", "archive", "--cache", name], { cwd })).toEqual({
        status: 2,
        stdout: "",
        stderr: `--cache ${name}: this is a file, not a folder\n`,
      });
    }
  });
});

describe("the progress bar", () => {
  it("is shown on a terminal only, for more than one file, and is gone before anything else is printed", async () => {
    const cwd = archive(4);
    const { stderr } = await run(["check", "archive", "--format", "ndjson"], { cwd, stderrIsTerminal: true });
    expect(stderr.startsWith(`\r${bar(0, 4, "files")}\r\u001b[K`)).toBe(true);
    const plain = await run(["check", "archive", "--format", "ndjson"], { cwd });
    expect(plain.stderr).not.toContain("\r");
    const one = await run(["check", "archive/draft-001.recipe.yaml"], { cwd, stderrIsTerminal: true });
    expect(one.stderr).toBe("");
    const dumb = await run(["check", "archive"], { cwd, stderrIsTerminal: true, env: { TERM: "dumb" } });
    expect(dumb.stderr).not.toContain("\r");
  });

  it("grows with the files that are done", () => {
    expect(bar(0, 3, "files")).toBe("[........................] 0 of 3 files");
    expect(bar(1, 3, "files")).toBe("[########................] 1 of 3 files");
    expect(bar(3, 3, "files")).toBe("[########################] 3 of 3 files");
  });
});
