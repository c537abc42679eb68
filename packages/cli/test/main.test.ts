import { describe, expect, it } from "vitest";
import { defineCommand } from "../src/command.js";
import type { Registry } from "../src/registry.js";
import { run as runIn } from "./run.js";

const weave = defineCommand({
  operands: "FILE...",
  help: "Weaves what it is given.\n\nAnd says so.",
  examples: [["drawcord weave a.yaml", "weaves a.yaml"]],
  options: {
    format: {
      type: "string",
      short: "f",
      value: "FORMAT",
      choices: ["pretty", "json"],
      default: "pretty",
      help: "how to print it",
    },
    rule: { type: "string", value: "RULE", multiple: true, help: "only this rule" },
    output: { type: "string", short: "o", value: "FILE", help: "where to" },
    quiet: { type: "boolean", short: "q", help: "say less" },
  },
  run: async (args, io) => {
    await io.stdout.write(JSON.stringify(args));
    return args.options.quiet ? 1 : 0;
  },
});

const commands: Registry = {
  weave: { summary: "weave it", load: async () => ({ command: weave }) },
  sley: {
    summary: "sley it",
    load: async () => ({ command: { ...weave, operands: "[DENT]", options: {} } }),
  },
  fail: {
    summary: "fail",
    load: async () => ({
      command: {
        ...weave,
        operands: "",
        options: {},
        run: async () => {
          throw new Error("the title says \u001b[2J and more\nof it");
        },
      },
    }),
  },
};

const run = (...argv: string[]) => runIn(argv, { commands });

describe("reading the command line", () => {
  it("gives a command its operands and its options, with the defaults filled in", async () => {
    expect(await run("weave", "a.yaml", "-q", "--format=json", "-", "--rule", "x", "--rule=y")).toEqual({
      status: 1,
      stdout: JSON.stringify({
        operands: ["a.yaml", "-"],
        options: { format: "json", rule: ["x", "y"], quiet: true },
      }),
      stderr: "",
    });
    expect((await run("weave", "--", "-q")).stdout).toBe(
      JSON.stringify({ operands: ["-q"], options: { format: "pretty", rule: [], quiet: false } }),
    );
  });

  it.each([
    [["weav", "a"], 'drawcord has no command "weav"; did you mean "weave"?'],
    [["sail"], 'drawcord has no command "sail"; did you mean "fail"?'],
    [["constructor"], 'drawcord has no command "constructor"; there are weave, sley, fail'],
    [["--halp"], 'drawcord has no option --halp; did you mean "--help"?'],
    [["-q", "weave"], "drawcord has no option -q; a command comes first, as in: drawcord check FILE"],
    [["weave", "a", "--fromat", "json"], 'drawcord weave has no option --fromat; did you mean "--format"?'],
    [
      ["weave", "a", "--zebra"],
      'drawcord weave has no option --zebra; "drawcord weave --help" lists its options',
    ],
    [
      ["weave", "a", "--toString"],
      'drawcord weave has no option --toString; "drawcord weave --help" lists its options',
    ],
    [["weave", "a", "-x"], 'drawcord weave has no option -x; "drawcord weave --help" lists its options'],
    [
      ["weave", "a", "--format", "jsn"],
      'drawcord weave: --format takes one of pretty, json, not "jsn"; did you mean "json"?',
    ],
    [["weave", "a", "-f", "xml"], 'drawcord weave: -f takes one of pretty, json, not "xml"'],
    [["weave", "a", "--format"], "drawcord weave: --format needs one of pretty, json"],
    [["weave", "a", "-o"], "drawcord weave: -o needs a value, FILE"],
    [["weave", "a", "--output="], "drawcord weave: --output needs a value, FILE"],
    [["weave", "a", "--quiet=no"], "drawcord weave: --quiet takes no value"],
    [["weave"], "drawcord weave needs a FILE: drawcord weave FILE..."],
    [["sley", "1", "2"], 'drawcord sley takes [DENT]; "2" is one too many'],
    [["fail", "1"], 'drawcord fail takes nothing besides its options; "1" is one too many'],
  ])("%j is answered with what was meant", async (argv, sentence) => {
    expect(await run(...argv)).toEqual({ status: 2, stdout: "", stderr: `${sentence}\n` });
  });

  it("what goes wrong in a command is one line that a terminal cannot obey", async () => {
    expect(await run("fail")).toEqual({
      status: 2,
      stdout: "",
      stderr: "the title says <U+001B>[2J and more<U+000A>of it\n",
    });
  });
});

describe("help", () => {
  it("lists every command with its summary, without loading it", async () => {
    const asleep: Registry = {
      weave: { summary: "weave it", load: () => Promise.reject(new Error("loaded")) },
    };
    const { status, stdout } = await runIn(["--help"], { commands: asleep });
    expect(status).toBe(0);
    expect(stdout).toContain("  weave  weave it\n");
  });

  it("is on stderr, with status 2, when nothing was asked for", async () => {
    const { status, stdout, stderr } = await run();
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toBe((await run("-h")).stdout);
  });

  it("of a command shows how to call it, every option and the examples", async () => {
    const { status, stdout } = await run("weave", "--help");
    expect(status).toBe(0);
    expect(stdout).toBe(`drawcord weave FILE... [options]

Weaves what it is given.

And says so.

Options
  -f, --format FORMAT  how to print it: pretty or json (pretty when not given)
      --rule RULE      only this rule
  -o, --output FILE    where to
  -q, --quiet          say less
  -h, --help           print this

Examples
  drawcord weave a.yaml
      weaves a.yaml
`);
    expect((await run("help", "weave")).stdout).toBe(stdout);
    expect((await run("weave", "-h")).stdout).toBe(stdout);
  });

  it("--version prints the version of the package", async () => {
    const { stdout } = await run("--version");
    expect(stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
