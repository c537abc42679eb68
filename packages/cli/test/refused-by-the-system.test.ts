/** What the system may answer to a file that is read or written: permissions, full disks, folders that are gone. */
import fs, { chmodSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { answering } from "../../../tests/support/system.js";
import { writeWhole } from "../src/write-whole.js";
import { run } from "./run.js";

/** The calls that fail, each with its code. Those who run tests may often do everything, so the answers are made up. */
const answers = new Map<string, string>();

const ask = (syscall: string) => {
  const code = answers.get(syscall);
  if (code !== undefined) throw Object.assign(new Error(`${code}: ${syscall}`), { code, syscall });
};

const asked =
  <Args extends unknown[], Result>(syscall: string, call: (...args: Args) => Promise<Result>) =>
  async (...args: Args) => {
    ask(syscall);
    return call(...args);
  };

const { openSync, createReadStream } = fs;
const { access, link, open, rename } = fs.promises;

/** The calls of the system that the command makes, each asked first whether it is to fail. */
const asking = {
  openSync(...args: Parameters<typeof openSync>) {
    if (args[1] === "wx") ask("make");
    return openSync(...args);
  },
  createReadStream(...args: Parameters<typeof createReadStream>) {
    if (!answers.has("read")) return createReadStream(...args);
    return new Readable({
      read() {
        try {
          ask("read");
        } catch (error) {
          this.destroy(error as Error);
        }
      },
    });
  },
};

const askingLater = {
  open: asked("open", async (...args: Parameters<typeof open>) => {
    const file = await open(...args);
    for (const call of ["writeFile", "sync"] as const) {
      file[call] = asked(call, file[call].bind(file) as () => Promise<void>);
    }
    const close = file.close.bind(file);
    file.close = () => close().then(() => ask("close"));
    return file;
  }),
  access: asked("access", access),
  rename: asked("rename", rename),
  link: asked("link", link),
};

let giveBack: () => void;
beforeAll(() => {
  giveBack = answering(asking, askingLater);
});
afterAll(() => giveBack());
beforeEach(() => answers.clear());

describe("a file that the system does not let be written", () => {
  it.each([
    ["make", "EACCES", "you may not write here"],
    ["make", "EROFS", "you may not write here"],
    ["make", "ENOENT", "there is no such folder"],
    ["make", "ENOSPC", "the disk is full"],
    ["make", "EISDIR", "this is a folder; name a file in it"],
    ["make", "EMFILE", "the system says EMFILE"],
    ["access", "EACCES", "you may not write here"],
    ["open", "EPERM", "you may not write here"],
    ["writeFile", "ENOSPC", "the disk is full"],
    ["writeFile", "EDQUOT", "the disk is full"],
    ["writeFile", "EFBIG", "the file is larger than this disk can hold"],
    ["writeFile", "EIO", "the system says EIO"],
    ["sync", "ENOSPC", "the disk is full"],
    ["close", "EDQUOT", "the disk is full"],
    ["rename", "EACCES", "you may not write here"],
    ["rename", "EBUSY", "another program holds this file"],
    ["rename", "EISDIR", "this is a folder; name a file in it"],
  ])("for %s answers %s, is told in a sentence and stays as it was", async (syscall, code, reason) => {
    const cwd = folder();
    const path = join(cwd, "cloth.txt");
    writeFileSync(path, "before");
    answers.set(syscall, code);
    const written = writeWhole("cloth.txt", cwd, ["after"], { force: true });
    await expect(written).rejects.toThrow(`cloth.txt: ${reason}; nothing was written`);
    expect(readFileSync(path, "utf8")).toBe("before");
    expect(readdirSync(cwd)).toEqual(["cloth.txt"]);
  });

  it.each(["format", "init", "expand"])("drawcord %s says so and ends with 2", async (command) => {
    const cwd = folder();
    await run(["init", "moth.yaml"], { cwd });
    const path = join(cwd, "moth.yaml");
    const before = `${readFileSync(path, "utf8")}\n\n`;
    writeFileSync(path, before);
    answers.set("make", "EROFS");
    const argv = { format: [], init: ["--force"], expand: ["-o", "moth.yaml", "--force"] }[command]!;
    expect(await run([command, "moth.yaml", ...argv], { cwd })).toEqual({
      status: 2,
      stdout: "",
      stderr: "moth.yaml: you may not write here; nothing was written\n",
    });
    expect(readFileSync(path, "utf8")).toBe(before);
    expect(readdirSync(cwd)).toEqual(["moth.yaml"]);
  });
});

describe("drawcord check --mend on a full disk", () => {
  const faulty = `recipe: 1 # a tie is missing
ground: { shafts: 4, threading: 1 2 3 4, steps: [{ raise: 4, sink: 1 }, { raise: 2, sink: 3 }, { raise: 3, sink: none }, { raise: 1, sink: 4 }] }
units: { ends: 4, threading: 1-5 4-1 }
lifts: { picks: 4, rows: [5, 4 5, 3-5, 2-4, 1-3, 2-4, 3-5, 4 5, 5] }
`;

  it.each(["make", "writeFile", "sync", "close"])(
    "leaves the original whole when %s fails",
    async (syscall) => {
      const cwd = folder();
      writeFileSync(join(cwd, "sampler.yaml"), faulty);
      for (const output of ["sampler.yaml", "mended.yaml"]) {
        const argv = ["check", "sampler.yaml", "--mend", output, "--force", "--quiet"];
        answers.set(syscall, "ENOSPC");
        const { status, stderr } = await run(argv, { cwd });
        expect({ status, stderr }).toEqual({
          status: 2,
          stderr: `${output}: the disk is full; nothing was written\n`,
        });
        expect(readFileSync(join(cwd, "sampler.yaml"), "utf8")).toBe(faulty);
        expect(readdirSync(cwd)).toEqual(["sampler.yaml"]);
      }
      answers.clear();
      await run(["check", "sampler.yaml", "--mend", "sampler.yaml", "--force"], { cwd });
      expect(readFileSync(join(cwd, "sampler.yaml"), "utf8")).not.toBe(faulty);
    },
  );
});

describe("a file that takes a new name", () => {
  it("is written where files have no second names", async () => {
    const cwd = folder();
    answers.set("link", "EPERM");
    await writeWhole("cloth.txt", cwd, ["text"]);
    expect(readFileSync(join(cwd, "cloth.txt"), "utf8")).toBe("text");
    expect(readdirSync(cwd)).toEqual(["cloth.txt"]);
  });

  it("never takes that of a file which came to be meanwhile", async () => {
    const cwd = folder();
    const chunks = (function* () {
      writeFileSync(join(cwd, "cloth.txt"), "another's");
      yield "mine";
    })();
    await expect(writeWhole("cloth.txt", cwd, chunks)).rejects.toThrow(
      "there is a file of this name already",
    );
    expect(readFileSync(join(cwd, "cloth.txt"), "utf8")).toBe("another's");
    expect(readdirSync(cwd)).toEqual(["cloth.txt"]);
  });

  it("stays as readable and as writable as it was", async () => {
    const cwd = folder();
    const path = join(cwd, "cloth.txt");
    writeFileSync(path, "before");
    for (const mode of [0o666, 0o600, 0o644]) {
      chmodSync(path, mode);
      await writeWhole("cloth.txt", cwd, ["after"], { force: true });
      expect(statSync(path).mode & 0o777).toBe(mode);
    }
  });
});

describe("a file that the system does not let be read", () => {
  it.each([
    ["EACCES", "you may not read this file"],
    ["EPERM", "you may not read this file"],
    ["EISDIR", "this is a folder; name a file in it"],
    ["EIO", "this file cannot be read (EIO)"],
  ])("for %s is told in a sentence", async (code, reason) => {
    const cwd = folder();
    writeFileSync(join(cwd, "moth.yaml"), "recipe: 1\n");
    answers.set("read", code);
    for (const command of ["check", "format", "expand", "plan"]) {
      expect(await run([command, "moth.yaml"], { cwd })).toEqual({
        status: 2,
        stdout: "",
        stderr: `moth.yaml: ${reason}\n`,
      });
    }
  });
});
