/** Slips planted in good drafts, one at a time, and whether the checker finds each where it was planted. */
import { mend } from "@drawcord/causes";
import { check } from "@drawcord/check";
import { expand } from "@drawcord/units";

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

/** Grounds that cut clean on all sides: broken twill on 4 ends, satin on 8. */
const grounds = [
  { raise: [1, 2, 3, 4], sink: [4, 3, 2, 1] },
  { raise: [2, 5, 8, 3, 6, 1, 4, 7], sink: [7, 4, 1, 6, 3, 8, 5, 2] },
].map(({ raise, sink }) => ({
  shafts: raise.length,
  threading: raise.map((_, end) => end + 1),
  steps: raise.map((shaft, step) => ({ raise: [shaft], sink: [sink[step]] })),
}));

/** A point threading, a figure that is its own mirror along the cloth, and a ground that cuts clean. */
function goodDraft(toss) {
  const whole = (least, most) => least + Math.floor(toss() * (most - least + 1));
  const ground = grounds[whole(0, 1)];
  const shafts = whole(6, 12);
  const half = Array.from({ length: shafts }, (_, i) => [i + 1]);
  const rows = Array.from({ length: whole(6, 12) }, (_, row) =>
    half.flat().filter((shaft) => Math.sin(shaft / 2 + row / 3) + toss() > 0.5),
  );
  return {
    ground,
    unitEnds: ground.shafts,
    threading: [...half, ...half.toReversed().slice(1)],
    lifts: [...rows, ...rows.toReversed().slice(1)],
    picksPerRow: ground.shafts,
  };
}

const anyOf = (things, toss) => Math.floor(toss() * things.length);
const shaftsOf = (draft) => Math.max(...draft.threading.flat());
const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);
const isMirror = (sets) => same(sets, sets.toReversed());

/**
 * Each kind of slip: makes it, and says by which findings, and where, it is found. What is \`symmetric\` is as good a draft
 * as before: nobody could tell the slip from a design.
 */
const kinds = {
  "a unit on another shaft"(good, toss) {
    const unit = anyOf(good.threading, toss);
    const was = good.threading[unit][0];
    const shaft = 1 + ((was + Math.floor(toss() * (shaftsOf(good) - 1))) % shaftsOf(good));
    const mirror = good.threading.length - 1 - unit;
    return {
      draft: { ...good, threading: good.threading.with(unit, [shaft]) },
      // The middle unit, from a shaft that no lift draws: the plan is whole either way.
      symmetric: unit === mirror && !good.lifts.flat().includes(was),
      found: (finding) =>
        (finding.rule === "threading-slip" && [unit + 1, mirror + 1].includes(finding.units[0])) ||
        (["unknown-shaft", "idle-shaft"].includes(finding.rule) && finding.shaft === was),
    };
  },
  "a unit twice": (good, toss) => twice(good, "threading", "threading-slip", "units", toss),
  "a unit left out": (good, toss) => leftOut(good, "threading", "threading-slip", "units", toss),
  "a shaft too many or too few in a lift"(good, toss) {
    const row = anyOf(good.lifts, toss);
    const lift = new Set(good.lifts[row]);
    const shaft = 1 + Math.floor(toss() * shaftsOf(good));
    if (!lift.delete(shaft)) lift.add(shaft);
    const mirror = good.lifts.length - 1 - row;
    const lifts = good.lifts.with(
      row,
      [...lift].sort((a, b) => a - b),
    );
    return {
      draft: { ...good, lifts },
      found: ({ rule, rows }) => rule === "lift-slip" && [row + 1, mirror + 1].includes(rows[0]),
      symmetric: isMirror(lifts),
    };
  },
  "a row twice": (good, toss) => twice(good, "lifts", "lift-slip", "rows", toss),
  "a row left out": (good, toss) => leftOut(good, "lifts", "lift-slip", "rows", toss),
  "a shaft drawn that no unit hangs on"(good, toss) {
    const row = anyOf(good.lifts, toss);
    // It moves nothing: the cloth is the same, and the plan asks for what is not there.
    return {
      draft: { ...good, lifts: good.lifts.with(row, [...good.lifts[row], shaftsOf(good) + 1]) },
      found: ({ rule, rows }) => rule === "unknown-shaft" && rows[0] === row + 1,
      planOnly: true,
    };
  },
  "the ground begun a pick late"(good) {
    const { steps } = good.ground;
    return {
      draft: { ...good, ground: { ...good.ground, steps: [...steps.slice(1), steps[0]] } },
      // It is at every border of two rows.
      found: ({ rule, system, rows }) => rule === "open-cut" && system === "warp" && rows[1] === rows[0] + 1,
    };
  },
  "an end of the ground's repeat on another shaft"(good, toss) {
    const { threading, shafts } = good.ground;
    const end = anyOf(threading, toss);
    const shaft = 1 + ((threading[end] + Math.floor(toss() * (shafts - 1))) % shafts);
    return {
      draft: { ...good, ground: { ...good.ground, threading: threading.with(end, shaft) } },
      found: ({ rule, harness, shaft: bare }) =>
        rule === "idle-shaft" && harness === "ground" && bare === threading[end],
    };
  },
  "a tie left out: a treadle that raises nothing": (good, toss) => otherTie(good, toss, "raise", () => []),
  "a tie left out: a treadle that sinks nothing": (good, toss) => otherTie(good, toss, "sink", () => []),
  "a tie to another shaft, raised": (good, toss) => otherTie(good, toss, "raise", anotherShaft),
  "a tie to another shaft, sunk": (good, toss) => otherTie(good, toss, "sink", anotherShaft),
};

