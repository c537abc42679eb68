/** The terms of the trade that sheets and messages use, in the house's words. */

/** One entry of the glossary. */
export interface GlossaryTerm {
  /** The term. */
  readonly term: string;
  /** Other forms under which it stands in texts; plurals by `s` are found without. */
  readonly forms?: readonly string[];
  /** What it means, in a sentence or two. */
  readonly meaning: string;
}

/** Every term, in the order of the alphabet. */
export const glossary: readonly GlossaryTerm[] = [
  { term: "area", meaning: "Units and rows that touch by their sides and are all drawn, or all not drawn." },
  {
    term: "binding point",
    meaning: "The crossing at which a thread that floats is held by one of the other system.",
  },
  {
    term: "block",
    meaning:
      "Some rows of the lift plan under one name, so that they can be woven again, upside down or mirrored.",
  },
  {
    term: "broken twill",
    meaning:
      "A twill whose order is broken, so that no slanting line runs through the cloth; on four ends it stands in for a satin.",
  },
  {
    term: "chain",
    meaning:
      "A part of the warp that is taken off the mill or board as one, and chained so that it does not tangle.",
  },
  { term: "choke tie", meaning: "A tight tie round a part of the warp, so that its threads cannot slip." },
  { term: "cloth", meaning: "What warp and weft make together, on the loom or off it." },
  { term: "cord", meaning: "What joins a handle to the pattern shaft, or to the unit, that it draws." },
  {
    term: "count",
    forms: ["yarn count"],
    meaning:
      "How fine a yarn is: its length in a weight, or its weight in a length, by one of the trade's systems.",
  },
  {
    term: "countermarch",
    meaning: "A loom action by which each treadle raises some shafts and sinks the others.",
  },
  {
    term: "cross",
    meaning: "The place in a warp where its threads cross one by one, so that their order is kept.",
  },
  {
    term: "cut",
    forms: ["cuts clean", "cut clean", "open cut"],
    meaning:
      "Where figure and ground meet, two neighbouring ends or picks cut if one is up and the other down, so that neither float can slide over the border. Where both lie alike the cut is open.",
  },
  { term: "damask", meaning: "A figured cloth in which figure and ground are the two faces of one weave." },
  {
    term: "damask pulleys",
    meaning:
      "A loom action in which the ground shafts hang on pulleys that let each of them be raised, sunk or left.",
  },
  { term: "dent", meaning: "One gap of the reed." },
  {
    term: "double pass",
    forms: ["double passes"],
    meaning: "Winding once along the mill or board and back again; one way is a pass.",
  },
  {
    term: "draw",
    forms: ["drawn", "draws", "drawing"],
    meaning: "To raise units by the pattern harness and hold them for the picks of a row.",
  },
  { term: "draw-in", meaning: "How much narrower the cloth is at the fell than the warp in the reed." },
  {
    term: "drawdown",
    meaning:
      "The picture of all interlacements: a column an end, a row a pick, filled where the end lies over the pick; the first pick at the bottom.",
  },
  {
    term: "drawloom",
    meaning: "A loom with two harnesses: one weaves the ground, the other draws the figure.",
  },
  { term: "end", meaning: "One thread of the warp. End 1 is at the left." },
  {
    term: "face",
    meaning: "The side of the cloth that is above on the loom, unless a recipe says otherwise.",
  },
  { term: "fell", meaning: "The edge of the cloth on the loom, where the last pick was beaten in." },
  { term: "figure", meaning: "What the pattern harness draws on the ground." },
  {
    term: "float",
    meaning:
      "A stretch of a thread that passes over, or under, several threads without interlacing. Its length is the number of threads that it passes.",
  },
  { term: "fringe", meaning: "Warp left unwoven at the ends of a piece." },
  {
    term: "ground",
    meaning: "The weave of the cloth where nothing is drawn, and the harness and treadles that make it.",
  },
  {
    term: "ground harness",
    meaning: "The shafts in front, with long-eyed heddles, threaded to the ground weave.",
  },
  { term: "ground shaft", meaning: "A shaft of the ground harness." },
  {
    term: "half-heddle stick",
    forms: ["half-heddle sticks", "stick"],
    meaning:
      "A stick with loops about the units of one lift, by which a weaver without a draw opens that lift.",
  },
  {
    term: "handle",
    meaning: "What a weaver pulls to draw a pattern shaft, or one unit where each has a cord of its own.",
  },
  {
    term: "heddle",
    forms: ["long-eyed heddle", "long eye"],
    meaning:
      "The loop or wire on a shaft through which an end passes. A long-eyed heddle raises or sinks its end, and else leaves it where the pattern harness puts it.",
  },
  { term: "hem", meaning: "Cloth woven to be turned under at the ends of a piece." },
  {
    term: "interlacement",
    forms: ["crossing"],
    meaning: "One crossing of an end and a pick: either the end lies over the pick, or under it.",
  },
  {
    term: "intersection",
    forms: ["changes sides"],
    meaning:
      "The place between two neighbouring interlacements of a thread where it changes from one side of the cloth to the other.",
  },
  { term: "lamm", meaning: "A lever between a treadle and a shaft, by which the treadle moves it." },
  { term: "layer", meaning: "A part of a cloth that can be lifted off the rest; a sound cloth has one." },
  { term: "leash", forms: ["leashes"], meaning: "The cord with its mail that carries the ends of one unit." },
  {
    term: "lift",
    forms: ["lift plan"],
    meaning: "One row of the lift plan: the pattern shafts that are drawn, held for the picks of the row.",
  },
  {
    term: "lingo",
    forms: ["lingos"],
    meaning: "The weight that hangs on a leash and brings its unit down again.",
  },
  {
    term: "loom waste",
    meaning: "Warp that cannot be woven: what is tied on, and what lies between heddles and fell at the end.",
  },
  { term: "mail", meaning: "The eye of a leash, through which an end passes." },
  { term: "pattern harness", meaning: "The harness behind, which draws units." },
  {
    term: "pattern shaft",
    meaning: "A shaft of the pattern harness; a unit hangs on one of them, or on several.",
  },
  { term: "pattern weft", meaning: "A weft that shows in the figure alone, between picks of the ground." },
  { term: "pick", meaning: "One thread of the weft, from side to side. Pick 1 is woven first." },
  { term: "pick-up", meaning: "Raising the units of a row by hand, counted from one edge." },
  { term: "piece", meaning: "One cloth of those that are woven one after another on a warp." },
  {
    term: "plain weave",
    forms: ["tabby"],
    meaning: "The closest weave: every end over one pick and under the next.",
  },
  {
    term: "point",
    meaning: "A threading or an order that runs up and down again, with one unit at each turn.",
  },
  {
    term: "raise",
    forms: ["raised", "raises"],
    meaning: "To lift a shaft with its ends. An end is raised at a crossing where it lies over the pick.",
  },
  { term: "recipe", meaning: "All that is needed to weave a cloth again, written down." },
  { term: "reed", meaning: "The comb that keeps the ends apart and beats the picks in." },
  { term: "repeat", meaning: "The least part of a plan that comes again." },
  { term: "row", meaning: "One line of the lift plan, held for a number of picks. Row 1 is woven first." },
  {
    term: "satin",
    meaning:
      "A weave in which each end binds once in a repeat and the binding points do not touch; its other face shows the weft.",
  },
  {
    term: "selvedge",
    meaning:
      "The ends outside the units at each side, on shafts of the ground harness; they are never drawn.",
  },
  { term: "sett", meaning: "How many ends, or picks, lie in a centimetre or an inch." },
  { term: "shaft", meaning: "A frame or a pair of sticks that moves its heddles, or leashes, together." },
  { term: "shed", meaning: "The opening between raised and lowered ends through which the weft passes." },
  { term: "shrinkage", meaning: "How much the cloth loses in length and width when it is washed." },
  { term: "single-unit draw", meaning: "A pattern harness in which every unit has a cord of its own." },
  { term: "sink", forms: ["sinks", "sunk", "sank"], meaning: "To pull a shaft down with its ends." },
  { term: "sley", forms: ["sleyed"], meaning: "How many ends go in the dents, and to thread them so." },
  { term: "static unit", meaning: "A unit on no pattern shaft: it always weaves ground." },
  {
    term: "take-up",
    meaning: "How much longer the threads are than the cloth, for they bend around one another.",
  },
  { term: "thread", meaning: "An end or a pick; also to pass an end through its heddle." },
  { term: "threading", meaning: "Which shaft each end, or unit, hangs on." },
  { term: "tie", forms: ["tied"], meaning: "What joins a treadle to a shaft that it moves." },
  { term: "tie-up", meaning: "Which shafts each treadle raises and sinks." },
  { term: "treadle", meaning: "What a foot presses to move shafts." },
  { term: "treadling", meaning: "The order in which the treadles are pressed." },
  { term: "twill", meaning: "A weave whose binding points make slanting lines." },
  { term: "unit", meaning: "The group of neighbouring ends that one leash carries." },
  { term: "unit threading", meaning: "Which pattern shaft each unit hangs on." },
  { term: "warp", meaning: "The threads that are stretched on the loom." },
  { term: "weave", meaning: "The order in which ends and picks interlace." },
  { term: "weft", meaning: "The thread that is passed through the shed, pick by pick." },
  { term: "width in reed", forms: ["width in the reed"], meaning: "How wide the warp lies in the reed." },
  {
    term: "wrap",
    forms: ["wraps"],
    meaning:
      "One turn of a yarn about a card, its turns side by side without pressing: how many go in a centimetre says how thick it is.",
  },
];
