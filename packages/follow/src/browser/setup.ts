/** The window in which the page is set up. */
import type { FollowPlan } from "../plan/types.js";
import { hasVoice } from "./aloud.js";
import { byId, made, say } from "./dom.js";
import type { Settings } from "./settings.js";

const SELECTS = ["size", "look", "step", "first", "lengths"] as const;
const TICKS = ["awake", "aloud"] as const;

/** Fills the window, and calls back with every choice at once. */
export function bindSetup(plan: FollowPlan, settings: Settings, chosen: (settings: Settings) => void): void {
  let now = settings;
  const choose = (change: Partial<Settings>) => {
    now = { ...now, ...change };
    chosen(now);
  };
  for (const name of SELECTS) {
    const select = byId<HTMLSelectElement>(`set-${name}`);
    select.value = settings[name];
    select.onchange = () => choose({ [name]: select.value } as Partial<Settings>);
  }
  for (const name of TICKS) {
    const box = byId<HTMLInputElement>(`set-${name}`);
    box.checked = settings[name];
    box.onchange = () => choose({ [name]: box.checked });
  }
  byId<HTMLInputElement>("set-aloud").disabled = !hasVoice();
  byId("ties").replaceChildren(
    ...plan.treadles.map(({ raise, sink }, i) => {
      const moves = [
        ...(raise.length > 0 ? [`raises ${raise.join(" ")}`] : []),
        ...(sink.length > 0 ? [`sinks ${sink.join(" ")}`] : []),
      ];
      return made("li", `treadle ${i + 1} ${moves.join(", ")}`);
    }),
    made("li", `as they hang, left to right: ${plan.hanging.join(" ")}`),
  );
  say("set-said", hasVoice() ? "" : "This browser has no voice to read with.");
}