/** One entry written twice: the finding, or its counterpart, lies in the run of like entries that it made longer. */
function twice(good, part, rule, places, toss) {
  const at = anyOf(good[part], toss);
  const plan = good[part].toSpliced(at, 0, good[part][at]);
  return {
    draft: { ...good, [part]: plan },
    found: (finding) =>
      finding.rule === rule &&
      [finding[places][0], finding.counterpart].some((place) => sameRun(plan, place - 1, at)),
    symmetric: isMirror(plan),
  };
}

/** One entry left out: the finding, or its counterpart, lies beside the gap or at what the gap would mirror. */
function leftOut(good, part, rule, places, toss) {
  const at = anyOf(good[part], toss);
  const plan = good[part].toSpliced(at, 1);
  // Where the mirror of the entry has come to lie.
  const mirror = good[part].length - 1 - at - (at * 2 < good[part].length - 1 ? 1 : 0);
  return {
    draft: { ...good, [part]: plan },
    found: (finding) =>
      (finding.rule === rule &&
        [finding[places][0], finding.counterpart].some((place) =>
          [at - 1, at, mirror].some((one) => sameRun(plan, place - 1, one)),
        )) ||
      // The only unit on a shaft that the lifts draw.
      (finding.rule === "unknown-shaft" && finding.shaft === good[part][at][0]),
    symmetric: isMirror(plan),
  };
}

/** Whether two places of a plan lie in one run of like entries. */
function sameRun(plan, a, b) {
  const [first, last] = [Math.min(a, b), Math.max(a, b)];
  return first >= 0 && last < plan.length && plan.slice(first, last + 1).every((one) => same(one, plan[a]));
}

function anotherShaft(shaft, other, shafts, toss) {
  const free = Array.from({ length: shafts }, (_, i) => i + 1).filter(
    (one) => one !== shaft && one !== other,
  );
  return [free[anyOf(free, toss)]];
}

/** One tie of one treadle changed: a finding's place, smaller than the cloth, holds an interlacement that it changed. */
function otherTie(good, toss, part, change) {
  const { steps, shafts } = good.ground;
  const step = anyOf(steps, toss);
  const other = part === "raise" ? "sink" : "raise";
  const tie = change(steps[step][part][0], steps[step][other][0], shafts, toss);
  const ground = { ...good.ground, steps: steps.with(step, { ...steps[step], [part]: tie }) };
  const [was, is] = [good, { ...good, ground }].map((draft) => expand(draft).drawdown);
  return {
    draft: { ...good, ground },
    found({ ends, picks }) {
      if (ends === undefined || picks === undefined) return false;
      if (ends[1] - ends[0] + 1 === was.columns && picks[1] - picks[0] + 1 === was.rows) return false;
      for (let pick = picks[0] - 1; pick < picks[1]; pick++) {
        for (let end = ends[0] - 1; end < ends[1]; end++) {
          if (was.get(pick, end) !== is.get(pick, end)) return true;
        }
      }
      return false;
    },
  };
}

/**
 * For each kind of slip: how many were planted that change the cloth (or ask for what is not there) and leave it no longer
 * symmetric, how many of these were found where they were planted, by a finding that the good draft has not, and how many
 * have a mend (which \`mend\` proves by checking again). What changes the cloth and leaves it \`symmetric\` is counted apart.
 */
export function detection(times) {
  const toss = tosser(20261125);
  return Object.entries(kinds).map(([kind, plant]) => {
    const counts = { kind, planted: 0, found: 0, mended: 0, symmetric: 0 };
    for (let i = 0; i < times; i++) {
      const good = goodDraft(toss);
      const { draft, found, symmetric = false, planOnly = false } = plant(good, toss);
      if (!planOnly && sameCloth(good, draft)) continue;
      if (symmetric) {
        counts.symmetric++;
        continue;
      }
      const options = { limits: { float: { threads: suitingFloat(good) } } };
      const before = new Set(check(good, options).findings.map(({ message }) => message));
      counts.planted++;
      if (check(draft, options).findings.some((one) => !before.has(one.message) && found(one)))
        counts.found++;
      if (mend(draft, options).length > 0) counts.mended++;
    }
    return counts;
  });
}

/** The longest float of a draft, over the weft's turns too. */
function suitingFloat(good) {
  const { floats } = check(good);
  const threads = Math.max(...Object.values(floats).map(({ longest }) => longest));
  const { findings } = check(good, { limits: { float: { threads } } });
  return Math.max(threads, ...findings.flatMap((one) => (one.rule === "edge-float" ? [one.measured] : [])));
}

function sameCloth(a, b) {
  const [one, other] = [a, b].map((draft) => expand(draft).drawdown);
  return one.rows === other.rows && one.columns === other.columns && one.equals(other);
}
