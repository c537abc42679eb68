import { readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder } from "../../../tests/support/folder.js";
import { writeWhole } from "../src/write-whole.js";

function* breaksOff(): Iterable<string> {
  yield "half";
  throw Object.assign(new Error("no more yarn"), { code: "empty-cone" });
}

describe("writing a file whole or not at all", () => {
  it("writes all the pieces, and leaves nothing else in the folder", async () => {
    const cwd = folder();
    await writeWhole("a.txt", cwd, ["one ", new TextEncoder().encode("two")]);
    expect(readFileSync(join(cwd, "a.txt"), "utf8")).toBe("one two");
    expect(readdirSync(cwd)).toEqual(["a.txt"]);
  });

  it("leaves a file that is there alone, unless told otherwise", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "a.txt"), "before");
    const sentence = "a.txt: there is a file of this name already; --force replaces it; nothing was written";
    await expect(writeWhole("a.txt", cwd, ["after"])).rejects.toThrow(sentence);
    expect(readFileSync(join(cwd, "a.txt"), "utf8")).toBe("before");
    await writeWhole("a.txt", cwd, ["after"], { force: true });
    expect(readFileSync(join(cwd, "a.txt"), "utf8")).toBe("after");
    expect(readdirSync(cwd)).toEqual(["a.txt"]);
  });

  it("keeps the old file when the new one breaks off", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "a.txt"), "before");
    await expect(writeWhole("a.txt", cwd, breaksOff(), { force: true })).rejects.toThrow("no more yarn");
    expect(readFileSync(join(cwd, "a.txt"), "utf8")).toBe("before");
    await expect(writeWhole("b.txt", cwd, breaksOff())).rejects.toThrow("no more yarn");
    expect(readdirSync(cwd)).toEqual(["a.txt"]);
  });

  it("writes through a link, which stays one", async () => {
    const cwd = folder();
    writeFileSync(join(cwd, "real.txt"), "before");
    symlinkSync("real.txt", join(cwd, "link.txt"));
    await writeWhole("link.txt", cwd, ["after"], { force: true });
    expect(readFileSync(join(cwd, "real.txt"), "utf8")).toBe("after");
    expect(readdirSync(cwd).sort()).toEqual(["link.txt", "real.txt"]);
  });

  it.each([
    ["no/such/a.txt", "no/such/a.txt: there is no such folder; nothing was written"],
    [".", ".: this is a folder; name a file in it; nothing was written"],
    ["file/a.txt", "file/a.txt: a part of this path is a file, not a folder; nothing was written"],
    [`${"n".repeat(300)}.txt`, `${"n".repeat(300)}.txt: this name is too long; nothing was written`],
  ])("%s is refused with a sentence", async (name, sentence) => {
    const cwd = folder();
    writeFileSync(join(cwd, "file"), "");
    await expect(writeWhole(name, cwd, ["text"])).rejects.toThrow(sentence);
    expect(readdirSync(cwd)).toEqual(["file"]);
  });
});
