import type { ShaftDraft, ThreadLook, ThreadMeasure } from "@drawcord/check";
import { type Colour, rgbOf } from "@drawcord/draw";
import type { ShaftSet } from "@drawcord/ground";
import { isControl } from "../printable.js";

/**
 * Writes a draft as WIF 1.1, every section that it needs and no private one. Lines end in CR LF, as the readers of the
 * format's time expect. The sections and keys are given from memory. The format's header has a key
 * `Developers` for an electronic mail address; ours is without.
 * @param draft the draft, as `soundWif` gives it
 * @example writeWif(draft).split("\r\n")[1] // "Version=1.1"
 */
export function writeWif(draft: ShaftDraft): string {
  const { shedding, warp, weft } = draft;
  const palette = [...new Set([...(warp.colours ?? []), ...(weft.colours ?? [])])];
  const index = new Map(palette.map((colour, i) => [colour, i + 1]));
  const treadles = shedding.kind === "tie-up" ? shedding.tieUp.length : 0;
  const picks = shedding.kind === "tie-up" ? shedding.treadling : shedding.liftPlan;
  const body: readonly Part[] = [
    ["TEXT", [...text("Title", draft.title), ...text("Author", draft.author)]],
    ["NOTES", (draft.notes ?? []).map((note, i) => `${i + 1}=${oneLine(note)}`)],
    ["WEAVING", [`Rising Shed=${draft.rising}`, `Treadles=${treadles}`, `Shafts=${draft.shafts}`]],
    ["COLOR PALETTE", palette.length === 0 ? [] : [`Entries=${palette.length}`, "Form=RGB", "Range=0,255"]],
    ["COLOR TABLE", palette.map((colour, i) => `${i + 1}=${rgb(colour)}`)],
    ["WARP", general(draft.threading.length, warp, index)],
    ["WEFT", general(picks.length, weft, index)],
    ["THREADING", sets(draft.threading)],
    ...(shedding.kind === "tie-up"
      ? ([
          ["TIEUP", sets(shedding.tieUp)],
          ["TREADLING", sets(shedding.treadling)],
        ] as const)
      : ([["LIFTPLAN", sets(shedding.liftPlan)]] as const)),
    ...ofThreads("WARP", warp, index),
    ...ofThreads("WEFT", weft, index),
  ];
  // The sections that a draft cannot be without stand there even when no thread has anything in them.
  const needed = ["WEAVING", "WARP", "WEFT", "THREADING", "TIEUP", "TREADLING", "LIFTPLAN"];
  const parts = body.filter(([name, lines]) => lines.length > 0 || needed.includes(name));
  const head: readonly Part[] = [
    ["WIF", ["Version=1.1", "Date=April 20, 1997", "Source Program=Drawcord"]],
    ["CONTENTS", parts.map(([name]) => `${name}=true`)],
  ];
  return [...head, ...parts].map(([name, lines]) => [`[${name}]`, ...lines, "", ""].join("\r\n")).join("");
}

type Part = readonly [name: string, lines: readonly string[]];

function text(key: string, value: string | undefined): readonly string[] {
  return value === undefined ? [] : [`${key}=${oneLine(value)}`];
}

/** A text as it may stand in one line. */
function oneLine(value: string): string {
  let out = "";
  for (const char of value) out += isControl(char.charCodeAt(0)) || /[\n\r\t]/.test(char) ? " " : char;
  return out.trim();
}

function rgb(colour: Colour): string {
  return rgbOf(colour).join(",");
}

/** A line for each thread, pick or treadle that has anything; the others have nothing. */
function sets(threads: readonly ShaftSet[]): readonly string[] {
  return threads.flatMap((set, i) => (set.length === 0 ? [] : [`${i + 1}=${set.join(",")}`]));
}

function general(threads: number, look: ThreadLook, index: ReadonlyMap<Colour, number>): readonly string[] {
  const { colours, spacing, thickness } = look;
  const measured = spacing !== undefined || thickness !== undefined;
  const unit = look.unit ?? (measured ? "decipoints" : undefined);
  return [
    `Threads=${threads}`,
    ...(colours?.[0] === undefined ? [] : [`Color=${index.get(mostCommon(colours))}`]),
    ...(unit === undefined ? [] : [`Units=${unit.charAt(0).toUpperCase()}${unit.slice(1)}`]),
    ...(spacing?.all === undefined ? [] : [`Spacing=${decimal(spacing.all)}`]),
    ...(thickness?.all === undefined ? [] : [`Thickness=${decimal(thickness.all)}`]),
  ];
}

function mostCommon(colours: readonly Colour[]): Colour {
  const counts = new Map<Colour, number>();
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  return [...counts].reduce((best, next) => (next[1] > best[1] ? next : best))[0];
}

/** What single threads have of their own. */
function ofThreads(
  system: "WARP" | "WEFT",
  look: ThreadLook,
  index: ReadonlyMap<Colour, number>,
): readonly Part[] {
  const { colours, spacing, thickness } = look;
  const common = colours?.[0] === undefined ? undefined : mostCommon(colours);
  return [
    [
      `${system} COLORS`,
      (colours ?? []).flatMap((colour, i) => (colour === common ? [] : [`${i + 1}=${index.get(colour)}`])),
    ],
    [`${system} SPACING`, each(spacing)],
    [`${system} THICKNESS`, each(thickness)],
  ];
}

function each(measure: ThreadMeasure | undefined): readonly string[] {
  return (measure?.each ?? []).flatMap((value, i) =>
    value === measure!.all ? [] : [`${i + 1}=${decimal(value)}`],
  );
}

/** A number without an exponent, to 20 decimals where it is smaller than a millionth. */
function decimal(value: number): string {
  const short = String(value);
  return short.includes("e") ? value.toFixed(20).replace(/\.?0+$/, "") : short;
}
