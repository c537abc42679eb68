/** Recipes that tests begin from. */

/** Every section filled in. */
export const wholeRecipe = `# A runner for the winter course.
recipe: 1
title: Moth and lantern runner
ground:
  shafts: 4
  threading: 1 2 3 4
  steps:
    - { raise: 4, sink: 1 }
    - { raise: 2, sink: 3 }
    - { raise: 3, sink: 2, weft: gold }
    - { raise: 1, sink: 4 }
  selvedge: { left: 1 2 1 2, right: 3 4 3 4 }
units:
  ends: 4
  static: 10
  threading: X*2 9 (1-8 7-2)*4 1 9 X*2 # the borders stay plain
lifts:
  picks: 4
  blocks:
    border: { rows: [9] }
    moth:
      picture: |
        ..##..##
        #......#
  order: [border, moth*3, border]
yarns:
  warp: { count: 20/2 Ne, fibre: cotton, colour: "#f4efe1", package: 250 g, stock: 1.2 kg }
  weft: { count: 16/1 lea, fibre: linen }
  gold: { count: 20 tex x 2 }
cloth:
  sett: 24 per inch
  picks: 10 per cm
  reed: 12 per inch
  sley: 2
  draw-in: 6 %
  take-up: 10 %
  shrinkage: { width: 6 %, length: 8 % }
  first-pick-from: right
  repeat: picks
project: { pieces: 4, width: 40 cm, length: 1.2 m, hems: 6 cm, fringe: 0 cm, gaps: 3 cm, sampling: 30 cm, waste: 36 in }
measured: { width-in-reed: 40 cm, width: 37.6 cm, washed-width: 35 cm, warp: 33 cm, length: 30 cm, washed-length: 27.5 cm, picks: 120, over: 12 cm, square: 12 cm, square-weight: 2.7 g }
loom: { pattern-shafts: 20, ground-shafts: 4, treadles: 6, lingos: 150, lingo-weight: 30 g, action: countermarch }
limits:
  float: { warp: 7, weft: 6 mm, gold: 11 }
  open-cuts: 2 %
  uneven: 20 %
  stretch: 200
  area: { drawn: 12 cm, undrawn: 900 }
  face-share: 25 %
  thin-area: 2
  unlike-sides: 2.5
  levels: { idle-shaft: off }
waive:
  - { rule: open-cut, rows: 3-5, ends: 7, reason: the ground shows through on purpose }
stated: { ends: 288, longest-float: 7, width-in-reed: 12 in, warp-yarn: 210 g }
formulas:
  - title: price of the warp
    formula: m c
    symbols:
      m: { meaning: weight of the warp yarn, plan: warp-yarn-mass, in: g }
      c: { meaning: price of 1 g, value: 0.04 }
    symbol: P
    decimals: 1
    source: course notes
  - title: binding
    formula: N b * (1 + k)
    symbols: { N: { meaning: pieces, plan: pieces }, b: { meaning: width, plan: finished-width }, k: { meaning: seam, value: 10 % } }
    unit: m
notes: |
  Weave the border first.
`;

/** The least recipe there is. */
export const leastRecipe = `recipe: 1
ground: { shafts: 2, threading: 1 2, steps: [{ raise: 1, sink: 2 }, { raise: 2, sink: 1 }] }
units: { ends: 2, threading: 1 2 }
lifts: { picks: 2, rows: [1, 2] }
`;
