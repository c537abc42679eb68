/** Keys of a keyboard, and of a foot pedal, which sends keys. */

/** What a key asks for. */
export type KeyRequest = "forward" | "back" | "forward-row" | "back-row";

const ON = ["ArrowRight", "ArrowDown", "PageDown", " ", "Enter"];
const BACK = ["ArrowLeft", "ArrowUp", "PageUp", "Backspace"];

/** What a press asks for; nothing where the part that has the focus, or a window over the page, wants the key itself. */
export function askedBy(event: KeyboardEvent): KeyRequest | undefined {
  if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return undefined;
  const on = ON.includes(event.key);
  if (!on && !BACK.includes(event.key)) return undefined;
  if (document.querySelector("dialog[open]") !== null) return undefined;
  const held =
    event.target instanceof Element ? event.target.closest("button, a, input, select, summary") : null;
  const presses = event.key === " " || event.key === "Enter";
  if (held !== null && (presses || !(held instanceof HTMLButtonElement))) return undefined;
  if (event.shiftKey) return on ? "forward-row" : "back-row";
  return on ? "forward" : "back";
}
