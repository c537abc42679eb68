/** What only processes and threads can show of checking many files. */
import { execFile, spawn } from "node:child_process";
import { chmodSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { bin, drawcord, runProgram } from "./support/built.js";
import { folder } from "./support/folder.js";
import { root } from "./support/packages.js";

const FILES = 41;
const cwd = folder();

beforeAll(() => {
  mkdirSync(join(cwd, "archive"));
  for (let i = 0; i < FILES; i++) {
    const good = `recipe: 1
ground: { weave: broken twill }
units: { ends: 4, threading: X 1-${(i % 7) + 2} X }
lifts: { picks: ${(i % 3) + 3}, rows: [none, 1, 2, 1-2, none*${(i % 11) + 1}] }
`;
    const text = i % 9 === 4 ? good.replace("units", "unit") : good;
    writeFileSync(join(cwd, `archive/draft-${String(i).padStart(2, "0")}.recipe.yaml`), text);
  }
  writeFileSync(join(cwd, "archive/draft-99.wif"), draft);
});

/** A draft with a section that nothing is made of. */
const draft = `[WIF]
Version=1.1
Date=April 20, 1997
Source Program=none
[CONTENTS]
WEAVING=true
WARP=true
WEFT=true
THREADING=true
TIEUP=true
TREADLING=true
[WEAVING]
Shafts=2
Treadles=2
[WARP]
Threads=4
[WEFT]
Threads=4
[THREADING]
1=1
2=2
3=1
4=2
[TIEUP]
1=1
2=2
[TREADLING]
1=1
2=2
3=1
4=2
[PRIVATE OWN LOOM]
x=1
`;

describe("many files at a time", () => {
  it.each([
    ["pretty", ["3"]],
    ["ndjson", ["2", "5"]],
    ["sarif", ["2"]],
    ["github", ["3"]],
    ["markdown", ["2"]],
  ])("are told the same, byte for byte, with any number of workers, as %s", async (format, numbers) => {
    const alone = await drawcord(["check", "archive", "--format", format, "--workers", "1"], { cwd });
    expect(alone.status).toBe(2);
    const said = alone.stderr.trimEnd().split("\n");
    expect(said).toHaveLength(6);
    expect(said.at(-1)).toBe("archive/draft-99.wif: not used: [PRIVATE OWN LOOM]");
    for (const workers of numbers) {
      expect(await drawcord(["check", "archive", "--format", format, "--workers", workers], { cwd })).toEqual(
        alone,
      );
    }
  });

  it("are checked in threads without being told to", async () => {
    const given = await drawcord(["check", "archive", "--format", "ndjson"], { cwd });
    expect(given).toEqual(
      await drawcord(["check", "archive", "--format", "ndjson", "--workers", "1"], { cwd }),
    );
    const one = await drawcord(["check", "-", "--workers", "3", "archive"], {
      cwd,
      input: readFileSync(join(cwd, "archive/draft-00.recipe.yaml")),
    });
    expect(one.stdout).toMatch(/^standard input\n/);
  });

  it("in parts, each a process that writes its own file, are together the whole", async () => {
    const parts = 4;
    const args = ["check", "archive", "--format", "ndjson", "--cache", "kept"];
    const whole = await drawcord(args.slice(0, 4), { cwd });
    const shards = await Promise.all(
      Array.from({ length: parts }, (_, part) =>
        drawcord([...args, "--shard", `${part + 1}/${parts}`], { cwd }),
      ),
    );
    expect(shards.map(({ stdout }) => stdout).join("")).toBe(whole.stdout);
    expect(shards.map(({ stderr }) => stderr).join("")).toBe(whole.stderr);
    expect(Math.max(...shards.map(({ status }) => status ?? -1))).toBe(whole.status);
    expect(readdirSync(join(cwd, "kept")).every((name) => /^[0-9a-f]{64}\.json$/.test(name))).toBe(true);
  });
});

describe("an array job, as the README has it", () => {
  it("joins to the whole, byte for byte", async () => {
    const readme = readFileSync(join(root, "packages/cli/README.md"), "utf8");
    const [, script, parts] = /^```sh\n(#!\/bin\/sh\n#SBATCH --array=1-(\d+)\n[^`]*)^```/m.exec(readme)!;
    const [, joining] = /`(cat reports\S+) > reports\.ndjson`/.exec(readme)!;
    const fleet = folder();
    symlinkSync(join(cwd, "archive"), join(fleet, "archive"));
    writeFileSync(join(fleet, "drawcord"), `#!/bin/sh\nexec "${process.execPath}" "${bin}" "$@"\n`);
    chmodSync(join(fleet, "drawcord"), 0o755);
    const env = { PATH: `${fleet}${delimiter}${process.env["PATH"]}` };
    const statuses = await Promise.all(
      Array.from({ length: Number(parts) }, async (_, part) => {
        const job = { ...env, SLURM_ARRAY_TASK_ID: `${part + 1}` };
        return (await runProgram("sh", ["-c", script!], { cwd: fleet, env: job })).status;
      }),
    );
    const whole = await drawcord(["check", "archive", "--format", "ndjson"], { cwd });
    expect((await runProgram("sh", ["-c", joining!], { cwd: fleet })).stdout).toBe(whole.stdout);
    expect(Math.max(...statuses.map((status) => status ?? -1))).toBe(whole.status);
  });
});

