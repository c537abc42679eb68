/// <reference lib="dom" />
/** What goes between the page and the workers that read, check, draw and write: plain data all of it. */

import type { Edit, ShownEdit, Stretch } from "./edits.js";

/** How much a mark weighs; a problem is text that cannot be read. */
type Level = "problem" | "error" | "warning" | "note";

/** Something said of a stretch of the text. */
export interface Mark extends Stretch {
  readonly level: Level;
  readonly sentence: string;
  /** The rule that found it, or the code of the problem. */
  readonly name: string;
  /** Ends and picks of the cloth that is drawn, from 1. */
  readonly ends?: readonly [number, number];
  readonly picks?: readonly [number, number];
}

/** A mend: what it does in words, and in the text. */
export interface ToldMend {
  readonly words: string;
  readonly edits: readonly Edit[];
  /** The edits as they are shown before they are made. */
  readonly shown: readonly ShownEdit[];
}

/** A cause: what was written wrong, and what to write instead. */
export interface ToldCause extends Stretch {
  readonly level: Exclude<Level, "problem">;
  readonly sentence: string;
  readonly why: string;
  readonly sure: boolean;
  /** How many findings it accounts for. */
  readonly explains: number;
  /** What undoes it, the likeliest first; none where it cannot be written into the text. */
  readonly mends: readonly ToldMend[];
}

/** What would mend findings that no slip accounts for; it is made together with those offered before it. */
export interface ToldOffer extends ToldMend {
  /** The rules that find nothing then. */
  readonly rules: readonly string[];
}

/** A cloth as pixels, one a crossing, the last pick on top; the back is turned over sideways. */
export interface ClothPicture {
  readonly ends: number;
  readonly picks: number;
  readonly face: ImageBitmap;
  readonly back: ImageBitmap;
  /** Millimetres across one end and along one pick. */
  readonly pitch: readonly [end: number, pick: number];
}

/** What can be pressed and pulled: only a recipe has it. */
export interface Harness {
  /** For each step of the treadling, what it raises and sinks. */
  readonly steps: readonly { readonly raise: readonly number[]; readonly sink: readonly number[] }[];
  readonly handles: number;
}

/** A line of the list to weave by. */
export interface ToldRow {
  readonly row: number;
  readonly picks: readonly [number, number];
  readonly drawn: string;
  readonly change: string;
  readonly block: string;
}

/** A number of the plan, with its working where it was worked out. */
export interface ToldNumber {
  readonly title: string;
  readonly value: string;
  readonly working?: string;
}

/** A file as the bench opens it. */
type Kind = "recipe" | "draft" | "chart";

/** What can be saved. */
export type SaveAs = "recipe" | "wif" | "png" | "svg" | "html" | "pdf" | "follow";

/** What the worker is asked. */
export type Question =
  | { readonly ask: "look"; readonly text: string; readonly piece: number }
  | { readonly ask: "why"; readonly end: number; readonly pick: number }
  | { readonly ask: "shed"; readonly step: number; readonly handles: readonly number[] }
  | { readonly ask: "save"; readonly as: SaveAs; readonly text: string }
  | { readonly ask: "search"; readonly text: string }
  | { readonly ask: "open"; readonly name: string; readonly bytes: Uint8Array };

/** What is shown first: the cloth, before it is checked. */
export interface Drawn {
  readonly kind: Kind;
  readonly title: string;
  readonly pieces: readonly string[];
  readonly cloth: ClothPicture;
  readonly harness?: Harness;
}

/** What came of looking at a text. */
export interface Looked {
  readonly kind: Kind;
  readonly marks: readonly Mark[];
  /** How many there are in all; `marks` are the first of them. */
  readonly found: number;
  readonly verdict: string;
  readonly isSound: boolean;
  readonly numbers: readonly ToldNumber[];
  readonly rows: readonly ToldRow[];
  /** What the lifts weigh, and the caution that goes with them. */
  readonly caution: string;
  /** The numbers of the report of the piece that is shown; the name is empty where a line goes on with the one before. */
  readonly report: readonly (readonly [name: string, text: string])[];
}

/** The pick that the pressed treadle and the pulled handles would weave. */
export interface Shed {
  /** A letter an end: `#` up, `.` down. */
  readonly up: string;
  readonly words: string;
  /** The picks of the cloth (from 1) that are woven so. */
  readonly picks: readonly number[];
}

/** What the worker answers; `id` is that of the question. */
export type Answer =
  | ({ readonly answer: "drawn" } & Drawn)
  | ({ readonly answer: "looked" } & Looked)
  | {
      readonly answer: "why";
      readonly end: number;
      readonly pick: number;
      readonly sentences: readonly string[];
    }
  | ({ readonly answer: "shed" } & Shed)
  | {
      readonly answer: "saved";
      readonly name: string;
      readonly type: string;
      readonly bytes: Uint8Array<ArrayBuffer>;
    }
  | Found
  | { readonly answer: "opened"; readonly text: string }
  /** What is being done; `done` of `of` steps lie behind. */
  | { readonly answer: "doing"; readonly words: string; readonly done: number; readonly of: number }
  | { readonly answer: "refused"; readonly sentence: string };

/** What is told while causes and mends are looked for, and what was found until then. */
export type Found =
  | { readonly answer: "searching"; readonly proved: number; readonly of: number }
  | {
      readonly answer: "causes";
      readonly causes: readonly ToldCause[];
      readonly offers: readonly ToldOffer[];
      readonly untried: readonly string[];
      /** Whether nothing more is looked for. */
      readonly isAll: boolean;
    };

/** A message with the number of its question. */
export type Numbered<T> = T & { readonly id: number };
