/**
 * What the checker costs, by the cloth. Times are the processor's, which a busy machine disturbs least; of two times in
 * one run the ratio tells. `node cloths.mjs WHO SIDE FAULTS ROWS TIME` measures one cloth, in a process of its own.
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { check } from "@drawcord/check";
import { figuredDraft } from "./drafts.mjs";
import { slowCheck } from "./slow-twin.mjs";
import { least, line, ms, within } from "./table.mjs";

const here = fileURLToPath(import.meta.url);

/** A million interlacements may cost no more in a large cloth than in a small one; what is above 1 is for the clock's noise. */
const MOST_GROWTH = 1.5;

/** Processor time in ms for which the largest cloth is checked over and over, by either checker; the others for less. */
const ENOUGH = 10_000;

/** Processor time of a piece of work in ms. */
function cost(work) {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function megabytes() {
  return process.resourceUsage().maxRSS / 1024;
}

/** The numbers that both checkers find. */
function numbersOf({ floats, cut, balance, integrity }) {
  return { floats, cut, balance, layers: integrity.layers };
}

/**
 * One cloth by the checker (`fast`) or by its slow twin (`slow`), timed alike: what the first run costs, and the best of
 * all in the same time; the most memory taken beyond Node and the draft; and the numbers that came out.
 */
function alone(who, side, faults, rows, enough) {
  const draft = figuredDraft(side, { faults, ...(rows > 0 && { rows }) });
  const work = who === "slow" ? slowCheck : check;
  const own = megabytes();
  let report;
  const first = cost(() => {
    report = work(draft);
  });
  const memory = megabytes() - own;
  let best = first;
  for (let spent = first; spent < enough; ) {
    const again = cost(() => work(draft));
    best = Math.min(best, again);
    spent += again;
  }
  const numbers = who === "slow" ? report : numbersOf(report);
  console.log(JSON.stringify({ first, best, memory, findings: report.findings?.length, numbers }));
}

function measure(side, { who = "fast", faults = 0, rows = 0, enough = ENOUGH / 2 } = {}) {
  const { stdout, status, stderr } = spawnSync(
    process.execPath,
    [here, who, side, faults, rows, enough].map(String),
  );
  if (status !== 0) throw new Error(`a cloth of ${side} x ${side} could not be measured: ${stderr}`);
  return JSON.parse(String(stdout));
}

/** Refuses to go on when the words and the bytes disagree. */
function agree(fast, slow, side) {
  if (JSON.stringify(fast) !== JSON.stringify(slow))
    throw new Error(`the slow twin disagrees at ${side} x ${side}`);
}

/** The largest cloth, without findings and with many, beside the slow twin. */
export function largestCloth() {
  for (const side of [40, 100, 132, 400]) {
    const draft = figuredDraft(side);
    agree(numbersOf(check(draft)), slowCheck(draft), side);
  }
  const side = 10_000;
  const clean = measure(side, { enough: ENOUGH });
  const faulty = measure(side, { faults: 10_000, enough: ENOUGH });
  const slow = measure(side, { who: "slow", enough: ENOUGH });
  agree(clean.numbers, slow.numbers, side);

  line("10,000 x 10,000, expanded and checked in full", "processor", "first run", "memory", "findings");
  for (const [name, { best, first, memory, findings = "" }] of [
    ["no findings", clean],
    ["10,000 findings", faulty],
    ["slow twin, a byte for each interlacement", slow],
  ]) {
    line(name, ms(best), ms(first), `${memory.toFixed(0)} MB`, findings);
  }
  for (const [name, { best, first, memory }] of [
    ["no findings", clean],
    ["10,000 findings", faulty],
  ]) {
    const times = slow.best / best;
    line(`${name}, beside the slow twin`, `${times.toFixed(1)} times`, least(times, 25, "times"));
    line(`${name}, first run`, ms(first), within(first, 1000, "ms"));
    line(`${name}, memory beyond Node's own`, `${memory.toFixed(0)} MB`, within(memory, 120, "MB"));
  }
}

/** Cloths of 1, 4, 16 and 64 million interlacements: what a million costs, beside what it costs in the smallest. */
export function growth() {
  for (const [name, rows, faults] of [
    ["unlike rows", 0, 0],
    ["unlike rows, with findings", 0, 10_000],
    ["100 rows to and fro", 100, 0],
    ["100 rows to and fro, with findings", 100, 10_000],
  ]) {
    line(`growth: ${name}`, "processor", "findings", "a million");
    let smallest;
    for (const side of [1000, 2000, 4000, 8000]) {
      // What is planted in rows that come again is found as often as they come.
      const planted = rows === 0 ? faults : Math.round((faults * rows) / (side / 4));
      const { best, findings } = measure(side, { rows, faults: planted });
      const million = (best * 1e6) / side ** 2;
      smallest ??= million;
      const target = within(million / smallest, MOST_GROWTH, "times");
      line(`${side} x ${side}`, ms(best), findings, `${million.toFixed(1)} ms`, side === 1000 ? "" : target);
    }
    console.log();
  }
  line("8000 x 8000, by how many rows are unlike", "processor", "findings");
  const unlike = measure(8000);
  for (const rows of [50, 100, 400]) {
    const { best, findings } = measure(8000, { rows });
    line(`${rows} rows to and fro`, ms(best), findings, "", within(best / unlike.best, 1.1, "of unlike"));
  }
  line("2000 unlike rows", ms(unlike.best), unlike.findings);
}

const [who, ...numbers] = process.argv.slice(2);
if (process.argv[1] === here && who !== undefined) alone(who, ...numbers.map(Number));
