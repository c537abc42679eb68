import type { CachePlace } from "../checking/cache.js";
import { type Checker, type CheckerSettings, checkerFor } from "../checking/checker.js";
import { jobsInOrder } from "../checking/in-order.js";
import { ruleNames } from "../checking/selection.js";
import { addTo, emptyTally, exitStatus, type Strictness } from "../checking/tally.js";
import { defineCommand, type ExitStatus } from "../command.js";
import { complain } from "../complain.js";
import { CliError } from "../error.js";
import { formatNames, loadFormat } from "../formats/formats.js";
import { type InputFile, inputs } from "../inputs.js";
import type { Io } from "../io.js";
import { numberOption } from "../number-option.js";
import { wantsColour } from "../paint.js";
import { type Progress, progressFor } from "../progress.js";

export const command = defineCommand({
  operands: "FILE...",
  help: `Works each recipe out to every end and pick and says what cloth it makes: how long the floats are, where figure and ground do not cut, how evenly the threads are bound, and whether the cloth hangs together. What was written wrong is said first, with the edit that sets it right; each fault that is left is named with its ends and picks, its units and rows, and drawn.

FILE may also be a plain draft (WIF), whose threading, tie-up and treadling are looked at by their own rules, or a chart of interlacements (text, PBM or PNG); what is drawn is then inferred from the face of the cloth.

For FILE, - is standard input, a folder is every recipe and draft in it (*.recipe.yaml, *.wif), and a pattern such as 'drafts/*.yaml' is every file that fits it. Reports come in the order of the files, and one bad file never stops the rest.

The exit status is 1 when there is an error (or what --fail-on and --max-warnings say), 2 when a file or an option cannot be used, else 0; it is the same in every format.`,
  examples: [
    ["drawcord check runner.recipe.yaml", "reports on one recipe"],
    ["drawcord check runner.recipe.yaml --rule open-cut --all", "shows every border that does not cut"],
    ["drawcord check drafts --format ndjson", "reports on every recipe in a folder, a line of JSON each"],
    ["drawcord check drafts --shard 2/8 --format ndjson", "does the second eighth of them"],
    ["drawcord check runner.recipe.yaml --fail-on warning", "is stricter than usual"],
    ["drawcord check runner.recipe.yaml --propose", "proposes how to mend what it finds"],
    ["drawcord check runner.recipe.yaml --mend mended.recipe.yaml", "mends what it can, and says what"],
  ],
  options: {
    format: {
      type: "string",
      value: "FORMAT",
      choices: formatNames,
      default: "pretty",
      help: "how to print the report",
    },
    rule: {
      type: "string",
      value: "RULE",
      multiple: true,
      help: "look for this only; may be given several times",
    },
    all: { type: "boolean", help: "show every finding, instead of the worst few of each rule" },
    quiet: {
      type: "boolean",
      short: "q",
      help: "show only findings at the level that fails, and nothing of a cloth without one (pretty, github and markdown)",
    },
    "fail-on": {
      type: "string",
      value: "LEVEL",
      choices: ["error", "warning", "note"],
      default: "error",
      help: "the least level of finding that makes the exit status 1",
    },
    "max-warnings": {
      type: "string",
      value: "NUMBER",
      help: "how many warnings, in all files together, still leave the exit status 0",
    },
    shard: {
      type: "string",
      value: "PART",
      help: "do one part of the files, such as 2/8, the second of eight",
    },
    cache: {
      type: "string",
      value: "FOLDER",
      help: "keep reports in this folder, and work out only what has changed",
    },
    propose: {
      type: "boolean",
      help: "propose the smallest change that mends what is found, with each finding in the report",
    },
    seconds: {
      type: "string",
      value: "NUMBER",
      help: "look for causes for at most so many seconds in each recipe, 0 for not at all; what was not tried is reported",
    },
    mend: {
      type: "string",
      value: "OUT",
      help: "mend what can be mended in one recipe and write it to this file, comments and layout kept",
    },
    force: { type: "boolean", help: "with --mend, replace the file if there is one" },
    workers: {
      type: "string",
      value: "NUMBER",
      help: "check so many files at a time (as many as there are cores, when not given)",
    },
  },
  async run({ operands, options }, io) {
    const strictness: Strictness = {
      failOn: options["fail-on"],
      maxWarnings:
        numberOption("check", "max-warnings", options["max-warnings"], undefined, 0) ??
        Number.POSITIVE_INFINITY,
    };
    const workers = numberOption("check", "workers", options.workers);
    const seconds = numberOption("check", "seconds", options.seconds, undefined, 0);
    const rules = await ruleNames(options.rule);
    const asked = await inputs(operands, io);
    const files = await partOf(options.shard, await readAhead(options.mend, asked));
    const look = {
      width: io.width,
      colour: wantsColour(io),
      all: options.all,
      ...(options.quiet ? { least: strictness.failOn } : {}),
    };
    const settings: CheckerSettings = {
      cwd: io.cwd,
      format: options.format,
      look,
      rules,
      propose: options.propose,
      ...(seconds === undefined ? {} : { seconds }),
      ...(options.cache === undefined
        ? {}
        : {
            cache: await cacheIn(options.cache, io.cwd, [
              ...rules,
              ...(options.propose ? ["mends"] : []),
              ...(seconds === undefined ? [] : [`${seconds} s`]),
            ]),
          }),
    };
    const progress = progressFor(io, files.length);
    const status = await tell(files, { settings, strictness, workers, asked: asked.length, progress }, io);
    if (options.mend === undefined || status > 1) return status;
    const { mendFile } = await import("../mending/mend-file.js");
    const [file] = files;
    const search = { progress, ...(seconds !== undefined && { seconds }) };
    await mendFile(
      await file!.read(),
      file!.name,
      { output: options.mend, force: options.force },
      io,
      search,
    );
    return status;
  },
});

