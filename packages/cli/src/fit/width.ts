import type { Recipe, Revision } from "@drawcord/files";
import { convert, plan, type Quantity, quantity } from "@drawcord/yarn";
import { CliError } from "../error.js";
import { changed } from "./changed.js";
import type { Fit } from "./fit.js";

/** A part of a threading that is repeated: what stands before it, what comes again, how often, what stands after. */
interface Repeated {
  readonly before: string;
  readonly part: string;
  readonly times: number;
  readonly after: string;
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

function written({ after, before, part }: Repeated, times: number): string {
  return `${before}${part}${times === 1 ? "" : `*${times}`}${after}`;
}

/**
 * The repeats of a part of the threading, or the units of both borders, that bring the cloth nearest to a finished width.
 * @throws {CliError} `no-fit` where no width can be worked out
 */
export function fitWidth(source: Uint8Array, recipe: Recipe, text: string, wanted: Quantity): Fit[] {
  const { file } = recipe;
  const now = plan({ ...changed(source, file, []).project }).finishedWidth;
  if (now === undefined) {
    throw new CliError("no-fit", `${file}: no width can be worked out; it needs a sett`, { file });
  }
  const parts = repeatedParts(text);
  /** The threading as it comes with more of something, tried around what the width asks for. */
  const fits = (
    most: number,
    make: (more: number) => string | undefined,
    what: (more: number) => string,
  ): Fit[] => {
    const trial = (more: number): Fit | undefined => {
      const threading = make(more);
      if (threading === undefined) return undefined;
      const revisions: Revision[] = [{ path: ["units", "threading"], value: threading }];
      const comes = changed(source, file, revisions).plan.finishedWidth!;
      const width = quantity(Number(convert(comes, wanted.unit).value.toFixed(3)), wanted.unit);
      const all = recipe.project.width === undefined ? revisions : [...revisions, widthRevision(width)];
      return { what: what(more), comes: width, change: Math.abs(more), revisions: all };
    };
    const [one, two] = [trial(0), trial(1)];
    if (one === undefined || two === undefined) return [];
    const step = two.comes.value - one.comes.value;
    const more = Math.min(most, Math.floor((wanted.value - one.comes.value) / step + 1e-6));
    return [more, more + 1].flatMap((some) => trial(some) ?? []);
  };
  const grouped = parts
    .filter(({ part, times }) => times > 1 && part.startsWith("("))
    .flatMap((one) =>
      fits(
        100_000,
        (more) => (one.times + more < 1 ? undefined : written(one, one.times + more)),
        (more) => `${one.part}*${one.times + more} in place of ${one.part}*${one.times} in the threading`,
      ),
    );
  const [first, last] = [parts[0], parts.at(-1)];
  if (
    first === undefined ||
    last === undefined ||
    parts.length < 3 ||
    first.part !== "X" ||
    last.part !== "X"
  )
    return grouped;
  const borders = fits(
    100_000,
    (more) => {
      if (first.times + more < 1 || last.times + more < 1) return undefined;
      const inner = text.slice(0, text.length - last.after.length).slice(first.before.length);
      const middle = inner.replace(/^X(\*\d+)?/, "").replace(/X(\*\d+)?$/, "");
      return `X*${first.times + more}${middle}X*${last.times + more}`;
    },
    (more) => `X*${first.times + more} and X*${last.times + more} as borders of the threading`,
  );
  return [...grouped, ...borders];
}

function widthRevision(width: Quantity): Revision {
  return { path: ["project", "width"], value: `${width.value} ${width.unit}` };
}
