/**
 * An editor for recipes in one file: a text area whose problems are underlined, the cloth on a canvas, what was written
 * wrong, and a button that sets it right. The file is the page and its worker: the page only shows and sends the text;
 * the worker reads, checks and draws. Everything between them is plain data.
 */
import { DrawcordError, type ErrorData, type Range } from "@drawcord/base";
import { drawPixels, type Pixels } from "@drawcord/draw";
import { coloursOfRecipe, type Recipe, readRecipe, soundRecipe } from "@drawcord/files";
import { checkRecipe, mendText, type PlacedCause } from "@drawcord/review";
import { type Change, expand } from "@drawcord/units";

const file = "recipe.yaml";

/** What the page asks: to look at a text, or at a text with edits made. Texts are numbered, so that an old answer is known. */
interface Question {
  readonly id: number;
  readonly text: string;
  readonly mend?: readonly Change[];
}

/** A stretch of the text to underline, and what is wrong there. */
interface Mark {
  readonly place: Range;
  readonly level: "error" | "warning" | "note";
  readonly sentence: string;
}

/** What the worker answers, part by part, as each is known. */
interface Answer {
  readonly id: number;
  readonly text?: string;
  readonly cloth?: Pixels | undefined;
  readonly marks?: readonly Mark[];
  readonly causes?: readonly PlacedCause[];
  readonly failed?: ErrorData;
}

if (typeof document === "undefined") work();
else show();

/** The worker's side. */
function work(): void {
  let newest = 0;
  let known: { readonly text: string; readonly recipe: Recipe } | undefined;
  const tell = (answer: Answer, moved: Transferable[] = []) => self.postMessage(answer, { transfer: moved });
  // Gives way to messages that wait, so that a newer text is known before a long search is begun.
  const pause = () => new Promise((resolve) => setTimeout(resolve));

  self.addEventListener("message", async ({ data }: MessageEvent<Question>) => {
    const { id, mend, text } = data;
    newest = id;
    try {
      if (mend !== undefined) {
        const recipe = known?.text === text ? known.recipe : soundRecipe(text, file);
        tell({ id, text: mendText(recipe, mend).text });
        return;
      }
      await pause();
      if (id !== newest) return;
      const { problems, recipe } = readRecipe(text, file);
      const wrong = problems.map((place): Mark => ({ place, level: "error", sentence: place.sentence }));
      if (recipe === undefined) {
        tell({ id, marks: wrong, causes: [] });
        return;
      }
      known = { text, recipe };
      const expansion = expand(recipe.draft);
      const review = checkRecipe(recipe, { causes: false, expansion });
      const found = review.findings.flatMap(({ message, severity, waived }, i): Mark[] => {
        const place = review.places[i];
        return place && waived === undefined ? [{ place, level: severity, sentence: message }] : [];
      });
      const cloth = drawPixels(expansion.drawdown, coloursOfRecipe(recipe));
      const marks = [...wrong, ...found];
      tell({ id, marks, cloth }, [cloth.data.buffer]);
      await pause();
      if (id !== newest) return;
      // What is read of a broken text is good for looking at; slips are sought in a sound one.
      const causes = problems.length > 0 ? [] : checkRecipe(recipe, { expansion, seconds: 5 }).causes;
      const slips = causes.flatMap(({ column, end, line, message, offset, severity }): Mark[] =>
        line === undefined || column === undefined || offset === undefined || end === undefined
          ? []
          : [{ place: { file, line, column, offset, end }, level: severity, sentence: message }],
      );
      tell({ id, causes, marks: [...slips, ...marks] });
    } catch (error) {
      if (!(error instanceof DrawcordError)) throw error;
      tell({ id, failed: error.toJSON() });
    }
  });
}

/** The page's side. */
function show(): void {
  const make = <Tag extends keyof HTMLElementTagNameMap>(tag: Tag, into: Element) =>
    into.appendChild(document.createElement(tag));
  const editor = make("div", document.body);
  editor.className = "editor";
  const under = make("pre", editor).appendChild(document.createTextNode(""));
  const area = make("textarea", editor);
  area.spellcheck = false;
  area.setAttribute("aria-label", "the recipe");
  const cloth = make("div", document.body);
  cloth.className = "cloth";
  const canvas = make("canvas", cloth);
  const causes = make("ul", cloth);
  const marks = make("ol", cloth);

  const worker = new Worker(new URL("./app.ts", import.meta.url), { type: "module" });
  let id = 0;
  const ask = (mend?: readonly Change[]) => {
    const question: Question = { id: ++id, text: area.value, ...(mend && { mend }) };
    worker.postMessage(question);
  };
  const typed = () => {
    under.data = area.value;
    ask();
  };
  area.addEventListener("input", typed);
  area.addEventListener("scroll", () => {
    (under.parentNode as Element).scrollTop = area.scrollTop;
    (under.parentNode as Element).scrollLeft = area.scrollLeft;
  });

  worker.addEventListener("message", ({ data }: MessageEvent<Answer>) => {
    if (data.id !== id) return;
    if (data.text !== undefined) {
      area.value = data.text;
      typed();
    }
    if (data.cloth !== undefined) paint(data.cloth);
    if (data.marks !== undefined) underline(data.marks);
    if (data.causes !== undefined) causes.replaceChildren(...data.causes.map(causeItem));
    if (data.failed !== undefined) marks.replaceChildren(item(data.failed.message));
    // For who measures: which text the page shows.
    document.body.dataset["shown"] = String(data.id);
    if (data.causes !== undefined) document.body.dataset["explained"] = String(data.id);
  });

  function paint({ data, height, width }: Pixels): void {
    canvas.width = width;
    canvas.height = height;
    canvas.getContext("2d")?.putImageData(new ImageData(data, width, height), 0, 0);
  }

  function underline(all: readonly Mark[]): void {
    for (const level of ["note", "warning", "error"] as const) {
      const ranges = all.filter((mark) => mark.level === level).map(({ place }) => rangeOf(place));
      CSS.highlights.set(level, new Highlight(...ranges));
    }
    const listed = all.slice(0, 50).map(({ place, sentence }) => item(`line ${place.line}: ${sentence}`));
    marks.replaceChildren(...listed);
  }

  function rangeOf({ end, offset }: Range): StaticRange {
    const last = under.data.length;
    const [startOffset, endOffset] = [Math.min(offset, last), Math.min(end.offset, last)];
    return new StaticRange({ startContainer: under, endContainer: under, startOffset, endOffset });
  }

  function item(text: string): HTMLLIElement {
    const li = document.createElement("li");
    li.textContent = text;
    return li;
  }

  function causeItem({ changes, line, message, sure, why }: PlacedCause): HTMLLIElement {
    const li = item(`${line === undefined ? "" : `line ${line}: `}${message} (${why})`);
    const button = make("button", li);
    button.textContent = sure ? "Set it right" : "Try this";
    button.addEventListener("click", () => ask(changes));
    return li;
  }

  area.value = `recipe: 1
title: Diamond
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X 1-8 7-5 5 3-1 X }
lifts:
  picks: 4
  rows: [1, 1-2, 1-3, 2-4, 3-5, 4-6, 5-7, 6-8, 5-7, 4-6, 3-5, 2-4, 1-3, 1-2, 1]
`;
  typed();
}
