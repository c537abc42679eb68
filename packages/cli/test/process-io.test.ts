import { Writable } from "node:stream";
import { describe, expect, it } from "vitest";
import { outputTo } from "../src/process-io.js";

/** A stream that takes a number of pieces and then fails. */
function failing(after: number, code: string): { stream: Writable; taken: string[] } {
  const taken: string[] = [];
  const stream = new Writable({
    write(chunk: Buffer, _, done) {
      if (taken.length === after) return done(Object.assign(new Error(code), { code }));
      taken.push(chunk.toString());
      done();
    },
  });
  return { stream, taken };
}

describe("writing to a pipe or a file", () => {
  it("drops what comes after the reader has gone, and says nothing", async () => {
    const { stream, taken } = failing(1, "EPIPE");
    const output = outputTo(stream);
    for (const text of ["one", "two", "three"]) await output.write(text);
    expect(taken).toEqual(["one"]);
  });

  it("says in a sentence when the disk is full, once", async () => {
    const { stream, taken } = failing(1, "ENOSPC");
    const output = outputTo(stream);
    await output.write("one");
    await expect(output.write("two")).rejects.toThrow("the output cannot be written: the disk is full");
    await output.write("three");
    expect(taken).toEqual(["one"]);
  });
});
