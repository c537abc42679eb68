import type { Finding, Report } from "@drawcord/check";
import type { Block, Text } from "@drawcord/page";
import type { Review } from "@drawcord/review";
import type { SheetPart } from "../part-names.js";
import { faultsPicture, type NumberedFinding, severitySign } from "../pictures/faults.js";
import { causeText } from "./checked.js";
import type { Context } from "./context.js";
import { count, counted } from "./number.js";

/** What the checker found, or the clean bill, and what it measured. */
export function findingsPart({ woven, report, closeness }: Context): SheetPart {
  const { findings, rules, waived } = report;
  const all = rules.ran.length + rules.skipped.length;
  const ran = `${counted(findings.length - waived, "finding")}, ${waived} waived, ${rules.ran.length} of ${all} rules ran`;
  const numbered = numberedFindings(findings);
  const picture = faultsPicture(woven, numbered, closeness);
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: findings.length === waived ? `A clean bill: ${ran}.` : `The checker found faults: ${ran}.`,
    },
    ...causesTold(report),
    measured(report),
  ];
  if (picture !== undefined) blocks.push({ kind: "pictures", pictures: [picture] });
  if (findings.length > 0) blocks.push(list(numbered));
  const left = numbered.filter(({ number }) => number === undefined);
  const more = [...new Set(left.map(({ finding }) => finding.rule))].map(
    (rule) => `${count(left.filter(({ finding }) => finding.rule === rule).length)} of the rule ${rule}`,
  );
  if (more.length > 0) {
    const text = `The list stops at ${MOST_OF_A_RULE} findings of a rule. There are more like them, marked without a number where there is room: ${more.join(", ")}.`;
    blocks.push({ kind: "paragraph", tone: "note", text });
  }
  const still = rules.skipped.map(({ rule, reason }) => `The rule ${rule} did not run: ${reason}.`);
  if (still.length > 0) blocks.push({ kind: "paragraph", tone: "note", text: still.join(" ") });
  if (picture !== undefined) {
    blocks.push({
      kind: "paragraph",
      tone: "note",
      text: "Each kind of finding has its own shape as well as its own colour; the colours are those of M. Okabe and K. Ito, Color Universal Design, 2008.",
    });
  }
  return { name: "findings", title: "Checked", blocks };
}

/** What was written wrong, told before what follows from it. */
function causesTold({ causes }: Review): Block[] {
  return causes.map((cause): Block => ({ kind: "paragraph", tone: "caution", text: causeText(cause) }));
}

/** Findings of one rule that are listed; past that a reader has seen what is wrong. */
const MOST_OF_A_RULE = 12;

/** Numbers for the findings that are listed, in their order. */
function numberedFindings(findings: readonly Finding[]): NumberedFinding[] {
  const listed = new Map<string, number>();
  let number = 0;
  return findings.map((finding) => {
    const before = listed.get(finding.rule) ?? 0;
    listed.set(finding.rule, before + 1);
    if (before >= MOST_OF_A_RULE) return { finding };
    number++;
    return { finding, number };
  });
}

function list(findings: readonly NumberedFinding[]): Block {
  return {
    kind: "table",
    id: "findings-list",
    caption: "The findings, the gravest first",
    columns: [
      { title: "No.", kind: "head" },
      { title: "Level" },
      { title: "Rule" },
      { title: "What and where" },
    ],
    rows: findings.flatMap(({ finding: { severity, rule, message, waived }, number }): Text[][] =>
      number === undefined
        ? []
        : [
            [
              `${number}`,
              `${severitySign[severity]}\u00a0${severity}`,
              rule,
              waived === undefined ? message : `${message} (waived: ${waived})`,
            ],
          ],
    ),
  };
}

function measured({ floats, cut, balance, integrity }: Report): Block {
  const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;
  const rows: [string, string][] = [
    ["Longest warp float, face", counted(floats.warpFace.longest, "pick")],
    ["Longest warp float, back", counted(floats.warpBack.longest, "pick")],
    ["Longest weft float, face", counted(floats.weftFace.longest, "end")],
    ["Longest weft float, back", counted(floats.weftBack.longest, "end")],
    [
      "Side edges of the figure (between ends): cut, open",
      `${count(cut.side.cutting)}, ${count(cut.side.open)}`,
    ],
    [
      "Top and bottom edges (between picks): cut, open",
      `${count(cut.across.cutting)}, ${count(cut.across.open)}`,
    ],
    ["Warp showing on the face", percent(balance.warpFaceShare)],
    ["Drawn", percent(balance.drawnShare)],
    ["Holds together", integrity.hangsTogether ? "yes" : `no, it falls into ${integrity.layers} layers`],
  ];
  return {
    kind: "table",
    id: "measured",
    caption: "What was measured",
    columns: [{ title: "What", kind: "head" }, { title: "Measured" }],
    rows: rows.map(([what, value]): Text[] => [what, value]),
    narrow: true,
  };
}
