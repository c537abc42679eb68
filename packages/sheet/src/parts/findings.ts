import type { Finding, Report } from "@drawcord/check";
import type { Block, Picture, Table, Text } from "@drawcord/page";
import type { Review } from "@drawcord/review";
import { causeText } from "../checking/cause.js";
import { resultText } from "../checking/result.js";
import type { SheetPart } from "../part-names.js";
import { faultsPicture, type NumberedFinding, severitySign } from "../pictures/faults.js";
import type { Context } from "./context.js";
import { spacedCount, spacedNumber } from "./number.js";

/** What the checker found, or the clean bill, and what it measured; of several pieces of each. */
export function findingsPart({ report }: Context, all: readonly Context[]): SheetPart {
  const pieces = all.map(({ recipe, woven, closeness }) => ({
    name: recipe.pieces[0]!.name,
    woven,
    closeness,
  }));
  return findingsTogether(report, pieces);
}

/** A cloth that was checked, and what it is called. */
interface CheckedCloth extends Pick<Context, "woven" | "closeness"> {
  readonly name: string;
}

/** What the checker found of cloths that it looked at together. */
export function findingsTogether(report: Review, cloths: readonly CheckedCloth[]): SheetPart {
  const { findings } = report;
  const numbered = numberedFindings(findings);
  const pictures = picturesOf(cloths, numbered);
  const isClean = [...findings, ...report.causes].every(({ waived }) => waived !== undefined);
  const result = `${resultText(report)}.`;
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: isClean ? `A clean bill: ${result}` : `The checker found faults: ${result}`,
    },
    ...causesTold(report),
    ...measured(report),
  ];
  if (pictures.length > 0) {
    blocks.push({
      kind: "paragraph",
      tone: "note",
      text: "Each kind of finding has its own shape as well as its own colour; the colours are those of M. Okabe and K. Ito, Color Universal Design, 2008.",
    });
    blocks.push({ kind: "pictures", pictures });
  }
  if (findings.length > 0) blocks.push(list(numbered));
  const left = numbered.filter(({ number }) => number === undefined);
  const more = [...new Set(left.map(({ finding }) => finding.rule))].map(
    (rule) =>
      `${spacedNumber(left.filter(({ finding }) => finding.rule === rule).length)} of the rule ${rule}`,
  );
  if (more.length > 0) {
    const text = `The list stops at ${MOST_OF_A_RULE} findings of a rule. There are more like them, marked without a number where there is room: ${more.join(", ")}.`;
    blocks.push({ kind: "paragraph", tone: "note", text });
  }
  return { name: "findings", title: "Checked", blocks };
}

/** The findings on the figure of each piece that has some; those of all pieces on the first. */
function picturesOf(all: readonly CheckedCloth[], numbered: readonly NumberedFinding[]): Picture[] {
  return all.flatMap(({ name, woven, closeness }, i) => {
    const own = numbered.filter(({ finding: { piece } }) => (piece === undefined ? i === 0 : piece === name));
    const picture = faultsPicture(woven, own, closeness);
    if (picture === undefined) return [];
    if (all.length === 1) return [picture];
    return [{ ...picture, id: `${picture.id}-piece-${i + 1}`, caption: `${name}: ${picture.caption}` }];
  });
}

/** What was written wrong, told before what follows from it. */
function causesTold(report: Review): Block[] {
  return [
    ...report.causes.map(
      (cause): Block => ({ kind: "paragraph", tone: "caution", text: causeText(cause, report) }),
    ),
    ...(report.untried.length === 0
      ? []
      : [
          {
            kind: "paragraph",
            tone: "note",
            text: `Not tried: ${report.untried.join("; ")}.`,
          } as const,
        ]),
  ];
}

type Measured = Pick<Report, "floats" | "cut" | "balance" | "integrity">;

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

/** What was measured, a column a piece. */
function measured(report: Review): Block[] {
  const pieces = report.pieces ?? [{ name: "Measured", ...report }];
  const columns = pieces.map((piece) => measuredOf(piece));
  const table: Table = {
    kind: "table",
    id: "measured",
    caption: "What was measured",
    columns: [{ title: "What", kind: "head" }, ...pieces.map(({ name }) => ({ title: name }))],
    rows: columns[0]!.map(([what], row): Text[] => [what, ...columns.map((column) => column[row]![1])]),
    narrow: true,
  };
  return [table];
}

function measuredOf({ floats, cut, balance, integrity }: Measured): [string, string][] {
  const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;
  return [
    ["Longest warp float, face", spacedCount(floats.warpFace.longest, "pick")],
    ["Longest warp float, back", spacedCount(floats.warpBack.longest, "pick")],
    ["Longest weft float, face", spacedCount(floats.weftFace.longest, "end")],
    ["Longest weft float, back", spacedCount(floats.weftBack.longest, "end")],
    [
      "Side edges of the figure (between ends): cut, open",
      `${spacedNumber(cut.side.cutting)}, ${spacedNumber(cut.side.open)}`,
    ],
    [
      "Top and bottom edges (between picks): cut, open",
      `${spacedNumber(cut.across.cutting)}, ${spacedNumber(cut.across.open)}`,
    ],
    ["Warp showing on the face", percent(balance.warpFaceShare)],
    ["Drawn, selvedges left out", percent(balance.drawnShare)],
    ["Holds together", integrity.hangsTogether ? "yes" : `no, it falls into ${integrity.layers} layers`],
  ];
}
