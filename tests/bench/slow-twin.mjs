/**
 * The check written plainly: a byte for every interlacement, and a pass over the bytes for every number. It finds the
 * numbers of the report, and is what the words are measured against.
 */

export function slowCheck(draft) {
  const cloth = expandToBytes(draft);
  const warpRuns = runsAlongEnds(cloth);
  const weftRuns = runsAlongPicks(cloth);
  return {
    floats: {
      warpFace: tally(warpRuns[1]),
      warpBack: tally(warpRuns[0]),
      weftFace: tally(weftRuns[0]),
      weftBack: tally(weftRuns[1]),
    },
    cut: cuts(cloth),
    balance: {
      warpFaceShare: share(cloth, cloth.raised),
      drawnShare: share(cloth, cloth.drawn),
      intersections: intersections(cloth),
      areas: areas(draft),
    },
    layers: layers(cloth),
  };
}

/** Works a draft out to two bytes an interlacement: whether it is raised, and whether its unit is drawn. */
function expandToBytes({ ground, unitEnds, threading, lifts, picksPerRow }) {
  const ends = threading.length * unitEnds;
  const picks = lifts.length * picksPerRow;
  const raised = new Uint8Array(ends * picks);
  const drawn = new Uint8Array(ends * picks);
  for (let pick = 0; pick < picks; pick++) {
    const { raise, sink } = ground.steps[pick % ground.steps.length];
    const lift = new Set(lifts[Math.floor(pick / picksPerRow)]);
    const drawnUnits = threading.map((own) => own.some((one) => lift.has(one)));
    for (let end = 0; end < ends; end++) {
      const shaft = ground.threading[end % ground.threading.length];
      const isDrawn = drawnUnits[Math.floor(end / unitEnds)];
      drawn[pick * ends + end] = isDrawn ? 1 : 0;
      raised[pick * ends + end] = raise.includes(shaft) || (isDrawn && !sink.includes(shaft)) ? 1 : 0;
    }
  }
  return { ends, picks, raised, drawn };
}

function runsAlongPicks({ ends, picks, raised }) {
  const counts = [new Float64Array(ends + 1), new Float64Array(ends + 1)];
  for (let pick = 0; pick < picks; pick++) {
    let run = 1;
    for (let end = 1; end < ends; end++) {
      if (raised[pick * ends + end] === raised[pick * ends + end - 1]) run++;
      else {
        counts[raised[pick * ends + end - 1]][run]++;
        run = 1;
      }
    }
    counts[raised[pick * ends + ends - 1]][run]++;
  }
  return counts;
}

function runsAlongEnds({ ends, picks, raised }) {
  const counts = [new Float64Array(picks + 1), new Float64Array(picks + 1)];
  for (let end = 0; end < ends; end++) {
    let run = 1;
    for (let pick = 1; pick < picks; pick++) {
      if (raised[pick * ends + end] === raised[(pick - 1) * ends + end]) run++;
      else {
        counts[raised[(pick - 1) * ends + end]][run]++;
        run = 1;
      }
    }
    counts[raised[(picks - 1) * ends + end]][run]++;
  }
  return counts;
}

function tally(counts) {
  const lengths = {};
  let longest = 0;
  counts.forEach((count, length) => {
    if (count === 0) return;
    lengths[length] = count;
    longest = length;
  });
  return { longest, lengths };
}

function cuts({ ends, picks, raised, drawn }) {
  const side = { cutting: 0, open: 0 };
  const across = { cutting: 0, open: 0 };
  for (let pick = 0; pick < picks; pick++) {
    for (let end = 0; end < ends; end++) {
      const at = pick * ends + end;
      if (end + 1 < ends && drawn[at] !== drawn[at + 1])
        side[raised[at] === raised[at + 1] ? "open" : "cutting"]++;
      if (pick + 1 < picks && drawn[at] !== drawn[at + ends]) {
        across[raised[at] === raised[at + ends] ? "open" : "cutting"]++;
      }
    }
  }
  return { side, across };
}

function share({ ends, picks }, cells) {
  let sum = 0;
  for (let i = 0; i < cells.length; i++) sum += cells[i];
  return sum / (ends * picks);
}

function intersections({ ends, picks, raised }) {
  const ofEnds = new Array(ends).fill(0);
  const ofPicks = new Array(picks).fill(0);
  for (let pick = 0; pick < picks; pick++) {
    for (let end = 0; end < ends; end++) {
      const at = pick * ends + end;
      if (end > 0 && raised[at] !== raised[at - 1]) ofPicks[pick]++;
      if (pick > 0 && raised[at] !== raised[at - ends]) ofEnds[end]++;
    }
  }
  return { ends: spread(ofEnds), picks: spread(ofPicks) };
}

function spread(counts) {
  const sum = counts.reduce((a, b) => a + b, 0);
  return { least: Math.min(...counts), most: Math.max(...counts), mean: sum / counts.length };
}

/** Floods each patch of units x rows in turn. */
function areas({ threading, lifts }) {
  const units = threading.length;
  const drawn = new Uint8Array(units * lifts.length);
  lifts.forEach((shafts, row) => {
    const lift = new Set(shafts);
    threading.forEach((own, unit) => {
      drawn[row * units + unit] = own.some((shaft) => lift.has(shaft)) ? 1 : 0;
    });
  });
  const seen = new Uint8Array(drawn.length);
  let count = 0;
  let largest = 0;
  for (let start = 0; start < drawn.length; start++) {
    if (seen[start]) continue;
    count++;
    let size = 0;
    const stack = [start];
    seen[start] = 1;
    while (stack.length > 0) {
      const at = stack.pop();
      size++;
      const unit = at % units;
      const beside = [at - units, at + units];
      if (unit > 0) beside.push(at - 1);
      if (unit < units - 1) beside.push(at + 1);
      for (const other of beside) {
        if (other < 0 || other >= drawn.length || seen[other] || drawn[other] !== drawn[at]) continue;
        seen[other] = 1;
        stack.push(other);
      }
    }
    largest = Math.max(largest, size);
  }
  return { count, largest };
}

/** The layers by the sorted sums (C. R. J. Clapham, When a fabric hangs together, Bulletin of the
 * London Mathematical Society 12, 1980): one more than the (i, j) at which the cloth falls apart. */
function layers({ ends, picks, raised }) {
  const over = new Array(picks).fill(0);
  const under = new Array(ends).fill(0);
  for (let pick = 0; pick < picks; pick++) {
    for (let end = 0; end < ends; end++) {
      if (raised[pick * ends + end]) continue;
      over[pick]++;
      under[end]++;
    }
  }
  over.sort((a, b) => b - a);
  under.sort((a, b) => a - b);
  let apart = 0;
  let left = 0;
  for (let i = 0; i <= picks; i++) {
    if (i > 0) left += over[i - 1];
    let right = 0;
    for (let j = 0; j <= ends; j++) {
      if (j > 0) right += under[j - 1];
      if (left - right === i * (ends - j)) apart++;
    }
  }
  return apart - 1;
}
