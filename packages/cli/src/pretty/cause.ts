import { many } from "@drawcord/base";
import type { PlacedCause } from "@drawcord/review";
import { sayEdit } from "@drawcord/units";
import type { CheckedCloth } from "../checking/cloth.js";
import { sayExplained } from "../formats/causes.js";
import type { Paint } from "../paint.js";
import { oneLine } from "../printable.js";
import { wrapText } from "../text.js";
import { beforeAndAfter } from "./before-and-after.js";

/** Cloths of more interlacements are not worked out again for the sake of a picture. */
const MOST_DRAWN = 2 ** 24;

/** One cause: what was written, why it is taken for a slip, what to do, what it accounts for, and the cloth before and after. */
export function prettyCause(cause: PlacedCause, cloth: CheckedCloth, width: number, paint: Paint): string {
  const { changes, line, message, rivals, severity, sure, why } = cause;
  const place = line === undefined ? "" : paint.faint(`  line ${line}`);
  const paragraph = (text: string) =>
    wrapText(oneLine(text), Math.max(20, width - 2)).map((part) => `  ${part}`);
  if (cause.waived !== undefined)
    return paint.faint(`waived  slip: ${oneLine(cause.waived)}\n  ${oneLine(message)}`);
  const explained = sayExplained(cause, cloth);
  return [
    `${paint[severity](severity)}  cause${place}`,
    ...paragraph(`${message}; ${why}`),
    ...paragraph(`${sure ? "mend" : "perhaps"}: ${sayEdit(changes)}`),
    ...(rivals.length === 0
      ? []
      : paragraph(
          `or: ${rivals
            .slice(0, 3)
            .map((edit) => sayEdit(edit))
            .join("; or: ")}${rivals.length > 3 ? `; or ${many(rivals.length - 3, "other edit")}` : ""}`,
        )),
    ...(explained === undefined ? [] : paragraph(`accounts for ${explained}`)),
    ...picture(cause, cloth, width, paint),
  ].join("\n");
}

function picture(
  { changes, piece }: PlacedCause,
  cloth: CheckedCloth,
  width: number,
  paint: Paint,
): readonly string[] {
  const { ends, picks } = cloth.report.size;
  if (changes.every(({ change }) => change === "number") || ends * picks > MOST_DRAWN) return [];
  const before = piece === undefined ? cloth.drawdown() : cloth.changed([], piece);
  const lines = beforeAndAfter(before, cloth.changed(changes, piece), width - 2, paint);
  return lines.length === 0 ? [] : ["", ...lines.map((text) => `  ${text}`)];
}
