/**
 * The check written plainly: a byte for every interlacement, and a pass over the bytes for every number. It is what the
 * words are measured against, and finds the same numbers.
 */

/** The numbers of the report that need a pass over the cloth. */
export function slowCheck(draft) {
  const cloth = expandToBytes(draft);
  return { floats: floats(cloth), cut: cuts(cloth), balance: balance(cloth), integrity: integrity(cloth) };
}

/** Works a draft out to one byte an interlacement: bit 0 raised, and apart from it the drawn state. */
function expandToBytes({ ground, unitEnds, threading, lifts, picksPerRow }) {
  const ends = threading.length * unitEnds;
  const picks = lifts.length * picksPerRow;
  const raised = new Uint8Array(ends * picks);
  const drawn = new Uint8Array(ends * picks);
  const lifted = new Uint8Array(1 + Math.max(...threading.flat(), ...lifts.map((lift) => lift.at(-1) ?? 0)));
  for (let pick = 0; pick < picks; pick++) {
    const { raise, sink } = ground.steps[pick % ground.steps.length];
    lifted.fill(0);
    for (const shaft of lifts[Math.floor(pick / picksPerRow)]) lifted[shaft] = 1;
    for (let end = 0; end < ends; end++) {
      const shaft = ground.threading[end % ground.threading.length];
      const isDrawn = threading[Math.floor(end / unitEnds)].some((one) => lifted[one] === 1);
      drawn[pick * ends + end] = isDrawn ? 1 : 0;
      raised[pick * ends + end] = raise.includes(shaft) || (isDrawn && !sink.includes(shaft)) ? 1 : 0;
    }
  }
  return { ends, picks, raised, drawn };
}

/** A run-length pass along the picks and one along the ends. */
function floats({ ends, picks, raised }) {
  const weft = runs(raised, picks, ends, ends, 1);
  const warp = runs(raised, ends, picks, 1, ends);
  return { warpFace: warp[1], warpBack: warp[0], weftFace: weft[0], weftBack: weft[1] };
}

function runs(cells, threads, length, threadStep, step) {
  const counts = [new Float64Array(length + 1), new Float64Array(length + 1)];
  for (let thread = 0; thread < threads; thread++) {
    let at = thread * threadStep;
    let state = cells[at];
    let run = 0;
    for (let i = 0; i < length; i++, at += step) {
      if (cells[at] !== state) {
        counts[state][run]++;
        state = cells[at];
        run = 0;
      }
      run++;
    }
    counts[state][run]++;
  }
  return counts.map(tally);
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

function balance({ ends, picks, raised, drawn }) {
  const sum = (cells) => cells.reduce((total, cell) => total + cell, 0);
  return { warpFaceShare: sum(raised) / (ends * picks), drawnShare: sum(drawn) / (ends * picks) };
}

/** Loose threads, by looking along each. */
function integrity({ ends, picks, raised }) {
  const looseEnds = [];
  const loosePicks = [];
  for (let end = 0; end < ends; end++) {
    let pick = 1;
    while (pick < picks && raised[pick * ends + end] === raised[end]) pick++;
    if (pick >= picks) looseEnds.push(end + 1);
  }
  for (let pick = 0; pick < picks; pick++) {
    let end = 1;
    while (end < ends && raised[pick * ends + end] === raised[pick * ends]) end++;
    if (end >= ends) loosePicks.push(pick + 1);
  }
  return { looseEnds, loosePicks };
}
