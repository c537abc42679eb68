/** Brings a changed draft back into the text of its recipe, with as little of the text changed as can be. */
import type { ShaftSet } from "@drawcord/ground";
import {
  commonSize,
  endsOfEachUnit,
  picksOfEachRow,
  printShafts,
  printThreading,
  type UnitDraft,
} from "@drawcord/units";
import { FileError } from "../error.js";
import { top } from "../place.js";
import { readText } from "../text.js";
import { readTree } from "../tree/tree.js";
import { liftCells } from "./lift-cells.js";
import { withOwnBlock } from "./own-block.js";
import { recipeOfPiece } from "./pieces/of-piece.js";
import { standsInPieces } from "./pieces/write.js";
import { soundRecipe } from "./read.js";
import { type Revision, reviseRecipe, valueIn } from "./revise.js";
import { withSection } from "./sections.js";
import type { Recipe } from "./types.js";
import { writeRecipe } from "./write.js";

/** A recipe's text with a changed draft. */
export interface RevisedRecipe {
  /** The text of the recipe. */
  readonly text: string;
  /** Sections that had to be written out anew, so that their layout is gone; their comments are kept. None as a rule. */
  readonly rewritten: readonly string[];
}

/**
 * The text of a recipe with its draft changed to another: values are changed where they stand, rows of a plan one by one,
 * also within blocks and pictures, and comments and layout stay. A section in which that cannot be done is written out
 * anew, its comments beside or above the lines that they were of, or above the section. The text is read again, and weaves the draft given.
 * @param source the recipe
 * @param file its name, for errors
 * @param draft the changed draft
 * @param piece the piece that weaves the draft, where the recipe has several; default: the first
 * @throws {FileError} as `soundRecipe`; `bad-value` for a draft that no recipe can be brought to
 * @example reviseDraft(text, "least", { ...unitDraft, lifts: [[2], [2]] }).rewritten // []
 */
export function reviseDraft(
  source: Uint8Array | string,
  file: string,
  draft: UnitDraft,
  piece?: string,
): RevisedRecipe {
  let text = readText(source, file);
  const rewritten: string[] = [];
  const read = (one: string) => readPiece(one, file, piece);
  for (const { name, of, tries } of sections) {
    const recipe = read(text);
    if (of(recipe.draft) === of(draft)) continue;
    const revised = firstThat(tries(text, recipe, draft, read), (one) => of(read(one).draft) === of(draft));
    if (revised !== undefined) text = revised;
    else if (name === "lifts" && standsInPieces(recipe.pieces)) {
      const sentence = `the lifts of a recipe with "pieces" are changed row by row in their blocks; these cannot be`;
      throw new FileError("bad-value", sentence, file, top);
    } else {
      text = withSection(text, name, writeRecipe({ ...recipe, draft }));
      rewritten.push(name);
    }
  }
  const found = read(text).draft;
  if (sections.every(({ of }) => of(found) === of(draft))) return { text, rewritten };
  throw new FileError("bad-value", "the changed draft cannot be written into this recipe", file, top);
}

/** A section that gives a part of the draft. */
interface Section {
  readonly name: string;
  /** What it gives, as a text to compare. */
  readonly of: (draft: UnitDraft) => string;
  /** Texts that may bring it to a draft, the smallest change first. */
  readonly tries: (
    text: string,
    recipe: Recipe,
    draft: UnitDraft,
    read: (text: string) => Recipe,
  ) => Iterable<string>;
}

/** A recipe, or that of one of its pieces. */
function readPiece(text: string, file: string, piece: string | undefined): Recipe {
  const recipe = soundRecipe(text, file);
  return (piece !== undefined && recipeOfPiece(recipe, piece)) || recipe;
}

