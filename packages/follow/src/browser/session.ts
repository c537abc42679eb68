/** What is kept on the device, and every change of it. */
import { type Kept, keptUnder, readKept } from "../place/kept.js";
import { logged } from "../place/log.js";
import { START, type WarpPlace } from "../place/place.js";
import type { FollowPlan } from "../plan/types.js";

/** The warp on this device: where it is, and how it is written down. */
export interface Session {
  readonly kept: Kept;
  /** Whether the browser keeps what is written down. */
  readonly keeps: boolean;
  /** What the weaver must know before she goes on; empty for nothing. */
  readonly warning: string;
}

const PROBE = "drawcord follow probe";

/** The browser's own store; none where it is shut off. */
export function deviceStorage(): Storage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

/** Takes up the warp where it was left. */
export function openSession(plan: FollowPlan, storage: Storage | undefined): Session {
  let text: string | null = null;
  try {
    text = storage?.getItem(keptUnder(plan)) ?? null;
  } catch {
    // Then nothing is kept, which is said below.
  }
  const { kept, changed, unreadable } = readKept(plan, text);
  const warning = changed
    ? "The recipe has changed since you left it here. Look whether the place still holds before you weave on."
    : unreadable
      ? "What was kept of this warp cannot be read, so the page begins at the first pick."
      : "";
  return { kept, keeps: canKeep(storage), warning };
}

/** Whether the browser keeps what is written down. */
function canKeep(storage: Storage | undefined): boolean {
  try {
    storage?.setItem(PROBE, "");
    storage?.removeItem(PROBE);
    return storage !== undefined;
  } catch {
    return false;
  }
}

/** Writes a session down. */
export function written(session: Session, plan: FollowPlan, storage: Storage | undefined): Session {
  try {
    if (storage === undefined) return { ...session, keeps: false };
    storage.setItem(keptUnder(plan), JSON.stringify(session.kept));
    return { ...session, keeps: true };
  } catch {
    return { ...session, keeps: false };
  }
}

/** Moves on; weaving and taking out are logged, a jump is not. */
export function moved({ kept, keeps }: Session, place: WarpPlace, now: number, jump = false): Session {
  const log = jump ? kept.log : logged(kept.log, kept.place, place, kept.weaver, now);
  return { kept: { ...kept, place, log }, keeps, warning: "" };
}

/** A slip is marked at a pick. */
export function marked(session: Session, turn: number, pick: number, note: string, at: number): Session {
  const { marks, weaver } = session.kept;
  return { ...session, kept: { ...session.kept, marks: [...marks, { weaver, turn, pick, note, at }] } };
}

/** A marked slip is put right. */
export function unmarked(session: Session, index: number): Session {
  const marks = session.kept.marks.filter((_, i) => i !== index);
  return { ...session, kept: { ...session.kept, marks } };
}

/** Another weaver sits down. */
export function takenOver(session: Session, weaver: string): Session {
  const { weavers } = session.kept;
  const known = weaver === "" || weavers.includes(weaver) ? weavers : [...weavers, weaver];
  return { ...session, kept: { ...session.kept, weaver, weavers: known } };
}

/** The first pick, and an empty log; who weaves stays. */
export function begunAnew(session: Session): Session {
  return { ...session, kept: { ...session.kept, place: START, log: [], marks: [] }, warning: "" };
}
