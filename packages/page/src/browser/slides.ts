/** The script of slides: which one is shown, and the keys that step. */
const slides = [...document.querySelectorAll<HTMLElement>(".slide")];
const where = document.getElementById("where")!;

/** The slide that the address names, or the first. */
let shown = Math.max(
  0,
  slides.findIndex(({ id }) => `#${id}` === location.hash),
);

function show(next: number): void {
  shown = Math.min(slides.length - 1, Math.max(0, next));
  for (const [i, slide] of slides.entries()) slide.hidden = i !== shown;
  where.textContent = `${shown + 1} of ${slides.length}`;
  history.replaceState(null, "", `#slide-${shown + 1}`);
  scrollTo(0, 0);
  slides[shown]!.focus({ preventScroll: true });
}

/** Where a key leads from a slide. */
const steps: Readonly<Record<string, (from: number) => number>> = {
  ArrowRight: (from) => from + 1,
  ArrowDown: (from) => from + 1,
  PageDown: (from) => from + 1,
  " ": (from) => from + 1,
  ArrowLeft: (from) => from - 1,
  ArrowUp: (from) => from - 1,
  PageUp: (from) => from - 1,
  Home: () => 0,
  End: () => slides.length - 1,
};

document.addEventListener("keydown", (event) => {
  const step = steps[event.key];
  const onButton = event.key === " " && event.target instanceof HTMLButtonElement;
  if (step === undefined || onButton || event.ctrlKey || event.altKey || event.metaKey) return;
  event.preventDefault();
  show(step(shown));
});
document.getElementById("back")!.addEventListener("click", () => show(shown - 1));
document.getElementById("on")!.addEventListener("click", () => show(shown + 1));
document.body.classList.add("stepped");
show(shown);
