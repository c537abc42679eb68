/** Measures the command in whole processes, and prints a table: `npm run bench:commands`, on a machine with nothing else to do. */
import { sheetTime, startUp } from "./command.mjs";
import { proposing } from "./propose.mjs";
import { line, ms, within } from "./table.mjs";

const RUNS = 15;

line("start-up beyond Node's own", "", "target");
for (const { file, ms: time } of startUp(RUNS)) {
  line(`  check ${file}`, ms(time), within(time, file.includes("faulty") ? 200 : 150, "ms"));
}

line("the sheet of the runner", "", "target");
for (const [format, most] of [
  ["html", 1000],
  ["pdf", 2000],
]) {
  const { ms: time, ratio } = sheetTime(format, 5);
  line(`  ${format}, ${ratio.toFixed(1)} times Node that does nothing`, ms(time), within(time, most, "ms"));
}

line("mends of 1600 rows with one slip", "", "target");
const { check, propose, ratio } = proposing(1600, 5);
line(
  `  proposed in ${ms(propose)}, checked in ${ms(check)}`,
  `${ratio.toFixed(2)} times`,
  within(ratio, 1.5, "times"),
);
