/**
 * Measures the checker and prints a table. Times are of this machine in this run; read the ratios.
 * `node check.mjs alone SIDE FAULTS ROWS` measures one cloth alone, in a process of its own.
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { check } from "@drawcord/check";
import { command, startUp } from "./command.mjs";
import { figuredDraft } from "./drafts.mjs";
import { detection } from "./slips.mjs";
import { slowCheck } from "./slow-twin.mjs";

/** The best of some runs, in ms of the processor's time, which a busy machine disturbs least. */
function cost(runs, work) {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run++) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1000);
  }
  return best;
}

function megabytes() {
  return process.resourceUsage().maxRSS / 1024;
}

/** One cloth in a process of its own: what it costs, and the most memory it takes beyond Node and the draft. */
function alone(side, faults, rows) {
  const draft = figuredDraft(side, { faults, ...(rows > 0 && { rows }) });
  const own = megabytes();
  const start = performance.now();
  const { findings } = check(draft);
  const first = performance.now() - start;
  const memory = megabytes() - own;
  console.log(
    JSON.stringify({ first, memory, findings: findings.length, best: cost(3, () => check(draft)) }),
  );
}

function measure(side, { faults = 0, rows = 0 } = {}) {
  const here = fileURLToPath(import.meta.url);
  const { stdout, status, stderr } = spawnSync(
    process.execPath,
    [here, "alone", side, faults, rows].map(String),
  );
  if (status !== 0) throw new Error(`a cloth of ${side} x ${side} could not be measured: ${stderr}`);
  return JSON.parse(String(stdout));
}

function line(...cells) {
  console.log(
    cells.map((cell, i) => (i === 0 ? String(cell).padEnd(52) : String(cell).padStart(14))).join(""),
  );
}

const within = (measured, most, unit) => `${measured <= most ? "within" : "OVER"} ${most} ${unit}`;
const ms = (time) => `${time.toFixed(0)} ms`;

/** Refuses to go on when the words and the bytes disagree. */
function agree() {
  for (const side of [40, 100, 132, 400]) {
    const draft = figuredDraft(side);
    const slow = slowCheck(draft);
    const { floats, cut, balance, integrity } = check(draft);
    const fast = { floats, cut, balance, layers: integrity.layers };
    if (JSON.stringify(fast) !== JSON.stringify(slow))
      throw new Error(`the slow twin disagrees at ${side} x ${side}`);
  }
}

function main() {
  agree();
  line("expand and check in full, all rows unlike", "processor", "first run", "memory", "findings");
  const large = measure(10_000);
  line("10,000 x 10,000", ms(large.best), ms(large.first), `${large.memory.toFixed(0)} MB`, large.findings);
  const faulty = measure(10_000, { faults: 10_000 });
  line(
    "10,000 x 10,000, faulty",
    ms(faulty.best),
    ms(faulty.first),
    `${faulty.memory.toFixed(0)} MB`,
    faulty.findings,
  );
  const draft = figuredDraft(10_000);
  const slow = cost(1, () => slowCheck(draft));
  line(
    "10,000 x 10,000, a byte for each interlacement",
    ms(slow),
    "",
    `${(slow / large.best).toFixed(1)} times`,
  );

  console.log();
  line("growth", "unlike rows", "100 unlike rows");
  for (const side of [1000, 2000, 4000, 8000]) {
    line(`${side} x ${side}`, ms(measure(side).best), ms(measure(side, { rows: 100 }).best));
  }

  console.log();
  line("the command", "", "target");
  const { files, seconds } = command(1000);
  line(`check ${files} recipes of 400 x 400`, `${seconds.toFixed(1)} s`, within(seconds, 10, "s"));
  line("start-up beyond Node's own");
  for (const { file, ms: time } of startUp(15)) line(`  check ${file}`, ms(time), within(time, 150, "ms"));

  console.log();
  line("slips planted one at a time", "planted", "found", "rate", "mended", "symmetric");
  for (const { kind, planted, found, mended, symmetric } of detection(200)) {
    line(kind, planted, found, `${((100 * found) / planted).toFixed(1)} %`, mended, symmetric);
  }
  console.log(
    "found: where it was planted; symmetric: as good a draft as before, and not counted as planted",
  );
}

const [mode, side, faults, rows] = process.argv.slice(2);
if (mode === "alone") alone(Number(side), Number(faults), Number(rows));
else main();
