/** The scripts that need a font of their own; everything else is set in the face it belongs to. */
export type Script = "latin" | "hebrew" | "arabic" | "emoji";

export interface FontRun {
  readonly text: string;
  readonly script: Script;
}

const HEBREW = /\p{Script=Hebrew}/u;
const ARABIC = /\p{Script=Arabic}/u;
/** Pictographs, and what joins, tints or varies them. */
const EMOJI = /\p{Emoji_Presentation}|\p{Extended_Pictographic}|\p{Emoji_Modifier}/u;
const JOINS = /[\u200d\ufe0f\ufe0e\u20e3]|\p{Mn}/u;
/** Signs that Unicode counts among the pictographs but that text faces hold. */
const TEXT_SIGNS = /[©®™↔↕‼⁉▪▫▶◀◻◼◽◾]/u;

/**
 * Text cut where its font changes. Blanks and marks between two runs stay with the run before them.
 * @example fontRuns("Moth 🦋").map((run) => run.script) // ["latin", "emoji"]
 */
export function fontRuns(text: string): FontRun[] {
  const runs: { text: string; script: Script }[] = [];
  for (const char of text) {
    const last = runs.at(-1);
    const script = last !== undefined && JOINS.test(char) ? last.script : scriptOf(char);
    if (last !== undefined && last.script === script) last.text += char;
    else runs.push({ text: char, script });
  }
  return runs;
}

function scriptOf(char: string): Script {
  if (char < "\u0590") return "latin";
  if (HEBREW.test(char)) return "hebrew";
  if (ARABIC.test(char)) return "arabic";
  return EMOJI.test(char) && !TEXT_SIGNS.test(char) ? "emoji" : "latin";
}
