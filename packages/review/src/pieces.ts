/** One report of all the pieces on a warp: what is the same in several is told once, with the pieces where not all have it. */
import { listed, type Range } from "@drawcord/base";
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
  /** The pieces, from 0; undefined where all have it. */
  readonly pieces: number[] | undefined;
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
  const inAll = new Set(first.findings.map(keyOf));
  for (const { findings } of reviews.slice(1)) {
    const seen = new Set(findings.map(keyOf));
    for (const key of inAll) if (!seen.has(key)) inAll.delete(key);
  }
  const told: Told[] = [];
  const toldAs = new Map<string, Told>();
  reviews.forEach((review, piece) => {
    const causeOf = new Map(review.causes.flatMap((cause) => cause.explains.map((i) => [i, cause] as const)));
    review.findings.forEach((finding, i) => {
      const everywhere = inAll.has(keyOf(finding));
      const rule = ofPieces.get(finding.rule);
      const once = everywhere || rule === "first";
      if ((piece > 0 && once) || (!everywhere && rule === "all")) return;
      const cause = causeOf.get(i);
      const place = review.places[i] ?? null;
      const key = JSON.stringify([finding, cause && causeKey(cause)]);
      const known = toldAs.get(key);
      // Twice in one piece it is told twice.
      if (known?.pieces !== undefined && known.pieces.at(-1) !== piece) {
        known.pieces.push(piece);
        return;
      }
      const one: Told = { finding, place, pieces: once ? undefined : [piece], cause };
      toldAs.set(key, one);
      told.push(one);
    });
  });
  // The sort is stable: findings of one weight stay in weaving order.
  told.sort((a, b) => WEIGHT[a.finding.severity] - WEIGHT[b.finding.severity]);
  const findings = told.map(
    ({ finding, pieces }): Finding =>
      pieces === undefined ? finding : { ...finding, ...inPieces(pieces, finding.message, names) },
  );
  const counted = findings.filter(({ waived }) => waived === undefined);
  const summary = { error: 0, warning: 0, note: 0 };
  for (const { severity } of counted) summary[severity]++;
  // A slip of the warp is one slip, in however many pieces it shows.
  const causesOf = new Map<string, { readonly cause: PlacedCause; readonly pieces: Set<number> }>();
  reviews.forEach((review, piece) => {
    for (const cause of review.causes) {
      const known = causesOf.get(causeKey(cause)) ?? { cause, pieces: new Set() };
      known.pieces.add(piece);
      causesOf.set(causeKey(cause), known);
    }
  });
  const toldBy = new Map<string, number[]>();
  told.forEach(({ cause }, i) => {
    if (cause === undefined) return;
    const key = causeKey(cause);
    toldBy.set(key, [...(toldBy.get(key) ?? []), i]);
  });
  const causes = [...causesOf].map(([key, { cause, pieces }]) => {
    return {
      ...cause,
      explains: toldBy.get(key) ?? [],
      ...(pieces.size < reviews.length && inPieces([...pieces], cause.message, names)),
    };
  });
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

/** What is said of some pieces: by the first, and by all where there are more. */
function inPieces(pieces: readonly number[], message: string, names: readonly string[]) {
  const [piece = "", ...others] = pieces.map((one) => names[one]!);
  return {
    piece,
    ...(others.length > 0 && { pieces: [piece, ...others] }),
    message: `${listed([piece, ...others])}: ${message}`,
  };
}

function causeKey({ column, line, message }: PlacedCause): string {
  return `${line}:${column} ${message}`;
}

function keyOf(finding: Finding): string {
  return JSON.stringify(finding);
}
