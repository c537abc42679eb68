import type { Reason } from "./checking/cloth.js";

/** What an error may bear that was thrown for a text. */
interface OfText {
  readonly place?: Reason["place"];
  /** All that is wrong with the text, this among it. */
  readonly problems?: readonly Problem[];
}

type Problem = NonNullable<Reason["place"]> & { readonly file: string; readonly sentence: string };

/** Why something failed: every problem of a text that cannot be read, else the error's own sentence. */
export function reasonLines(error: unknown): readonly Reason[] {
  if (!(error instanceof Error)) return [{ message: String(error) }];
  const { place, problems } = error as Error & OfText;
  return (
    problems?.map(({ column, end, file, line, offset, sentence }) => ({
      message: `${file}:${line}:${column}: ${sentence}`,
      place: { line, column, offset, end },
    })) ?? [{ message: error.message, ...(place && { place }) }]
  );
}
