/** What the text form of a cloth costs beside its check: a drawing may not be what an editor waits for. */
import { check } from "@drawcord/check";
import { toText } from "@drawcord/grid";
import { expand } from "@drawcord/units";
import { figuredDraft } from "./drafts.mjs";
import { line, within } from "./table.mjs";

/** The text may take as many times as long as the check. */
const MOST = 3;

/** The middle of many times that a piece of work takes, in ms. */
function middle(work) {
  const times = Array.from({ length: 60 }, () => {
    const before = performance.now();
    work();
    return performance.now() - before;
  });
  return times.sort((a, b) => a - b)[30];
}

/** The text of 400 ends by 1,500 picks, with rows unlike each other, beside the check of the same cloth. */
export function textBesideCheck() {
  const square = figuredDraft(1500);
  const units = 100;
  const draft = {
    ...square,
    threading: square.threading.slice(0, units),
    lifts: square.lifts.map((lift) => lift.filter((shaft) => shaft <= units)),
  };
  const { drawdown } = expand(draft);
  const text = middle(() => toText(drawdown));
  const whole = middle(() => check(draft));
  line("text form of 400 x 1,500", "median", "its check", "ratio");
  line(
    `${drawdown.columns} x ${drawdown.rows}`,
    `${text.toFixed(1)} ms`,
    `${whole.toFixed(1)} ms`,
    `${(text / whole).toFixed(2)}`,
    within(text / whole, MOST, "times"),
  );
}

if (process.argv[1] === import.meta.filename) textBesideCheck();
