/** Slips planted in good drafts, one at a time, and whether the checker finds each where it was planted. */
import { check, mend } from "@drawcord/check";

/** Numbers from 0 to below 1, the same in every run (mulberry32, from memory). */
function tosser(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A point threading, a figure that is its own mirror along the cloth, and a ground that cuts clean. */
function goodDraft(toss) {
  const whole = (least, most) => least + Math.floor(toss() * (most - least + 1));
  const shafts = whole(6, 12);
  const half = Array.from({ length: shafts }, (_, i) => [i + 1]);
  const rows = Array.from({ length: whole(6, 12) }, (_, row) =>
    half.flat().filter((shaft) => Math.sin(shaft / 2 + row / 3) + toss() > 0.5),
  );
  return {
    ground: {
      shafts: 4,
      threading: [1, 2, 3, 4],
      steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
    },
    unitEnds: 4,
    threading: [...half, ...half.toReversed().slice(1)],
    lifts: [...rows, ...rows.toReversed().slice(1)],
    picksPerRow: 4,
  };
}

/** Each kind of slip: makes it, and says in which rules' findings, and where, it should show. */
const kinds = {
  "a unit on another shaft"(draft, toss) {
    const unit = Math.floor(toss() * draft.threading.length);
    const shaft = 1 + (draft.threading[unit][0] % Math.max(...draft.threading.flat()));
    const mirror = draft.threading.length - 1 - unit;
    return {
      draft: { ...draft, threading: draft.threading.with(unit, [shaft]) },
      found: ({ rule, units }) => rule === "threading-slip" && [unit + 1, mirror + 1].includes(units[0]),
      shows: unit !== mirror,
    };
  },
  "a unit twice"(draft, toss) {
    const unit = Math.floor(toss() * draft.threading.length);
    const threading = draft.threading.toSpliced(unit, 0, draft.threading[unit]);
    return {
      draft: { ...draft, threading },
      found: ({ rule }) => rule === "threading-slip",
      shows: !isMirror(threading),
    };
  },
  "a shaft too many or too few in a lift"(draft, toss) {
    const row = Math.floor(toss() * draft.lifts.length);
    const shaft = 1 + Math.floor(toss() * Math.max(...draft.threading.flat()));
    const lift = new Set(draft.lifts[row]);
    if (!lift.delete(shaft)) lift.add(shaft);
    const mirror = draft.lifts.length - 1 - row;
    return {
      draft: {
        ...draft,
        lifts: draft.lifts.with(
          row,
          [...lift].sort((a, b) => a - b),
        ),
      },
      found: ({ rule, rows }) => rule === "lift-slip" && [row + 1, mirror + 1].includes(rows[0]),
      shows: row !== mirror,
    };
  },
  "a row twice"(draft, toss) {
    const row = Math.floor(toss() * draft.lifts.length);
    const lifts = draft.lifts.toSpliced(row, 0, draft.lifts[row]);
    return {
      draft: { ...draft, lifts },
      found: ({ rule }) => rule === "lift-slip",
      shows: !isMirror(lifts),
    };
  },
  "the ground begun a pick late"(draft) {
    const { steps } = draft.ground;
    return {
      draft: { ...draft, ground: { ...draft.ground, steps: [...steps.slice(1), ...steps.slice(0, 1)] } },
      found: ({ rule }) => rule === "open-cut",
      shows: true,
    };
  },
  "a tie left out: a treadle that raises nothing"(draft, toss) {
    return withoutTie(draft, Math.floor(toss() * 4), "raise");
  },
  "a tie left out: a treadle that sinks nothing"(draft, toss) {
    return withoutTie(draft, Math.floor(toss() * 4), "sink");
  },
  "a shaft that no unit hangs on"(draft, toss) {
    const row = Math.floor(toss() * draft.lifts.length);
    const lift = [...draft.lifts[row], Math.max(...draft.threading.flat()) + 1];
    return {
      draft: { ...draft, lifts: draft.lifts.with(row, lift) },
      found: ({ rule, rows }) => rule === "unknown-shaft" && rows[0] === row + 1,
      shows: true,
    };
  },
};

/** Whether units or rows read the same from both ends. */
function isMirror(sets) {
  return sets.every((set, i) => String(set) === String(sets.at(-1 - i)));
}

/** A treadle without its tie binds nothing on its pick: ends or picks float over it, or edges stop cutting there. */
function withoutTie(draft, step, part) {
  const steps = draft.ground.steps.map((one, i) => (i === step ? { ...one, [part]: [] } : one));
  return {
    draft: { ...draft, ground: { ...draft.ground, steps } },
    found: ({ rule }) =>
      ["open-cut", "float-length", "loose-thread", "layers", "uneven-take-up", "edge-float"].includes(rule),
    shows: true,
  };
}

/** A limit that suits the ground: twill on 4 ends floats over 3, and over up to 6 at a border. */
const options = { limits: { float: { threads: 6 } } };

/**
 * For each kind of slip: how many were planted that change the cloth, and how many were found where they were planted,
 * and how many have a mend (which `mend` proves by checking again).
 */
export function detection(times) {
  const toss = tosser(20261125);
  return Object.entries(kinds).map(([kind, plant]) => {
    let planted = 0;
    let found = 0;
    let mended = 0;
    for (let i = 0; i < times; i++) {
      const good = goodDraft(toss);
      const slip = plant(good, toss);
      // What leaves the cloth, or its symmetry, as it was is no slip.
      if (!slip.shows || !changesCloth(good, slip.draft)) continue;
      const before = new Set(check(good, options).findings.map(({ message }) => message));
      planted++;
      if (check(slip.draft, options).findings.some((one) => !before.has(one.message) && slip.found(one)))
        found++;
      if (mend(slip.draft, options).length > 0) mended++;
    }
    return { kind, planted, found, mended };
  });
}

function changesCloth(a, b) {
  return JSON.stringify(a) !== JSON.stringify(b);
}
