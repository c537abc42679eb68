import type { Document } from "@drawcord/page";
import type { Io } from "../io.js";
import { oneLine } from "../printable.js";
import { endingOf } from "./sheet-files.js";

/** As many letters as are named one by one. */
const NAMED = 20;

/** Says on `stderr` which letters a PDF or PNG shows as empty boxes, for its fonts do not have them. */
export async function sayMissingLetters(
  sheet: Document,
  output: string,
  io: Pick<Io, "stderr">,
): Promise<void> {
  const ending = endingOf(output);
  if (ending !== ".pdf" && ending !== ".png") return;
  const { missingLetters } = await import("@drawcord/page/print");
  const letters = await missingLetters(sheet);
  if (letters.length === 0) return;
  const more = letters.length > NAMED ? ` and ${letters.length - NAMED} more` : "";
  const which = `${letters.slice(0, NAMED).join(" ")}${more}`;
  await io.stderr.write(
    `${oneLine(`${output}: its fonts have no ${which}; an empty box stands for each; .html, .svg and .md keep them`)}\n`,
  );
}
