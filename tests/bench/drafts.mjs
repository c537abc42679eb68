/**
 * Drafts to measure by. The figure is drawn by a few waves laid over each other, so that its areas have the sizes of
 * those in cloth and no two rows need be alike.
 */

/** Broken twill on 4 ends in the order that cuts clean on all sides. */
const ground = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
};

/**
 * A single-unit draw of `side` ends by `side` picks, in units of 4 ends and rows of 4 picks.
 * @param side ends, and picks
 * @param rows how many rows come before they turn back: they are woven forwards and backwards by turns
 * @param faults how many squares are set alone on plain ground, each a finding of its own
 */
export function figuredDraft(side, { rows = side / 4, faults = 0 } = {}) {
  const units = side / 4;
  const lone = loneSquares(units, faults);
  const drawn = Array.from({ length: rows }, (_, row) => {
    const lift = [];
    for (let unit = 0; unit < units; unit++) {
      if (wave(unit, row) || lone.has(row * units + unit)) lift.push(unit + 1);
    }
    return lift;
  });
  return {
    ground,
    unitEnds: 4,
    threading: Array.from({ length: units }, (_, unit) => [unit + 1]),
    lifts: Array.from({ length: units }, (_, row) => drawn[turned(row, rows)]),
    picksPerRow: 4,
  };
}

/** Forwards and backwards by turns, so that no edge of the figure lies where the rows come again. */
function turned(row, rows) {
  const place = row % (2 * rows);
  return Math.min(place, 2 * rows - 1 - place);
}

function wave(unit, row) {
  const sum =
    Math.sin(unit / 17) + Math.sin(row / 13) + Math.sin((unit + row) / 29) + Math.cos((unit - 2 * row) / 41);
  return sum > 0.2;
}

/** Squares with nothing drawn round them, three apart, as many as are asked for. */
function loneSquares(units, count) {
  const squares = new Set();
  for (let row = 3; row + 3 < units && squares.size < count; row += 3) {
    for (let unit = 3; unit + 3 < units && squares.size < count; unit += 3) {
      const around = [-1, 0, 1].some((down) => [-1, 0, 1].some((right) => wave(unit + right, row + down)));
      if (!around) squares.add(row * units + unit);
    }
  }
  return squares;
}
