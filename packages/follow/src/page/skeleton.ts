/** What stands on the page before its script fills it in. */

const tool = (does: string, label: string, id = `${does}-tool`) =>
  `<button type="button" id="${id}" data-do="${does}">${label}</button>`;

const dialog = (name: string, title: string, body: string) =>
  `<dialog id="${name}" aria-labelledby="${name}-title"><form method="dialog">
<h2 id="${name}-title">${title}</h2>
${body}
</form></dialog>`;

const choice = (name: string, label: string, choices: readonly (readonly [value: string, label: string])[]) =>
  `<label>${label}<select id="${name}">${choices
    .map(([value, text]) => `<option value="${value}">${text}</option>`)
    .join("")}</select></label>`;

const tick = (name: string, label: string) =>
  `<label class="tick"><input type="checkbox" id="${name}"> <span>${label}</span></label>`;

const close = `<button type="submit" value="close">Close</button>`;

const goTo = dialog(
  "go",
  "Go to another place",
  `<label>Piece<select id="go-turn"></select></label>
<label>Block<select id="go-block"></select></label>
<div class="pair"><label>Row<input id="go-row" type="number" inputmode="numeric" min="1" required></label>
<label>Pick of the row<input id="go-pick" type="number" inputmode="numeric" min="1" required></label></div>
<p class="hint">What you skip is not written into the log.</p>
<menu><button type="submit" value="cancel" formnovalidate>Stay here</button><button type="submit" value="go" class="main">Go there</button></menu>`,
);

const slip = dialog(
  "slip",
  "Mark a slip",
  `<label>What is wrong <input id="slip-note" maxlength="200" autocomplete="off"></label>
<p class="hint" id="slip-where"></p>
<menu><button type="submit" value="cancel" formnovalidate>Do not mark</button><button type="submit" value="mark" class="main">Mark it</button></menu>
<h3>Marked</h3><ul id="slips" class="list"></ul>`,
);

const takeOut = dialog(
  "out",
  "Take picks out",
  `<p>The page goes back with you pick by pick and shows the shed in which each pick comes out.</p>
<div class="pair"><label>Back to row<input id="out-row" type="number" inputmode="numeric" min="1" required></label>
<label>and its pick<input id="out-pick" type="number" inputmode="numeric" min="1" required></label></div>
<p class="hint">That pick is the first that you will weave again.</p>
<menu><button type="submit" value="cancel" formnovalidate>Leave it in</button><button type="submit" value="out" class="main">Begin to take out</button></menu>`,
);

const weavers = dialog(
  "weavers",
  "Who weaves",
  `<div id="weaver-list" class="choices" role="radiogroup" aria-label="Weavers"></div>
<label>Another name<input id="weaver-new" maxlength="60" autocomplete="off"></label>
<menu><button type="submit" value="cancel" formnovalidate>As it was</button><button type="submit" value="take" class="main">She weaves now</button></menu>`,
);

const log = dialog(
  "log",
  "The log",
  `<p class="hint" id="log-where"></p>
<div class="scroll" tabindex="0" role="region" aria-label="Log"><table><caption id="log-title"></caption><thead><tr><th scope="col">When</th><th scope="col">Who</th><th scope="col">What</th><th scope="col">Picks</th></tr></thead><tbody id="log-rows"></tbody></table></div>
<h3>Slips marked</h3><ul id="log-slips" class="list"></ul>
<menu>${close}<button type="button" data-do="forget">Begin anew</button><button type="button" data-do="print" class="main">Print it</button></menu>`,
);

const setup = dialog(
  "setup",
  "Set up",
  `${choice("set-size", "Size of the type", [
    ["1", "as it is"],
    ["1.25", "large"],
    ["1.5", "largest"],
  ])}
${choice("set-look", "Look", [
  ["device", "as the device"],
  ["light", "light"],
  ["dark", "dark"],
])}
${choice("set-step", "One press is", [
  ["pick", "a pick"],
  ["row", "a row"],
])}
${choice("set-first", "Handle 1 hangs at the", [
  ["left", "left"],
  ["right", "right"],
])}
${choice("set-lengths", "Lengths in", [
  ["cm", "centimetres"],
  ["in", "inches"],
])}
${tick("set-awake", "Keep the screen on")}
${tick("set-aloud", "Read each step aloud")}
<p class="hint" id="set-said"></p>
<h3>Tie-up</h3><ul id="ties" class="list"></ul>
<h3>Keys and pedals</h3>
<p>Space, Enter, arrow right, arrow down, page down: on. Backspace, arrow left, arrow up, page up: back. With Shift: a whole row. A foot pedal that sends one of these works too.</p>
<h3>Caution</h3><p id="caution"></p>
<menu>${close}</menu>`,
);

/** The body of the page. */
export const skeleton = `<header>
<div><h1 id="title"></h1><p id="piece"></p></div>
<button type="button" data-do="weavers" class="who"><span id="weaver"></span></button>
</header>
<main id="stage" tabindex="-1">
<section class="row" aria-labelledby="row-title">
<h2 id="row-title"><span id="row-word">Row</span> <span id="row"></span></h2>
<p id="row-of"></p><p id="block"></p>
<p id="warning" role="status"></p>
</section>
<section class="hands" aria-label="Handles">
<dl id="moves"></dl>
<div id="handles"></div>
<p id="heavy"></p>
</section>
<section class="feet" aria-label="Treadle and weft">
<p id="treadle"></p>
<p id="weft"></p>
<div id="treadles"></div>
<ol id="picks"></ol>
</section>
<section class="cloth" aria-label="The cloth at the fell"><div id="fell"></div></section>
<section class="next" aria-label="What comes next"><p id="next"></p></section>
<p id="said" class="unseen" role="status" aria-live="polite"></p>
</main>
<footer>
<div class="far"><progress id="far" aria-labelledby="far-text"></progress><p id="far-text"></p></div>
<nav aria-label="On and back">
<button type="button" data-do="back" class="back">Back</button>
<button type="button" id="on" data-do="forward" class="on"></button>
</nav>
</footer>
<section class="tools" aria-label="More">
${tool("go", "Go to")}
${tool("slip", "Mark a slip")}
${tool("out", "Take out")}
${tool("weave-on", "Weave on from here", "weave-on")}
${tool("log", "Log")}
${tool("setup", "Set up")}
<p id="kept" class="kept"></p>
</section>
${[goTo, slip, takeOut, weavers, log, setup].join("\n")}`;
