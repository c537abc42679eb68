/** What the threading and the row notation have in common: numbers, words and signs between blanks or commas. */
import { UnitsError } from "./error.js";
import { NotationError } from "./notation-error.js";

/** The highest shaft number that is read: more than any harness, cord by cord, has had. */
const HIGHEST_SHAFT = 100_000;

/** A number, a word or a sign of a text, and where it stands. */
export interface Token {
  readonly kind: "number" | "word" | "sign";
  readonly text: string;
  /** From 1, in the whole text. */
  readonly column: number;
}

/** A text read one token at a time, so that a long text costs no more memory than a short one. */
export interface TokenReader {
  readonly next: () => Token | undefined;
  readonly peek: () => Token | undefined;
  /** Takes the next token when it is the sign `sign`. */
  readonly take: (sign: string) => Token | undefined;
}

/** Reads `text`; throws `bad-character` at the first character that no notation has. */
export function parseTokens(text: string): TokenReader {
  if (typeof text !== "string") throw new UnitsError("wrong-argument", "a notation must be a text");
  const pattern = /[\s,]*(?:(\d+)|([a-z]+)|([-+*()])|($))/iy;
  let ahead: Token | undefined;
  let end = 0;

  const scan = (): Token | undefined => {
    pattern.lastIndex = end;
    const match = pattern.exec(text);
    if (match === null) {
      const blank = /[\s,]*/y;
      blank.lastIndex = end;
      blank.exec(text);
      const at = blank.lastIndex;
      const found = String.fromCodePoint(text.codePointAt(at)!);
      throw new NotationError(
        "bad-character",
        `"${found}" has no meaning here; expected shaft numbers, "X" or "none", and the signs - + * ( )`,
        { column: at + 1, found },
      );
    }
    end = pattern.lastIndex;
    const [, number, word, sign] = match;
    const found = number ?? word ?? sign;
    if (found === undefined) return undefined;
    const kind = number !== undefined ? "number" : word !== undefined ? "word" : "sign";
    return { kind, text: found, column: end - found.length + 1 };
  };

  const next = () => {
    const token = ahead ?? scan();
    ahead = undefined;
    return token;
  };
  const peek = () => {
    ahead ??= scan();
    return ahead;
  };
  const take = (sign: string) => (peek()?.text === sign ? next() : undefined);
  return { next, peek, take };
}

/** The shaft a number token names; throws `bad-shaft` for 0 and for a number that no loom has. */
function shaftOf(token: Token): number {
  const shaft = Number(token.text);
  if (shaft === 0) {
    throw new NotationError("bad-shaft", "shaft 0 was found; shafts are counted from 1", {
      column: token.column,
      shaft: 0,
    });
  }
  if (shaft > HIGHEST_SHAFT) {
    const found = token.text.length > 12 ? `${token.text.slice(0, 12)}...` : token.text;
    throw new NotationError(
      "bad-shaft",
      `shaft ${found} was found; the highest shaft read is ${HIGHEST_SHAFT}`,
      {
        column: token.column,
        shaft,
        highest: HIGHEST_SHAFT,
      },
    );
  }
  return shaft;
}

/** The token in quotes, or the words for the end of the text. */
function quoted(token: Token | undefined): string {
  return token === undefined ? "the end of the text" : `"${token.text}"`;
}

/** The shaft number that `sign`, just read, calls for; throws `bad-run` when something else follows. */
export function parseShaftAfter(sign: Token, read: TokenReader): number {
  const token = read.next();
  if (token?.kind === "number") return shaftOf(token);
  throw new NotationError(
    "bad-run",
    `${quoted(token)} was found after "${sign.text}"; expected a shaft number`,
    {
      column: token?.column ?? sign.column + 1,
      found: token?.text ?? "",
    },
  );
}

/**
 * A shaft or a run of shafts that begins with `token`: `7`, `1-8` upwards, `7-2` downwards.
 * Throws `bad-run` when the token is no number or the run has no second end.
 */
export function parseRun(token: Token, read: TokenReader): number[] {
  if (token.kind !== "number") {
    throw new NotationError("bad-run", `${quoted(token)} was found; expected a shaft number`, {
      column: token.column,
      found: token.text,
    });
  }
  const first = shaftOf(token);
  const dash = read.take("-");
  if (dash === undefined) return [first];
  const last = parseShaftAfter(dash, read);
  const step = Math.sign(last - first);
  return Array.from({ length: Math.abs(last - first) + 1 }, (_, i) => first + i * step);
}

/** The times a `*` calls for, 1 when there is none; throws `bad-repeat` for `*0` and for a `*` without a number. */
export function parseTimes(read: TokenReader): number {
  const star = read.take("*");
  if (star === undefined) return 1;
  const token = read.next();
  const times = Number(token?.text);
  if (token?.kind === "number" && times >= 1) return times;
  throw new NotationError(
    "bad-repeat",
    `${quoted(token)} was found after "*"; expected how many times, 1 or more`,
    { column: token?.column ?? star.column + 1, found: token?.text ?? "" },
  );
}
