import type { Report } from "@drawcord/check";
import type { Block, Part, Text } from "../document/types.js";
import { faultsPicture, severitySign } from "../pictures/faults.js";
import { answer } from "./answer.js";
import type { Context } from "./context.js";
import { count, counted } from "./number.js";

/** What the checker found, or the clean bill, and what it measured. */
export function findingsPart({ woven, report, closeness }: Context): Part {
  const { findings, rules, waived } = report;
  const all = rules.ran.length + rules.skipped.length;
  const ran = `${counted(findings.length - waived, "finding")}, ${waived} waived, ${rules.ran.length} of ${all} rules ran`;
  const picture = faultsPicture(woven, findings, closeness);
  const blocks: Block[] = [
    {
      kind: "paragraph",
      tone: "lead",
      text: answer(
        findings.length === waived ? `A clean bill: ${ran}.` : `The checker found faults: ${ran}.`,
      ),
    },
    measured(report),
  ];
  if (picture !== undefined) blocks.push({ kind: "pictures", pictures: [picture] });
  if (findings.length > 0) blocks.push(list(report));
  for (const { rule, reason } of rules.skipped) {
    blocks.push({ kind: "paragraph", tone: "note", text: `The rule ${rule} did not run: ${reason}.` });
  }
  if (picture !== undefined) {
    blocks.push({
      kind: "paragraph",
      tone: "note",
      text: "Each kind of finding has its own shape as well as its own colour; the colours are those of M. Okabe and K. Ito, Color Universal Design, 2008.",
    });
  }
  return { name: "findings", title: "Checked", blocks };
}

function list({ findings }: Report): Block {
  return {
    kind: "table",
    id: "findings-list",
    caption: "The findings, the gravest first",
    columns: [
      { title: "No.", kind: "head" },
      { title: "Weight" },
      { title: "Rule" },
      { title: "What and where" },
    ],
    rows: findings.map(({ severity, rule, message, waived }, i): Text[] => [
      `${i + 1}`,
      answer(`${severitySign[severity]} ${severity}`),
      answer(rule),
      answer(waived === undefined ? message : `${message} (waived: ${waived})`),
    ]),
  };
}

function measured({ floats, cut, balance, integrity }: Report): Block {
  const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;
  const rows: [string, string][] = [
    ["Longest warp float, face", counted(floats.warpFace.longest, "pick")],
    ["Longest warp float, back", counted(floats.warpBack.longest, "pick")],
    ["Longest weft float, face", counted(floats.weftFace.longest, "end")],
    ["Longest weft float, back", counted(floats.weftBack.longest, "end")],
    ["Cuts sideways: cutting, open", `${count(cut.side.cutting)}, ${count(cut.side.open)}`],
    ["Cuts lengthways: cutting, open", `${count(cut.across.cutting)}, ${count(cut.across.open)}`],
    ["Warp on top of the face", percent(balance.warpFaceShare)],
    ["Drawn", percent(balance.drawnShare)],
    ["Hangs together", integrity.hangsTogether ? "yes" : `no, it falls into ${integrity.layers} layers`],
  ];
  return {
    kind: "table",
    id: "measured",
    caption: "What was measured",
    columns: [{ title: "What", kind: "head" }, { title: "Measured" }],
    rows: rows.map(([what, value]): Text[] => [what, answer(value)]),
  };
}
