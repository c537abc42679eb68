import type { ShaftDraft, Shedding } from "@drawcord/check";
import {
  draftOfRecipe,
  FileError,
  type Reading,
  shaftDraftOfCloth,
  withShedding,
  writeWif,
} from "@drawcord/files";
import { CliError } from "../error.js";

/** How a cloth becomes a draft for shafts. */
export interface WifMeans {
  /** The most shafts it may take; as many as it takes when not given. */
  readonly mostShafts: number | undefined;
  /** A lift plan when not given, or what the draft that was read has. */
  readonly shedding: Shedding["kind"] | undefined;
}

/**
 * The shaft draft of a file as WIF: of a recipe or a chart the one with the fewest shafts, and a draft as it is.
 * @throws {CliError} `too-many-shafts`
 */
export function expandedWif(reading: Reading, file: string, means: WifMeans): string {
  const { shedding, mostShafts } = means;
  const options = { ...(mostShafts && { mostShafts }), ...(shedding && { shedding }) };
  try {
    return writeWif(shaftDraft(reading, options));
  } catch (error) {
    if (!(error instanceof FileError && error.code === "too-many-shafts")) throw error;
    throw new CliError("too-many-shafts", `${file}: ${error.sentence}`, { file });
  }

  function shaftDraft(from: Reading, asked: typeof options): ShaftDraft {
    switch (from.kind) {
      case "recipe":
        return draftOfRecipe(from.recipe, asked);
      case "chart":
        return shaftDraftOfCloth(from.chart, asked);
      case "draft":
        return asIs(from.draft);
    }
  }

  function asIs(draft: ShaftDraft): ShaftDraft {
    if (mostShafts !== undefined && draft.shafts > mostShafts) {
      const sentence = `${file}: the draft has ${draft.shafts} shafts; ${mostShafts} are allowed`;
      throw new CliError("too-many-shafts", sentence, { file });
    }
    return shedding === undefined ? draft : withShedding(draft, shedding);
  }
}
