/** Brings a changed draft back into the text of its recipe, with as little of the text changed as can be. */
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
import { movedWaivers } from "./moved-waivers.js";
import { recipeOfPiece } from "./pieces/of-piece.js";
import { standsInPieces } from "./pieces/write.js";
import { soundRecipe } from "./read.js";
import { type RevisedText, type Revision, revisionSplices, valueIn } from "./revise.js";
import { reviseLifts } from "./revise-lifts.js";
import { sectionAnew } from "./sections.js";
import { followedByAll, placedEdits, type Splice, spliced } from "./text-edits.js";
import { firstThat, type Made, orNothing, type Read } from "./tries.js";
import type { Recipe } from "./types.js";
import { writeRecipe } from "./write.js";

/** A recipe's text with a changed draft. */
export interface RevisedRecipe extends RevisedText {
  /** Sections that had to be written out anew, so that their layout is gone; their comments are kept. None as a rule. */
  readonly rewritten: readonly string[];
}

/**
 * The text of a recipe with its draft changed to another: values are changed where they stand, rows of a plan one by one,
 * also within blocks and pictures, and comments and layout stay; waivers by place move with what they name. A section in which that cannot be done is written out
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
  const text = readText(source, file);
  const read = (one: string) => readPiece(one, file, piece);
  const first = read(text);
  let made: Made = { splices: [], recipe: first };
  const rewritten: string[] = [];
  for (const { name, of, tries } of sections) {
    const { recipe } = made;
    if (of(recipe.draft) === of(draft)) continue;
    const revised = firstThat(tries(recipe, draft, read), recipe.text, read, (one) => of(one) === of(draft));
    if (revised !== undefined) {
      made = { splices: followedByAll(made.splices, revised.splices), recipe: revised.recipe };
    } else if (name === "lifts" && standsInPieces(recipe.pieces)) {
      const sentence = `the lifts of a recipe with "pieces" are changed row by row in their blocks; these cannot be`;
      throw new FileError("bad-value", sentence, file, top);
    } else {
      const anew = [sectionAnew(recipe.text, name, writeRecipe({ ...recipe, draft }))];
      made = { splices: followedByAll(made.splices, anew), recipe: read(spliced(recipe.text, anew)) };
      rewritten.push(name);
    }
  }
  const moved = movedWaivers(first, draft);
  for (const waivers of moved.length === 0 ? [] : revised(made.recipe, moved)) {
    made = {
      splices: followedByAll(made.splices, waivers),
      recipe: read(spliced(made.recipe.text, waivers)),
    };
  }
  const { recipe, splices } = made;
  if (sections.every(({ of }) => of(recipe.draft) === of(draft))) {
    return { text: recipe.text, edits: placedEdits(text, file, splices), rewritten };
  }
  throw new FileError("bad-value", "the changed draft cannot be written into this recipe", file, top);
}

/** A section that gives a part of the draft. */
interface Section {
  readonly name: string;
  /** What it gives, as a text to compare. */
  readonly of: (draft: UnitDraft) => string;
  /** What may bring the text of a recipe to a draft, the smallest change first. */
  readonly tries: (recipe: Recipe, draft: UnitDraft, read: Read) => Iterable<readonly Splice[]>;
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
    *tries(recipe, draft) {
      const path = ["units", "ends"];
      const kept = valueIn(recipe.text, recipe.file, path) === commonSize(draft.unitEnds);
      yield* revised(recipe, [
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
    *tries(recipe, { ground, selvedge = {} }) {
      const before = recipe.draft;
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
      yield* revised(recipe, [
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

/** What revisions change in the text of a recipe, or nothing where a value has no place of its own. */
function* revised({ file, text }: Recipe, revisions: readonly Revision[]): Iterable<readonly Splice[]> {
  const splices = orNothing(() => revisionSplices(readTree(text, file), revisions));
  if (splices !== undefined) yield splices;
}
