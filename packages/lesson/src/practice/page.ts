import type { Recipe } from "@drawcord/files";
import { type Block, plainText, scriptedPage, type Text, toSvg } from "@drawcord/page";
import { exerciseOf } from "../exercise.js";
import { script, scriptHash, style, styleHash } from "../generated/practice.js";
import type { Level, Task } from "../task.js";
import { judgedOf } from "./checked.js";
import { practicePlan } from "./plan.js";

/** What stands on a page to practise on. */
export interface PracticeOptions {
  /** Which place of the cloth and which numbers; default 1. */
  readonly seed?: number;
  /** The level of the tasks; default 1. */
  readonly level?: Level;
  /** Kinds of task that are set below the loom; default none. */
  readonly tasks?: readonly string[];
  /** Whether the page says if an answer is right; the answers are then in the page. Default false. */
  readonly check?: boolean;
}

/**
 * A small draft as one page that needs nothing else: press a treadle, draw handles, see which ends rise and why, throw picks;
 * below it tasks, whose answers the page judges where the teacher allows it. One script and one style, let in by their hashes.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param options which place, which tasks, and whether answers are judged
 * @throws {LessonError} `unknown-task`, `bad-seed`
 * @throws {UnitsError} for a draft that cannot be worked out
 * @example practicePage(recipe).startsWith("<!doctype html>") // true
 */
export function practicePage(recipe: Recipe, options: PracticeOptions = {}): string {
  const { check = false, level = 1, seed = 1, tasks = [] } = options;
  const plan = practicePlan(recipe, seed);
  const set = tasks.length === 0 ? [] : exerciseOf(recipe, { seed, level, tasks }).sheets[0]!.tasks;
  const judged = check ? set.map(({ answers }) => answers.map((answer) => judgedOf(answer) ?? null)) : [];
  const title = escapeHtml(plan.title);
  return scriptedPage({
    title: `${plan.title}: to practise on`,
    ...{ script, scriptHash, style, styleHash },
    data: { plan, judged },
    body: `<header><h1>${title}</h1><p>A piece of its loom to practise on: ${plan.ends.length} ends. Press a treadle, draw handles, look which ends rise, throw a pick.</p></header>
<main>
<noscript><p>This page moves its loom with a script, and this browser runs none.</p></noscript>
<section class="loom" aria-label="The loom">
<div class="hands"><h2 id="handles-title">Handles</h2><div id="handles" role="group" aria-labelledby="handles-title"></div>
<h2 id="treadles-title">Treadles</h2><div id="treadles" role="group" aria-labelledby="treadles-title"></div>
<div class="picks"><button type="button" id="throw">Throw a pick</button><button type="button" id="out">Take a pick out</button></div>
<p id="said" role="status"></p></div>
<div class="cloth"><h2>The cloth</h2><div id="cloth"></div></div>
<div class="why"><h2 id="why-title">Which ends rise, and why</h2><div class="scroll" role="region" aria-labelledby="why-title" tabindex="0"><table><thead><tr><th scope="col">End</th><th scope="col">Shaft</th><th scope="col">Unit</th><th scope="col">Now</th><th scope="col">Why</th></tr></thead><tbody id="ends"></tbody></table></div></div>
</section>
${set.map((task, i) => taskHtml(task, i, check)).join("\n")}
</main>`,
  });
}

function taskHtml({ answers, ask, title }: Task, i: number, check: boolean): string {
  const id = `task-${i + 1}`;
  const fields = answers.map(({ own, question }, k) => {
    const field = own
      ? `<textarea id="${id}-${k}" rows="3"></textarea>`
      : `<input id="${id}-${k}" autocomplete="off">`;
    return `<p><label for="${id}-${k}">${escapeHtml(question)}</label>${field}<span class="mark" id="${id}-${k}-mark"></span></p>`;
  });
  const button = check
    ? `<p><button type="submit">Look whether it is right</button></p><p role="status" id="${id}-said"></p>`
    : "";
  return `<section class="task" aria-labelledby="${id}-title"><h2 id="${id}-title">${i + 1}. ${escapeHtml(title)}</h2>
${ask.map((block, k) => blockHtml(block, `${id}-block-${k}`)).join("\n")}
<form id="${id}" data-task="${i}">${fields.join("\n")}
${button}</form></section>`;
}

function blockHtml(block: Block, id: string): string {
  const text = (from: Text) => escapeHtml(plainText(from));
  if (block.kind === "paragraph") return `<p>${text(block.text)}</p>`;
  if (block.kind === "pictures") {
    return block.pictures
      .map(({ alt, caption, drawing }, i) => {
        const svg = toSvg(drawing, { alt, id: `${id}-${i}` });
        return `<figure><div class="scroll" role="region" aria-label="${escapeHtml(caption)}" tabindex="0">${svg}</div><figcaption>${escapeHtml(caption)}</figcaption></figure>`;
      })
      .join("\n");
  }
  if (block.kind !== "table") return "";
  const head = block.columns.map(({ title }) => `<th scope="col">${escapeHtml(title)}</th>`).join("");
  const rows = block.rows.map((row) => `<tr>${row.map((cell) => `<td>${text(cell)}</td>`).join("")}</tr>`);
  return `<div class="scroll" role="region" aria-label="${escapeHtml(block.caption)}" tabindex="0"><table><caption>${escapeHtml(block.caption)}</caption><thead><tr>${head}</tr></thead><tbody>${rows.join("")}</tbody></table></div>`;
}

function escapeHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
