/** Measures the checker and prints tables. Times are of this machine in this run; read the ratios. */
import { growth, largestCloth } from "./cloths.mjs";
import { command } from "./command.mjs";
import { line, within } from "./table.mjs";
import { textBesideCheck } from "./text.mjs";

function main() {
  largestCloth();
  console.log();
  growth();
  console.log();
  textBesideCheck();

  console.log();
  line("the command", "", "target");
  const { files, seconds } = command(1000);
  line(`check ${files} recipes of 400 x 400`, `${seconds.toFixed(1)} s`, within(seconds, 10, "s"));
}

main();
