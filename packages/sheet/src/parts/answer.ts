import type { Words } from "@drawcord/page";

/** A text that a class is to find out. */
export function answer(text: string): Words[] {
  return [{ text, answer: true }];
}
