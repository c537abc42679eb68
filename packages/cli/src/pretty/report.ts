import type { CheckedCloth } from "../checking/cloth.js";
import type { Look } from "../formats/format.js";
import { isSeen, isShown, type PlacedFinding, type RuleFindings, worstOfEach } from "../formats/worst.js";
import { mendWords } from "../mending/proposal.js";
import type { Paint } from "../paint.js";
import { oneLine } from "../printable.js";
import { prettyCause } from "./cause.js";
import { numbers } from "./numbers.js";
import { picture } from "./picture.js";

/** The report of one cloth as text, a paragraph for each thing said. */
export function reportText(cloth: CheckedCloth, look: Look, paint: Paint): string {
  const title = cloth.title === undefined ? "" : `  ${oneLine(cloth.title)}`;
  const parts = [
    `${paint.strong(oneLine(cloth.file))}${title}`,
    ...cloth.causes
      .filter((cause) => isShown(cause, look.least))
      .map((cause) => prettyCause(cause, cloth, look.width, paint)),
    ...(cloth.untried.length === 0 ? [] : [`not tried: ${cloth.untried.map(oneLine).join("; ")}`]),
    ...worstOfEach(cloth, look).flatMap((group) => groupText(group, cloth, look, paint)),
    ...(look.least === undefined ? numbersOfAll(cloth.report) : []),
  ];
  return `${parts.join("\n\n")}\n`;
}

/** The numbers of the cloth, of several pieces those of each under its name. */
function numbersOfAll(report: CheckedCloth["report"]): readonly string[] {
  if (report.pieces === undefined) return [numbers(report).join("\n")];
  return report.pieces.map((piece) => {
    const findings = report.findings.filter(({ piece: of }) => of === undefined || of === piece.name);
    return [oneLine(piece.name), ...numbers({ ...report, ...piece, findings })].join("\n");
  });
}

function groupText(group: RuleFindings, cloth: CheckedCloth, look: Look, paint: Paint): readonly string[] {
  const { more, rule, shown, waived } = group;
  return [
    ...shown.map((placed) => findingText(placed, cloth, look, paint)),
    ...(more === 0 ? [] : [`and ${more} more of ${rule}${waived ? ", waived" : ""}; --all shows them`]),
  ];
}

function findingText(
  { finding, place }: PlacedFinding,
  cloth: CheckedCloth,
  { all, width }: Look,
  paint: Paint,
): string {
  const { message, rule, severity, waived } = finding;
  const line = place === null ? "" : paint.faint(`  line ${place.line}`);
  if (waived !== undefined) {
    return paint.faint(`waived  ${rule}: ${oneLine(waived)}\n  ${oneLine(message)}`);
  }
  const mend = mendWords(cloth.mends, finding);
  // Beside causes, notes are told and not drawn.
  // The drawing at hand is of the first piece.
  const isAtHand = finding.piece === undefined || finding.piece === cloth.report.pieces?.[0]?.name;
  const isDrawn = isAtHand && (all || severity !== "note" || cloth.causes.length === 0);
  const drawn = isDrawn && isSeen(finding) ? picture(cloth.drawdown(), finding, width - 2, paint) : [];
  return [
    `${paint[severity](severity)}  ${rule}${line}`,
    `  ${oneLine(message)}`,
    ...(mend === undefined ? [] : [`  mend: ${oneLine(mend)}`]),
    ...(drawn.length === 0 ? [] : ["", ...drawn.map((text) => `  ${text}`)]),
  ].join("\n");
}
