// Runs scripts of the workspace, two at a time, as `npm run` would one after another: each says what it has to say when it
// has ended, and where one fails the whole has failed.
import { spawn } from "node:child_process";
import process from "node:process";

const LANES = 2;
const waiting = process.argv.slice(2);

/** One script to its end, what it says all at once. */
function run(script) {
  return new Promise((resolve) => {
    // Of npm, Windows has a file of commands, which only a shell starts.
    const child = spawn(`npm run -s ${script}`, { shell: true, stdio: ["ignore", "pipe", "pipe"] });
    const said = [];
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk) => said.push(chunk));
    child.on("close", (status) => {
      process.stdout.write(Buffer.concat(said));
      if (status !== 0) {
        console.error(`"npm run ${script}" failed`);
        process.exitCode = 1;
      }
      resolve();
    });
  });
}

async function lane() {
  for (let script = waiting.shift(); script !== undefined; script = waiting.shift()) await run(script);
}

await Promise.all(Array.from({ length: LANES }, lane));
