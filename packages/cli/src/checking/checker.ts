import type { SearchBounds } from "@drawcord/causes";
import type { RuleName } from "@drawcord/check";
import type { Format, Look } from "../formats/format.js";
import { type FormatName, loadFormat } from "../formats/formats.js";
import type { InputFile } from "../inputs.js";
import { notUsed } from "../plain/ignored.js";
import { reasonLines } from "../reasons.js";
import type { CachePlace } from "./cache.js";
import { checkFile, clothOf } from "./check-file.js";
import type { Failure } from "./cloth.js";
import type { KeptCheck } from "./kept.js";
import { type Counts, countsOf } from "./tally.js";

/** How every file of a run is checked and told. Plain data, so that it can be handed to a worker. */
export interface CheckerSettings {
  /** The folder that relative names start from. */
  readonly cwd: string;
  readonly format: FormatName;
  readonly look: Look;
  /** The rules asked for. */
  readonly rules: readonly RuleName[];
  /** Whether mends are to be proposed. */
  readonly propose: boolean;
  /** For how many seconds the causes of each recipe are looked for, 0 for not at all. */
  readonly seconds?: number;
  readonly cache?: CachePlace;
}

/** What came of one file: its piece of the output, and what counts of it or why it could not be used. */
export interface Outcome {
  readonly piece: string;
  readonly counts?: Counts;
  readonly failure?: Failure;
  /** What there is to say on standard error of a file that could be used. */
  readonly remark?: string;
}

/** Checks one file; never rejects, for one bad file must not stop the rest. */
export type Checker = (input: InputFile) => Promise<Outcome>;

/**
 * A checker at work in this thread.
 * @param progress told how far a search in a file has come
 */
export async function checkerFor(
  settings: CheckerSettings,
  progress?: SearchBounds["progress"],
): Promise<Checker> {
  const format = await loadFormat(settings.format);
  const keep = await keeper(settings.cache);
  return async (input) => {
    try {
      const bytes = await input.read();
      const found = await keep(bytes, () => checkFile(bytes, input.name, settings, progress));
      const cloth = await clothOf(found, bytes, input.name);
      const { ignored = [], report } = found;
      return {
        piece: format.cloth(cloth, settings.look),
        counts: countsOf(report, cloth.causes),
        ...(ignored.length === 0 ? {} : { remark: notUsed(input.name, ignored) }),
      };
    } catch (error) {
      return failed(input.name, error, format);
    }
  };
}

/** What came of a file that could not be used. */
export function failed(file: string, error: unknown, format: Pick<Format, "failure">): Outcome {
  const failure: Failure = { file, reasons: reasonLines(error) };
  return { piece: format.failure?.(failure) ?? "", failure };
}

type Keeper = (content: Uint8Array, make: () => Promise<KeptCheck>) => Promise<KeptCheck>;

async function keeper(cache: CachePlace | undefined): Promise<Keeper> {
  if (cache === undefined) return (_, make) => make();
  const { kept } = await import("./cache.js");
  return (content, make) => kept(cache, content, make);
}
