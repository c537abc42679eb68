/**
 * A page of the guide as a script: what it writes into files, what it runs, and what it shows as the output.
 *
 *     <!-- file: first.recipe.yaml -->   the fence that follows is written to that file
 *     ```sh                              each line is run
 *     ```text                            what the command above prints; `…` on a line stands for lines left out
 */

/** One step of a page, in its order. */
export type GuideStep =
  | { readonly step: "write"; readonly file: string; readonly text: string }
  | { readonly step: "run"; readonly commands: readonly string[]; readonly shown?: Shown };

/** The output that a page shows, and where it stands in the page. */
interface Shown {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const FENCE = /(?:<!-- file: (?<file>\S+) -->\n+)?^```(?<language>\w+)[^\n]*\n(?<text>[\s\S]*?)^```$/gm;

/**
 * The steps of a page.
 * @param markdown the page
 */
export function guideSteps(markdown: string): readonly GuideStep[] {
  const steps: GuideStep[] = [];
  for (const { 0: fence, index, groups = {} } of markdown.matchAll(FENCE)) {
    const { file, language, text = "" } = groups;
    if (file !== undefined) steps.push({ step: "write", file, text });
    else if (language === "sh") steps.push({ step: "run", commands: text.trim().split("\n") });
    else if (language === "text") {
      const last = steps.at(-1);
      if (last?.step !== "run") continue;
      const from = index + fence.indexOf("\n", fence.indexOf("```text")) + 1;
      steps[steps.length - 1] = { ...last, shown: { text, from, to: from + text.length } };
    }
  }
  return steps;
}

/** A line that stands for lines left out. */
const LEFT_OUT = "…";

/**
 * The output as the page would show it: as many lines at its head and foot as it shows now, those between left out.
 * @param shown as the page has it
 * @param output as the command prints it now
 */
export function shownAnew(shown: string, output: string): string {
  const parts = shown.split(`${LEFT_OUT}\n`);
  if (parts.length === 1) return output;
  const lines = output.split("\n").slice(0, -1);
  const head = parts[0]!.split("\n").length - 1;
  const foot = parts.at(-1)!.split("\n").length - 1;
  if (head + foot >= lines.length) return output;
  return [...lines.slice(0, head), LEFT_OUT, ...lines.slice(lines.length - foot), ""].join("\n");
}
