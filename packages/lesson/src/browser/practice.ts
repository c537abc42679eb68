/** The script of the page to practise on: what is pressed and drawn, the shed that it makes, and the picks thrown. */
import { isRight, type Judged } from "../practice/checked.js";
import type { PracticePlan } from "../practice/plan.js";
import { type ShedEnd, shedOf } from "../practice/shed.js";

const at = (id: string) => document.getElementById(id)!;
const { judged, plan }: { plan: PracticePlan; judged: readonly (readonly (Judged | null)[])[] } = JSON.parse(
  at("plan").textContent,
);

/** As many picks are kept in sight. */
const MOST_PICKS = 40;
const SQUARE = 18;
const SVG = "http://www.w3.org/2000/svg";

let treadle = 0;
let drawn: readonly number[] = [];
const picks: (readonly boolean[])[] = [];

function button(label: string, press: () => void, title: string): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = label;
  made.setAttribute("aria-label", title);
  made.addEventListener("click", press);
  return made;
}

const listOf = (shafts: readonly number[]) => (shafts.length === 0 ? "none" : shafts.join(", "));

const treadles = plan.treadles.map(({ raise, sink }, i) =>
  button(
    `${i + 1}`,
    () => {
      treadle = treadle === i + 1 ? 0 : i + 1;
      show();
    },
    `Treadle ${i + 1}: raises ${listOf(raise)}, sinks ${listOf(sink)}`,
  ),
);
const handles = plan.handles.map((handle) =>
  button(
    `${handle}`,
    () => {
      drawn = drawn.includes(handle)
        ? drawn.filter((one) => one !== handle)
        : [...drawn, handle].sort((a, b) => a - b);
      show();
    },
    `Handle ${handle}: draws ${plan.units
      .filter(({ hangsOn }) => hangsOn.includes(handle))
      .map(({ number }) => `unit ${number}`)
      .join(", ")}`,
  ),
);
at("treadles").append(...treadles);
at("handles").append(...handles);

function show(): void {
  for (const [i, one] of treadles.entries()) one.setAttribute("aria-pressed", `${treadle === i + 1}`);
  for (const [i, one] of handles.entries())
    one.setAttribute("aria-pressed", `${drawn.includes(plan.handles[i]!)}`);
  const shed = shedOf(plan, treadle, drawn);
  at("ends").replaceChildren(...shed.map(rowOf));
  const up = shed.flatMap(({ raised }, end) => (raised ? [end + 1] : []));
  say(
    `${treadle === 0 ? "No treadle" : `Treadle ${treadle}`}, handles ${listOf(drawn)}: ends ${listOf(up)} rise.`,
  );
  drawCloth(shed);
}

function rowOf({ cause, raised, why }: ShedEnd, i: number): HTMLTableRowElement {
  const { shaft, unit } = plan.ends[i]!;
  const row = document.createElement("tr");
  row.className = cause;
  const cells = [`${shaft}`, unit === 0 ? "none" : `${unit}`, raised ? "up" : "down", why];
  const head = document.createElement("th");
  head.scope = "row";
  head.textContent = `${i + 1}`;
  row.append(
    head,
    ...cells.map((text) => {
      const cell = document.createElement("td");
      cell.textContent = text;
      return cell;
    }),
  );
  return row;
}

/** The picks that lie in the cloth, the first at the bottom, and above them the shed that is open. */
function drawCloth(shed: readonly ShedEnd[]): void {
  const seen = picks.slice(-MOST_PICKS);
  const width = plan.ends.length * SQUARE;
  const height = (seen.length + 1) * SQUARE + 6;
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
  svg.setAttribute("width", `${width}`);
  svg.setAttribute("height", `${height}`);
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", `${picks.length} picks woven; the shed that is open stands above them.`);
  const square = (end: number, y: number, up: boolean, open: boolean) => {
    const rect = document.createElementNS(SVG, "rect");
    rect.setAttribute("x", `${end * SQUARE + 0.5}`);
    rect.setAttribute("y", `${y + 0.5}`);
    rect.setAttribute("width", `${SQUARE - 1}`);
    rect.setAttribute("height", `${SQUARE - 1}`);
    rect.setAttribute("class", `${up ? "up" : "down"}${open ? " open" : ""}`);
    svg.append(rect);
  };
  for (const [end, { raised }] of shed.entries()) square(end, 0, raised, true);
  for (const [i, pick] of seen.entries()) {
    for (const [end, up] of pick.entries()) square(end, height - (i + 1) * SQUARE, up, false);
  }
  at("cloth").replaceChildren(svg);
}

function say(text: string): void {
  at("said").textContent = text;
}

at("throw").addEventListener("click", () => {
  picks.push(shedOf(plan, treadle, drawn).map(({ raised }) => raised));
  show();
  say(`Pick ${picks.length} is thrown.`);
});
at("out").addEventListener("click", () => {
  const there = picks.pop() !== undefined;
  show();
  say(there ? `Pick ${picks.length + 1} is taken out.` : "There is no pick to take out.");
});

for (const form of document.querySelectorAll<HTMLFormElement>("form[data-task]")) {
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const answers = judged[Number(form.dataset["task"])] ?? [];
    let right = 0;
    for (const [k, answer] of answers.entries()) {
      const field = at(`${form.id}-${k}`) as HTMLInputElement | HTMLTextAreaElement;
      const mark = at(`${form.id}-${k}-mark`);
      if (answer === null) mark.textContent = "show this one to your teacher";
      else if (isRight(answer, field.value)) {
        right++;
        mark.textContent = "right";
      } else mark.textContent = field.value.trim() === "" ? "nothing written" : "not yet";
    }
    const asked = answers.filter((answer) => answer !== null).length;
    at(`${form.id}-said`).textContent = `${right} of ${asked} are right.`;
  });
}

show();