describe("a thread that dies", () => {
  /** Loaded before the command in each thread: some files are the end of the thread that is given them. */
  const deadly = `import { isMainThread, parentPort } from "node:worker_threads";
if (!isMainThread) {
  const on = parentPort.on.bind(parentPort);
  parentPort.on = (event, listener) =>
    on(event, (order) => {
      if (/draft-(00|07|08|40)/.test(order.name)) process.exit(7);
      if (order.name.includes("draft-20")) for (const hoard = []; ; ) hoard.push(new Array(1000).fill({}));
      listener(order);
    });
}
`;

  it("costs only its file, whether it ends by itself or for want of memory", async () => {
    const hook = join(folder(), "deadly.mjs");
    writeFileSync(hook, deadly);
    const args = ["check", "archive", "--format", "ndjson", "--workers"];
    const alone = await drawcord([...args, "1"], { cwd });
    const env = { NODE_OPTIONS: `--max-old-space-size=64 --import=${pathToFileURL(hook).href}` };
    const found = await drawcord([...args, "2"], { cwd, env });
    const isDeadly = (text: string) => /draft-(00|07|08|40|20)/.test(text);
    const isSafe = (text: string) => !isDeadly(text);
    const lines = (text: string) => text.trimEnd().split("\n");
    expect(found.status).toBe(2);
    expect(lines(found.stdout)).toEqual(lines(alone.stdout).filter(isSafe));
    expect(lines(found.stderr).filter(isSafe)).toEqual(lines(alone.stderr).filter(isSafe));
    const died = lines(found.stderr).filter(isDeadly);
    expect(died).toHaveLength(5);
    for (const sentence of died) {
      expect(sentence).toMatch(/^archive\/draft-\d\d\.recipe\.yaml: this file could not be checked/);
      if (sentence.includes("draft-20")) expect(sentence).toMatch(/ \(.*memory.*\)$/);
    }
  });
});

describe("a run that ends before its time", () => {
  /** Starts the command, and tells its status and what it said once it has ended. */
  function start(args: readonly string[], stdin: "pipe" | "ignore" = "ignore") {
    const child = spawn(process.execPath, [bin, ...args], { cwd, stdio: [stdin, "pipe", "pipe"] });
    let out = "";
    let err = "";
    child.stdout?.on("data", (chunk: Buffer) => {
      out += chunk;
    });
    child.stderr?.on("data", (chunk: Buffer) => {
      err += chunk;
    });
    const ended = new Promise<{ status: number | null; out: string; err: string }>((resolve) => {
      child.on("close", (status) => resolve({ status, out, err }));
    });
    return { child, ended };
  }

  it("by Ctrl-C ends with 130, after whole lines only", async () => {
    const { child, ended } = start(["check", "archive", "-", "--format", "ndjson", "--workers", "2"], "pipe");
    child.stdout?.once("data", () => child.kill("SIGINT"));
    const { err, out, status } = await ended;
    expect(status).toBe(130);
    expect(err).not.toContain(" at ");
    for (const line of out.trimEnd().split("\n")) expect(() => JSON.parse(line)).not.toThrow();
    expect(out.endsWith("\n")).toBe(true);
  });

  it("by Ctrl-C while it waits for standard input ends with 130 and leaves nothing behind", async () => {
    const before = readdirSync(cwd);
    const { child, ended } = start(["expand", "-", "-o", "out.txt"], "pipe");
    setTimeout(() => child.kill("SIGINT"), 1500);
    expect(await ended).toEqual({ status: 130, out: "", err: "" });
    expect(readdirSync(cwd)).toEqual(before);
  });

  it("because its reader has gone is quiet, and does not say that all is well", async () => {
    const line = `"${process.execPath}" "${bin}" check archive archive archive --format json --workers 2; echo "$?" >&2`;
    const told = await new Promise<string>((resolve) => {
      execFile("sh", ["-c", `(${line}) | head -n 1`], { cwd }, (_error, _stdout, stderr) => resolve(stderr));
    });
    const said = told.trimEnd().split("\n");
    expect(said.at(-1)).toBe("141");
    for (const sentence of said.slice(0, -1)) expect(sentence).toMatch(/^archive\/draft-\d+\.recipe\.yaml:/);
  });
});

it("what the built command holds of others is named in its notice", () => {
  const path = join(root, "packages/cli/dist/metafile-esm.json");
  const { outputs } = JSON.parse(readFileSync(path, "utf8")) as {
    outputs: Record<string, { inputs: Record<string, { bytesInOutput: number }> }>;
  };
  const held = Object.values(outputs)
    .flatMap(({ inputs }) => Object.entries(inputs))
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .flatMap(([source]) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(source)?.[1] ?? []);
  const notice = readFileSync(join(root, "packages/cli/NOTICE.md"), "utf8");
  expect(held).toContain("yaml");
  for (const name of new Set(held)) expect(notice).toContain(`## ${name}\n`);
});
