import { DrawcordError } from "@drawcord/base";
import type { Reason } from "./checking/cloth.js";

/** What an error may bear that was thrown for a text. */
interface OfText {
  readonly code?: string;
  readonly place?: Reason["place"];
  /** All that is wrong with the text, this among it. */
  readonly problems?: readonly Problem[];
}

type Problem = NonNullable<Reason["place"]> & {
  readonly code: string;
  readonly file: string;
  readonly sentence: string;
};

/** Why something failed: every problem of a text that cannot be read, else the error's own sentence. */
export function reasonLines(error: unknown): readonly Reason[] {
  if (!(error instanceof Error)) return [{ message: String(error) }];
  const { code, place, problems } = error as Error & OfText;
  return (
    problems?.map(({ code: its, column, end, file, line, offset, sentence }) => ({
      message: `${file}:${line}:${column}: ${sentence}`,
      code: its,
      place: { line, column, offset, end },
    })) ?? [
      {
        message: error.message,
        ...(error instanceof DrawcordError && code && { code }),
        ...(place && { place }),
      },
    ]
  );
}
