import { many } from "@drawcord/base";
import { type Recipe, type Revision, valueIn } from "@drawcord/files";
import { draftSize, printThreading } from "@drawcord/units";
import { convert, endsForWidth, plan, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { changed, ifReadable } from "./changed.js";
import type { Fit } from "./fit.js";
import { stripesFor } from "./stripes.js";

/** A part of a threading that is repeated: what stands before it, what comes again, how often, what stands after. */
interface Repeated {
  readonly before: string;
  readonly part: string;
  readonly times: number;
  readonly after: string;
}

/** A way to make a threading wider or narrower by steps. */
interface Way {
  /** The threading with so much more of something; undefined where there can be no such. */
  readonly threading: (more: number) => string | undefined;
  /** What is changed, as a clause. */
  readonly what: (more: number) => string;
}

/**
 * The repeats of a group of the threading, or the units of both borders, that bring the cloth nearest to a finished width,
 * below and above. A threading that has neither gets static units put in along both edges, or units left out there.
 * @throws {CliError} `no-fit` where no width can be worked out, or no unit can be put in or left out
 */
export function fitWidth(source: Uint8Array, recipe: Recipe, wanted: Quantity): readonly Fit[] {
  const { file } = recipe;
  const refuse = (why: string): CliError => new CliError("no-fit", `${file}: ${why}`, { file });
  const now = changed(source, file, []);
  if (now.plan.finishedWidth === undefined) throw refuse("no width can be worked out; it needs a sett");
  const written = valueIn(source, file, ["units", "threading"]);
  const text = written === undefined ? "" : String(written).trim();
  const parts = repeatedParts(text);
  const known = [...groupsOf(parts), ...bordersOf(parts, text)];
  const fits = (known.length > 0 ? known : [edgesOf(recipe, text)]).flatMap(fitsOf);
  if (fits.length > 0) return fits;
  const { drawIn, shrinkage } = now.project;
  const { ends } = draftSize(recipe.draft);
  const losses = { drawIn, shrinkage: shrinkage?.width };
  const sett = now.plan.sett!;
  const takes = endsForWidth(wanted, sett, losses).ends.value;
  const other = quantity((sett.value * ends) / takes, sett.unit);
  throw refuse(
    `no unit can be put in or left out; ${printQuantity(wanted)} take ${takes} ends, and there are ${ends}, which a sett of ${printQuantity(other, { decimals: 2 })} would bring there`,
  );

  /** The fits of one way around what the width asks for. */
  function fitsOf({ threading, what }: Way): readonly Fit[] {
    const trial = (more: number): Fit | undefined =>
      ifReadable(() => {
        const units = threading(more);
        if (units === undefined) return undefined;
        const change: Revision = { path: ["units", "threading"], value: units };
        const made = changed(source, file, [change]);
        const revisions = [change, ...stripesFor(recipe, draftSize(made.recipe.draft).ends)];
        const comes = plan(made.project).finishedWidth!;
        const width = quantity(Number(convert(comes, wanted.unit).value.toFixed(3)), wanted.unit);
        if (recipe.project.width !== undefined) revisions.push(widthRevision(width));
        const how = more === 0 ? "the threading as it is" : what(more);
        return { what: how, comes: width, change: Math.abs(more), revisions };
      });
    const [one, two] = [trial(0), trial(1)];
    if (one === undefined || two === undefined) return [];
    const step = two.comes.value - one.comes.value;
    const more = Math.floor((wanted.value - one.comes.value) / step + 1e-6);
    return [more, more + 1].flatMap((some) => trial(some) ?? []);
  }
}

function widthRevision(width: Quantity): Revision {
  return { path: ["project", "width"], value: `${width.value} ${width.unit}` };
}

/** The parts of a threading outside all brackets, with their repeats. */
function repeatedParts(text: string): Repeated[] {
  const found: Repeated[] = [];
  for (let at = 0; at < text.length; ) {
    if (/[\s,]/.test(text[at]!)) {
      at++;
      continue;
    }
    const start = at;
    let depth = 0;
    while (at < text.length && (depth > 0 || !/[\s,]/.test(text[at]!))) {
      if (text[at] === "(") depth++;
      if (text[at] === ")") depth--;
      at++;
    }
    const [, part = "", times = "1"] = /^(.*?)(?:\*(\d+))?$/s.exec(text.slice(start, at))!;
    found.push({ before: text.slice(0, start), part, times: Number(times), after: text.slice(at) });
  }
  return found;
}

function timesOf(part: string, times: number): string {
  return times === 1 ? part : `${part}*${times}`;
}

/** More or fewer repeats of a group in brackets. */
function groupsOf(parts: readonly Repeated[]): Way[] {
  return parts
    .filter(({ part, times }) => times > 1 && part.startsWith("("))
    .map(({ after, before, part, times }) => ({
      threading: (more) => (times + more < 1 ? undefined : `${before}${timesOf(part, times + more)}${after}`),
      what: (more) => `${part}*${times + more} in place of ${part}*${times} in the threading`,
    }));
}

/** More or fewer static units in the borders along both edges. */
function bordersOf(parts: readonly Repeated[], text: string): Way[] {
  const [first, last] = [parts[0], parts.at(-1)];
  if (first?.part !== "X" || last?.part !== "X" || parts.length < 3) return [];
  const middle = text.slice(text.length - first.after.length, last.before.length);
  return [
    {
      threading: (more) =>
        Math.min(first.times, last.times) + more < 1
          ? undefined
          : `${timesOf("X", first.times + more)}${middle}${timesOf("X", last.times + more)}`,
      what: (more) => `X*${first.times + more} and X*${last.times + more} as borders of the threading`,
    },
  ];
}

/** Static units put in along both edges, or units left out there. */
function edgesOf({ draft }: Recipe, text: string): Way {
  const { threading } = draft;
  return {
    threading: (more) => {
      if (more >= 0) return more === 0 ? text : `${timesOf("X", more)} ${text} ${timesOf("X", more)}`;
      const left = threading.slice(-more, more);
      return left.length === 0 ? undefined : printThreading(left);
    },
    what: (more) =>
      more < 0
        ? `${many(-more, "unit")} left out along each edge of the threading`
        : `${many(more, "static unit")} put in along each edge of the threading`,
  };
}