/** What `check` was asked to do with its files. */
interface Task {
  readonly settings: CheckerSettings;
  readonly strictness: Strictness;
  /** Files to check at a time; as many as are worth while when not given. */
  readonly workers: number | undefined;
  /** How many files were asked for, in all shards. */
  readonly asked: number;
  readonly progress: Progress;
}

/** Checks the files, prints what came of each as it comes, and gives the exit status. */
async function tell(files: readonly InputFile[], task: Task, io: Io): Promise<ExitStatus> {
  const { asked, progress, settings, strictness } = task;
  const format = await loadFormat(settings.format);
  const { checkers, end } = await checkersFor(files.length, task);
  const tally = emptyTally();
  await print(io, await format.head?.(asked));
  await progress.show(0);
  let between = "";
  for await (const { counts, failure, piece, remark } of jobsInOrder(files, checkers)) {
    if (counts !== undefined) addTo(tally, counts);
    if (failure !== undefined) tally.failures.push(failure);
    const aside = settings.look.least === undefined && remark !== undefined ? [remark] : [];
    for (const sentence of failure?.reasons.map(({ message }) => message) ?? aside) {
      await progress.clear();
      await complain(io, sentence);
    }
    if (piece !== "") {
      await progress.clear();
      await io.stdout.write(between + piece);
      between = format.between ?? "";
    }
    const done = tally.files + tally.failures.length;
    if (io.stdout.closed && done < files.length) {
      await end();
      return 141;
    }
    await progress.show(done);
  }
  await progress.clear();
  await end();
  const status = exitStatus(tally, strictness);
  await print(io, format.tail?.({ tally, status, files: asked, look: settings.look }));
  return status;
}

async function print(io: Io, text = ""): Promise<void> {
  if (text !== "") await io.stdout.write(text);
}

/** As many checkers as the run is worth: in this thread for a few files, in threads of their own for many. */
async function checkersFor(
  files: number,
  { progress, settings, workers }: Task,
): Promise<{ readonly checkers: readonly Checker[]; end(): Promise<void> }> {
  if (files > 1 && workers !== 1) {
    const { startThreads, threadsFor } = await import("../threads.js");
    const count = threadsFor(files, workers);
    if (count > 1) return startThreads(count, settings);
  }
  return { checkers: [await checkerFor(settings, progress.search)], end: async () => {} };
}

/** A recipe to be mended is looked at twice, and read once: it may come from a pipe. */
async function readAhead(
  mend: string | undefined,
  files: readonly InputFile[],
): Promise<readonly InputFile[]> {
  if (mend === undefined) return files;
  const [file] = files;
  if (file === undefined || files.length > 1) {
    throw new CliError(
      "unwanted-operand",
      `drawcord check --mend mends one recipe at a time, not ${files.length}`,
    );
  }
  let bytes: Promise<Uint8Array> | undefined;
  return [
    {
      ...file,
      read: () => {
        bytes ??= file.read();
        return bytes;
      },
    },
  ];
}

async function partOf(shard: string | undefined, files: readonly InputFile[]): Promise<readonly InputFile[]> {
  if (shard === undefined) return files;
  const { shardOf, parseShard } = await import("../checking/shard.js");
  return shardOf(parseShard(shard), files);
}

async function cacheIn(folder: string, cwd: string, asked: readonly string[]): Promise<CachePlace> {
  const { openCache } = await import("../checking/cache.js");
  return openCache(folder, cwd, asked);
}
