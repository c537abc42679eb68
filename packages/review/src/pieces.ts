/** One report of all the pieces on a warp: what is the same in all is told once, and anything else with its piece. */
import type { Range } from "@drawcord/base";
import { type AnyRule, type Finding, type Report, rules } from "@drawcord/check";
import type { PlacedCause } from "./causes.js";

/** The numbers of one piece of several. */
export interface PieceNumbers extends Pick<Report, "size" | "floats" | "cut" | "balance" | "integrity"> {
  /** What the piece is called. */
  readonly name: string;
}

/** The report of one piece, with the place of each finding. */
interface PieceReview extends Report {
  readonly places: readonly (Range | null)[];
  readonly causes: readonly PlacedCause[];
  readonly untried: readonly string[];
}

/** What a rule says of the pieces on a warp. */
const ofPieces: ReadonlyMap<string, AnyRule["ofPieces"]> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ rules.map((rule: AnyRule): [string, AnyRule["ofPieces"]] => [rule.name, rule.ofPieces]),
);

const WEIGHT = { error: 0, warning: 1, note: 2 } as const;

interface Told {
  readonly finding: Finding;
  readonly place: Range | null;
  /** The piece, from 0; undefined where all have it. */
  readonly piece: number | undefined;
  readonly cause: PlacedCause | undefined;
}

/**
 * The reports of several pieces as one. Its own numbers are those of the first piece.
 * @param reviews the report of each piece, in weaving order
 * @param names the names of the pieces
 */
export function joinedReviews<R extends PieceReview>(
  reviews: readonly R[],
  names: readonly string[],
): R & { readonly pieces: readonly PieceNumbers[] } {
  const first = reviews[0]!;
  const seenIn = reviews.map(({ findings }) => new Set(findings.map(keyOf)));
  const inAll = (finding: Finding) => seenIn.every((seen) => seen.has(keyOf(finding)));
  const told: Told[] = [];
  reviews.forEach((review, piece) => {
    const causeOf = new Map(review.causes.flatMap((cause) => cause.explains.map((i) => [i, cause] as const)));
    review.findings.forEach((finding, i) => {
      const everywhere = inAll(finding);
      const pieces = ofPieces.get(finding.rule);
      const once = everywhere || pieces === "first";
      if ((piece > 0 && once) || (!everywhere && pieces === "all")) return;
      const of = once ? undefined : piece;
      told.push({ finding, place: review.places[i] ?? null, piece: of, cause: causeOf.get(i) });
    });
  });
  // The sort is stable: findings of one weight stay in weaving order.
  told.sort((a, b) => WEIGHT[a.finding.severity] - WEIGHT[b.finding.severity]);
  const findings = told.map(
    ({ finding, piece }): Finding =>
      piece === undefined
        ? finding
        : { ...finding, piece: names[piece]!, message: `${names[piece]}: ${finding.message}` },
  );
  const counted = findings.filter(({ waived }) => waived === undefined);
  const summary = { error: 0, warning: 0, note: 0 };
  for (const { severity } of counted) summary[severity]++;
  const causes = reviews.flatMap((review, piece) =>
    review.causes
      // A slip of the warp is one slip, in however many pieces it shows.
      .filter(
        (cause) => !reviews.slice(0, piece).some((before) => before.causes.some((one) => isSame(one, cause))),
      )
      .map((cause) => ({
        ...cause,
        explains: told.flatMap((one, i) => (one.cause !== undefined && isSame(one.cause, cause) ? [i] : [])),
        ...(reviews.every((other) => other.causes.some((one) => isSame(one, cause)))
          ? {}
          : { piece: names[piece]!, message: `${names[piece]}: ${cause.message}` }),
      })),
  );
  return {
    ...first,
    ok: summary.error === 0,
    summary,
    waived: findings.length - counted.length,
    findings,
    places: told.map(({ place }) => place),
    causes,
    untried: [...new Set(reviews.flatMap(({ untried }) => untried))],
    pieces: reviews.map(({ size, floats, cut, balance, integrity }, piece) => ({
      name: names[piece]!,
      size,
      floats,
      cut,
      balance,
      integrity,
    })),
  };
}

function isSame(one: PlacedCause, other: PlacedCause): boolean {
  return one.message === other.message && one.line === other.line && one.column === other.column;
}

function keyOf(finding: Finding): string {
  return JSON.stringify(finding);
}
