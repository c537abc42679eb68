/** What is wrong with a text, gathered while it is read, so that all of it is told at once and the rest is read. */
import { FileError, type FileErrorCode, type Problem } from "../error.js";

/** The most problems of one text that are told. */
const most = 200;

/** The problems of a text, and the values that are left out for them. */
export interface Problems {
  readonly found: Problem[];
  /** The ways to the values left out, by their keys. */
  readonly left: Map<string, readonly (string | number)[]>;
}

/** No problems yet. */
export function noProblems(): Problems {
  return { found: [], left: new Map() };
}

/** A value that cannot be read because of a problem that is told already. */
export class Unread extends Error {}

/**
 * Takes down a problem, once however often it is met.
 * @throws {FileError} `too-many-problems` at the 201st
 */
export function tell({ found }: Problems, { problems }: FileError): void {
  for (const problem of problems) {
    if (found.some((one) => isSame(one, problem))) continue;
    if (found.length === most) {
      const sentence = `there is more that is wrong; the first ${most} problems found are told`;
      throw new FileError("too-many-problems", sentence, problem.file, problem);
    }
    found.push(problem);
  }
}

function isSame(one: Problem, other: Problem): boolean {
  return one.offset === other.offset && one.sentence === other.sentence;
}

/** Problems after which no more is read. */
const last: ReadonlySet<FileErrorCode> = /* @__PURE__ */ new Set(["too-large", "too-many-problems"]);

/**
 * What `read` gives; undefined, and the problem told, where it cannot.
 * @throws {FileError} `too-large` and `too-many-problems`, after which no more is read
 */
export function attempt<T>(problems: Problems, read: () => T): T | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof Unread) return undefined;
    if (!(error instanceof FileError) || last.has(error.code)) throw error;
    tell(problems, error);
    return undefined;
  }
}

/** Problems in the order of the text; of several at one place, that found first comes first. */
export function inOrder(problems: readonly Problem[]): readonly Problem[] {
  return problems.toSorted((a, b) => a.offset - b.offset);
}
