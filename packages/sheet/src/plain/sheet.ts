import type { ShaftDraft } from "@drawcord/check";
import { WASHING_CAUTION } from "@drawcord/yarn";
import { letterOf } from "../card/letters.js";
import { SheetError } from "../error.js";
import { type PartName, partNames, type Sheet, type SheetPart, shortParts } from "../part-names.js";
import { checkedText, errorBlocks } from "../parts/checked.js";
import type { SheetOptions } from "../parts/context.js";
import { findingsTogether } from "../parts/findings.js";
import { spacedCount } from "../parts/number.js";
import { warpingOf } from "../parts/warping.js";
import { clothPictures } from "../pictures/cloth.js";
import { type PlainContext, plainContext } from "./context.js";
import { drawdownPart } from "./drawdown.js";
import { numbersPart } from "./numbers.js";
import { plainThreadingPart } from "./threading.js";
import { tieUpPart } from "./tie-up.js";
import { treadlingPart } from "./treadling.js";

/** Longer drafts fill more paper than a weaver can turn over. */
const MOST_THREADS = 20_000;

/**
 * The sheet of a plain draft as data: the cloth, its yarns, the warping, the threading, the tie-up, the treadling card and
 * whether it was checked; a draft has no chart, and no numbers of a project.
 * @param draft a draft as `soundWif` gives it
 * @param options which parts, in which units, read which way, and what the drawdown shows
 * @throws {SheetError} `too-long` for a draft that no paper holds, `no-cloth` for one without ends or picks
 * @example makeDraftSheet(shaftDraft).parts[0].name // "cloth"
 */
export function makeDraftSheet(draft: ShaftDraft, options: SheetOptions = {}): Sheet {
  const { parts = shortParts } = options;
  const ends = draft.threading.length;
  const { shedding } = draft;
  const picks = shedding.kind === "tie-up" ? shedding.treadling.length : shedding.liftPlan.length;
  if (Math.max(ends, picks) > MOST_THREADS) {
    throw new SheetError(
      "too-long",
      `the draft has ${ends} ends and ${picks} picks; a sheet holds up to ${MOST_THREADS} of each`,
      { ends, picks, most: MOST_THREADS },
    );
  }
  if (ends === 0 || picks === 0) {
    throw new SheetError(
      "no-cloth",
      `the draft has ${spacedCount(ends, "end")} and ${spacedCount(picks, "pick")}; a cloth has at least one of each`,
      { ends, picks },
    );
  }
  const context = plainContext(draft, options);
  return {
    title: draft.title ?? "A draft without a name",
    subtitle: [spacedCount(ends, "end"), spacedCount(picks, "pick"), spacedCount(draft.shafts, "shaft")].join(
      ", ",
    ),
    parts: partNames
      .filter((name) => parts.includes(name))
      .flatMap((name) => builders[name]?.(context) ?? [])
      .filter(({ blocks }) => blocks.length > 0),
  };
}

const builders: Readonly<Partial<Record<PartName, (context: PlainContext) => SheetPart>>> = {
  cloth: clothPart,
  project: numbersPart,
  warping: ({ woven, look, draft }) =>
    warpingOf(woven.ends, undefined, draft.warp.colours === undefined ? [] : look.ends.map(letterOf)),
  threading: plainThreadingPart,
  ground: tieUpPart,
  lifts: treadlingPart,
  cautions: finishingPart,
  corner: drawdownPart,
  findings: ({ report, woven, closeness }) => findingsTogether(report, [{ name: "", woven, closeness }]),
};

function clothPart({ woven, look, closeness, report }: PlainContext): SheetPart {
  const { repeat } = woven;
  const words = [
    repeat.across > 1 ? `${repeat.across} times across` : "not across",
    repeat.along > 1 ? `${repeat.along} times along` : "not along",
  ];
  return {
    name: "cloth",
    title: "The cloth",
    blocks: [
      ...errorBlocks(report),
      {
        kind: "paragraph",
        tone: "lead",
        text:
          repeat.across > 1 || repeat.along > 1
            ? `The draft repeats: ${words.join("; ")}.`
            : "The draft does not repeat: one repeat is the whole of it.",
      },
      ...look.chosen.map((text) => ({ kind: "paragraph", tone: "note", text }) as const),
      ...clothPictures(woven, look.drawn, closeness).map(
        (pictures) => ({ kind: "pictures", pictures }) as const,
      ),
    ],
  };
}

function finishingPart({ report }: PlainContext): SheetPart {
  return {
    name: "cautions",
    title: "Finishing, and what to look out for",
    blocks: [
      {
        kind: "paragraph",
        tone: "lead",
        text: "Look the cloth over on the loom, and mend what floats; let the tension off, and then cut it off.",
      },
      {
        kind: "paragraph",
        tone: "caution",
        text: `The draft says nothing of shrinkage: weave a sample, wash it as the cloth will be washed, and measure before you cut. ${WASHING_CAUTION}`,
      },
      { kind: "paragraph", text: checkedText(report) },
    ],
  };
}
