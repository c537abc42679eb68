/** The page for the loom: puts the plan on the page and answers to touch, keys and pedal. */
import { WARP_CAUTION, WEIGHT_CAUTION } from "@drawcord/units";
import { back, backRow, forward, forwardRow, takeOut, type WarpPlace } from "../place/place.js";
import { stepAt } from "../place/step.js";
import { placeInWords } from "../place/words.js";
import type { FollowPlan } from "../plan/types.js";
import { readAloud } from "./aloud.js";
import { keepAwake } from "./awake.js";
import { byId, say } from "./dom.js";
import { askedBy, type KeyRequest } from "./keys.js";
import { showLog } from "./logbook.js";
import * as sessions from "./session.js";
import { dress, keepSettings, readSettings, type Settings } from "./settings.js";
import { bindSetup } from "./setup.js";
import { show } from "./show.js";
import { askOut, askSlip, askWhere, askWho, openWindow } from "./windows.js";

const plan: FollowPlan = JSON.parse(byId("plan").textContent);
const storage = sessions.deviceStorage();
const asGiven: Settings = {
  size: "1",
  look: "device",
  step: "pick",
  first: "left",
  lengths: plan.inches ? "in" : "cm",
  awake: true,
  aloud: false,
};

let settings = readSettings(asGiven, storage);
let session = sessions.openSession(plan, storage);

const stage = byId("stage");
const toStage = () => stage.focus({ preventScroll: true });

/** Shows the place as it is, and writes it down. */
function settle(): void {
  const { keeps, kept, warning } = session;
  show(plan, kept.place, settings);
  say("weaver", kept.weaver === "" ? "Who weaves?" : kept.weaver);
  const { turn, woven } = kept.place;
  say("warning", [warning, turn + woven === 0 ? (plan.caution ?? "") : ""].join(" ").trim());
  say(
    "kept",
    keeps
      ? "Your place and the log are kept by this browser on this device alone: close the page and open it again, and it goes on where you were. Nothing is sent. To clear the browser's data is to lose the place."
      : "This browser keeps nothing for this page. Write your row down before you close it.",
  );
  byId("on").textContent = onWords(kept.place);
  byId("weave-on").hidden = kept.place.until === undefined;
  byId("out-tool").hidden = kept.place.until !== undefined;
}

function onWords(place: WarpPlace): string {
  if (place.until !== undefined) return "The pick is out";
  const step = stepAt(plan, place);
  if (step === undefined) return forward(plan, place) === place ? "All is woven" : "Begin the next piece";
  if (settings.step === "row") return "Row is woven";
  return step.pickOfRow + 1 === step.picksOfRow ? "Pick is woven, next row" : "Pick is woven";
}

function change(next: sessions.Session): void {
  session = sessions.written(next, plan, storage);
  settle();
}

const moves: Readonly<Record<KeyRequest, (place: WarpPlace) => WarpPlace>> = {
  forward: (place) => forward(plan, place),
  back: (place) => back(plan, place),
  "forward-row": (place) => forwardRow(plan, place),
  "back-row": (place) => backRow(plan, place),
};

function move(asked: KeyRequest): void {
  const byRow = settings.step === "row" && !asked.endsWith("-row");
  const next = moves[byRow ? (`${asked}-row` as KeyRequest) : asked](session.kept.place);
  change(sessions.moved(session, next, Date.now()));
  if (settings.aloud) readAloud(placeInWords(plan, next));
}

function jump(place: WarpPlace): void {
  change(sessions.moved(session, place, Date.now(), true));
}

const tools: Readonly<Record<string, () => void>> = {
  forward: () => move("forward"),
  back: () => move("back"),
  go: () => askWhere(plan, session.kept.place, jump),
  slip: () =>
    askSlip(
      plan,
      session.kept,
      (pick, note) => change(sessions.marked(session, session.kept.place.turn, pick, note, Date.now())),
      (index) => change(sessions.unmarked(session, index)),
    ),
  out: () => askOut(plan, session.kept, (until) => jump(takeOut(session.kept.place, until))),
  "weave-on": () => jump({ turn: session.kept.place.turn, woven: session.kept.place.woven }),
  weavers: () => askWho(session.kept, (name) => change(sessions.takenOver(session, name))),
  log: () => {
    showLog(plan, session.kept);
    openWindow("log");
  },
  setup: () => openWindow("setup"),
  print: () => window.print(),
  forget: () => {
    if (!window.confirm("Forget the place, the log and the slips of this warp?")) return;
    change(sessions.begunAnew(session));
    showLog(plan, session.kept);
  },
};

document.addEventListener("click", (event) => {
  const pressed = event.target instanceof Element ? event.target.closest("[data-do]") : null;
  if (!(pressed instanceof HTMLElement)) return;
  tools[pressed.dataset["do"] ?? ""]?.();
  // A pedal that sends a space must not press the button that a finger pressed last.
  if (event.detail > 0 && document.querySelector("dialog[open]") === null) toStage();
});

document.addEventListener("keydown", (event) => {
  const asked = askedBy(event);
  if (asked === undefined) return;
  event.preventDefault();
  move(asked);
});

const stayAwake = () => {
  if (document.visibilityState === "visible") void keepAwake(settings.awake);
};
document.addEventListener("visibilitychange", stayAwake);

// Another window of the same page went on: this one follows.
window.addEventListener("storage", () => {
  session = sessions.openSession(plan, storage);
  settle();
});

bindSetup(plan, settings, (chosen) => {
  settings = chosen;
  keepSettings(settings, storage);
  dress(settings);
  stayAwake();
  settle();
});

say("title", plan.title);
say("caution", `${WEIGHT_CAUTION} ${WARP_CAUTION}`);
dress(settings);
settle();
stayAwake();
toStage();