/** The ground comes last, for a weave named by its name is fitted to units and rows. */
const sections: readonly Section[] = [
  {
    name: "units",
    of: ({ threading, unitEnds }) => JSON.stringify([threading, endsOfEachUnit({ threading, unitEnds })]),
    *tries(text, { file }, draft) {
      const path = ["units", "ends"];
      const kept = valueIn(text, file, path) === commonSize(draft.unitEnds);
      yield revised(text, file, [
        { path: ["units", "threading"], value: printThreading(draft.threading) },
        ...(kept ? [] : [{ path, value: draft.unitEnds }]),
      ]);
    },
  },
  {
    name: "lifts",
    of: ({ lifts, picksPerRow }) => JSON.stringify([lifts, picksOfEachRow({ lifts, picksPerRow })]),
    tries: reviseLifts,
  },
  {
    name: "ground",
    of: ({ ground, selvedge = {} }) =>
      JSON.stringify([
        [ground.shafts, ground.threading, selvedge.left ?? [], selvedge.right ?? []],
        ground.steps.map(({ raise, sink, weft }) => [raise, sink, weft ?? ""]),
      ]),
    *tries(text, { draft: before, file }, { ground, selvedge = {} }) {
      const steps = ground.steps.map(({ raise, sink, weft }) => ({
        raise: shaftsText(raise),
        sink: shaftsText(sink),
        ...(weft === undefined ? {} : { weft }),
      }));
      const isStep = (i: number) =>
        JSON.stringify(before.ground.steps[i]) === JSON.stringify(ground.steps[i]);
      const sides = (["left", "right"] as const).flatMap((side) => {
        const ends = selvedge[side] ?? [];
        const same = JSON.stringify(ends) === JSON.stringify(before.selvedge?.[side] ?? []);
        const value = printThreading(ends.map((shaft) => [shaft]));
        return same ? [] : [{ path: ["ground", "selvedge", side], value }];
      });
      yield revised(text, file, [
        ...steps.flatMap((value, i) => (isStep(i) ? [] : [{ path: ["ground", "steps", i], value }])),
        ...sides,
      ]);
    },
  },
];

/** Shafts as they stand in a recipe: a lone one as a number, which needs no quotes. */
function shaftsText(shafts: readonly number[]): string | number {
  return shafts.length === 1 ? shafts[0]! : printShafts(shafts);
}

/** Revised text, or nothing readable where a value has no place of its own. */
function revised(text: string, file: string, revisions: readonly Revision[]): string {
  try {
    return reviseRecipe(text, file, revisions).text;
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    return "";
  }
}

/** The first text that can be read and does what it should. */
function firstThat(texts: Iterable<string>, does: (text: string) => boolean): string | undefined {
  for (const text of texts) {
    try {
      if (does(text)) return text;
    } catch (error) {
      if (!(error instanceof FileError)) throw error;
    }
  }
  return undefined;
}

/**
 * Row by row: each change is tried wherever the old lift stands, and kept where it brings the plan nearer; then with the
 * use of a block that weaves the row as a block of its own.
 */
function* reviseLifts(
  text: string,
  { draft: before, file }: Recipe,
  draft: UnitDraft,
  read: (text: string) => Recipe,
): Iterable<string> {
  const key = (lift: readonly number[] | undefined) => lift?.join(" ") ?? "-";
  const wanted = draft.lifts.map(key);
  const apart = (row: number, from: string) => [from, withOwnBlock(readTree(from, file), row)].filter(isText);
  if (before.lifts.length === wanted.length + 1) {
    const taken = before.lifts.findIndex((lift, row) => key(lift) !== wanted[row]);
    for (const one of apart(taken, text)) {
      for (const cell of liftCells(readTree(one, file))) {
        if (key(cell.lift) === key(before.lifts[taken])) yield cell.without() ?? "";
      }
    }
    return;
  }
  if (before.lifts.length !== wanted.length) return;
  const far = (lifts: UnitDraft["lifts"]) =>
    lifts.length === wanted.length ? wanted.filter((row, i) => row !== key(lifts[i])).length : Infinity;
  let current = text;
  for (let lifts = before.lifts; far(lifts) > 0; ) {
    const row = lifts.findIndex((lift, i) => key(lift) !== wanted[i]);
    const [was, is] = [lifts[row]!, draft.lifts[row]!];
    const texts = apart(row, current).flatMap((one) => {
      const cells = liftCells(readTree(one, file));
      // Of blocks that are woven together each has its own part of the row.
      const parts = cells.filter(({ lift }) => lift.length < was.length && isPart(lift, was));
      return [
        ...cells.filter((cell) => key(cell.lift) === key(was)).map((cell) => cell.with(is) ?? ""),
        ...parts.map((cell) => cell.with(changedAlike(cell.lift, was, is)) ?? ""),
      ];
    });
    const nearer = firstThat(texts, (one) => far(read(one).draft.lifts) < far(lifts));
    if (nearer === undefined) return;
    current = nearer;
    lifts = read(current).draft.lifts;
  }
  yield current;
}

function isPart(lift: ShaftSet, whole: ShaftSet): boolean {
  return lift.every((shaft) => whole.includes(shaft));
}

/** A lift with the shafts drawn and left by which one lift differs from another. */
function changedAlike(lift: ShaftSet, was: ShaftSet, is: ShaftSet): ShaftSet {
  const kept = lift.filter((shaft) => is.includes(shaft));
  return [...kept, ...is.filter((shaft) => !was.includes(shaft))].sort((a, b) => a - b);
}

function isText(text: string | undefined): text is string {
  return text !== undefined;
}
