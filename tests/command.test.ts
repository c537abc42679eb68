/** What only a process can show of the built command: its exit status, its streams, and how it starts and ends. */
import { spawn } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { bin, drawcord } from "./support/built.js";
import { folder } from "./support/folder.js";
import { root } from "./support/packages.js";

const runner = join(root, "shared/recipes/runner.recipe.yaml");
const cwd = folder();
writeFileSync(join(cwd, "not.yaml"), "recipe: [1");
writeFileSync(
  join(cwd, "binary.yaml"),
  Uint8Array.from({ length: 4096 }, (_, i) => (i * 73) & 0xff),
);

describe("the built command", () => {
  it("checks the runner and ends with 0", async () => {
    const { status, stdout, stderr } = await drawcord(["check", runner]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(
      /\n0 findings, \d+ of \d+ rules ran; not long-stretch, large-area: no limit is set\n$/,
    );
    expect(stdout).not.toContain("\u001b");
  });

  it("finds the slips of the runner's faulty twin and ends with 1", async () => {
    const { status, stdout } = await drawcord([
      "check",
      join(root, "shared/recipes/faulty-runner.recipe.yaml"),
    ]);
    expect(status).toBe(1);
    expect(stdout).toMatch(
      /\n\d+ findings \(.*\), \d+ of \d+ rules ran; not long-stretch, large-area: no limit is set\n$/,
    );
  });

  it.each([
    [["check", "none.yaml"], 'none.yaml: there is no such file; did you mean "not.yaml"?\n'],
    [["check", "not.yaml"], "not.yaml:1:11: a bracket before this is not closed; expected ]\n"],
    [
      ["check", "binary.yaml"],
      "binary.yaml:1:3: this is not a text file in UTF-8: a byte here is no character\n",
    ],
    [
      ["check", "--format", "xml", "x"],
      'drawcord check: --format takes one of pretty, json, ndjson, sarif, github, markdown, not "xml"\n',
    ],
    [
      ["expand", "not.yaml", "-o", "out.txt"],
      "not.yaml:1:11: a bracket before this is not closed; expected ]\n",
    ],
    [["chekc"], 'drawcord has no command "chekc"; did you mean "check"?\n'],
  ])("%j ends with 2, one sentence and nothing written", async (argv, sentence) => {
    expect(await drawcord(argv, { cwd })).toEqual({ status: 2, stdout: "", stderr: sentence });
    expect(readdirSync(cwd).sort()).toEqual(["binary.yaml", "not.yaml"]);
  });

  it("reads a recipe that is piped in", async () => {
    const { status, stdout } = await drawcord(["expand", "-"], {
      input:
        "recipe: 1\nground: { weave: plain }\nunits: { ends: 2, threading: 1 X }\nlifts: { picks: 2, rows: [1, none] }\n",
    });
    expect(status).toBe(0);
    expect(stdout.split("\n").map((line) => line.length)).toEqual([4, 4, 4, 4, 0]);
  });

  it("has nothing to say when its reader goes away early", async () => {
    const args = [bin, "expand", runner];
    const child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "pipe"] });
    let told = "";
    child.stderr.on("data", (chunk: Buffer) => {
      told += chunk;
    });
    child.stdout.once("data", () => child.stdout.destroy());
    const status = await new Promise((resolve) => child.on("close", resolve));
    expect({ status, told }).toEqual({ status: 0, told: "" });
  });
});

describe("what a check loads", () => {
  const recipe = `recipe: 1
ground: { weave: plain }
units: { ends: 2, threading: 1 X }
lifts: { picks: 2, rows: [1, none] }
cloth: { sett: 10 per cm }
`;

  /** The packages and sources of all that the command loaded for a check, by Node's own account. */
  async function loaded(text: string, ...more: string[]): Promise<readonly string[]> {
    const account = folder();
    const file = join(folder(), "one.recipe.yaml");
    writeFileSync(file, text);
    const { status, stderr } = await drawcord(["check", file, ...more], {
      env: { NODE_V8_COVERAGE: account },
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const scripts = readdirSync(account).flatMap((name) => {
      const { result } = JSON.parse(readFileSync(join(account, name), "utf8")) as {
        result: { url: string }[];
      };
      return result.flatMap(({ url }) => (url.startsWith("file:") ? [fileURLToPath(url)] : []));
    });
    return scripts.flatMap((path) => [path, ...(heldBy.get(path) ?? [])]);
  }

  /** The sources that each file of the bundled command holds. */
  const { outputs } = JSON.parse(readFileSync(join(root, "packages/cli/dist/metafile-esm.json"), "utf8")) as {
    outputs: Record<string, { inputs: Record<string, unknown> }>;
  };
  const heldBy = new Map(
    Object.entries(outputs).map(([path, { inputs }]) => [join(root, path), Object.keys(inputs)]),
  );

  const heavy =
    /node_modules\/(mathjs|tinyglobby|pdfkit)\/|\/sheet\/|\/src\/threads\.ts$|\/(cache|mend-file|sarif)\.ts$/;

  it("is nothing that it has no use for", async () => {
    const sources = await loaded(`${recipe}stated: { ends: 4, units: 2, rows: 2, lingos: 2 }\n`);
    expect(sources.some((source) => source.endsWith("/check-file.ts"))).toBe(true);
    expect(sources.filter((source) => heavy.test(source))).toEqual([]);
  });

  it("is no mathjs where a number of the project is stated", async () => {
    const sources = await loaded(`${recipe}stated: { width-in-reed: 4 mm }\n`);
    expect(sources.some((source) => source.endsWith("/formulas/length.ts"))).toBe(true);
    expect(sources.filter((source) => heavy.test(source))).toEqual([]);
  });
});
