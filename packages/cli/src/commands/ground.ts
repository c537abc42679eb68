import {
  ACTIONS,
  type Action,
  drawdownOf,
  type GroundPlanOptions,
  groundPlanOf,
  groundsOn,
  nameOf,
  parseWeave,
  printWeave,
  propertiesOf,
  type Setts,
  tieUpOf,
  twillsOn,
  weaveOf,
} from "@drawcord/ground";
import { defineCommand } from "../command.js";
import { pickLines } from "../drawing.js";
import { CliError } from "../error.js";
import type { Io } from "../io.js";
import { numberOption } from "../number-option.js";
import { paintFor } from "../paint.js";
import { groundPage, type StudiedGround } from "../pretty/ground.js";
import { groundsPage } from "../pretty/grounds.js";
import { toJson } from "../printable.js";

/** Above so many ends the twills are too many to list. */
const MOST_TWILL_ENDS = 16;

export const command = defineCommand({
  operands: "[WEAVE...]",
  help: `Lays out a ground weave: draws it, measures it, and plans for long-eyed heddles which shafts each pick raises and sinks, begun where figure and ground cut each other best. It says in figures how the borders of units and rows then cut, and how they would from other starting points.

WEAVE is written as it is said: plain, twill 2/1/1/2 z, broken twill 1/3, herringbone twill 2/2 after 8, satin 8 step 3, satin 8 plus right 1, hopsack 2/2, plain with pattern weft, plain with pattern weft tied in halves within 7, and so on. Without a WEAVE, --ends lists the grounds that so many ends allow, best first: the cleaner cut, then the fewer touching binding points, then the shorter float.`,
  examples: [
    ['drawcord ground "satin 8 step 3"', "lays out the 8-end satin"],
    ["drawcord ground broken twill --action pulleys", "ties the 4-end broken twill up over damask pulleys"],
    [
      'drawcord ground "satin 8" --unit-ends 6 --picks-per-row 4',
      "plans it for units of 6 ends and rows of 4 picks",
    ],
    ["drawcord ground --ends 8", "lists what 8 ends allow"],
  ],
  options: {
    ends: {
      type: "string",
      value: "N",
      help: "ends the weave is counted on; without a WEAVE, the ends to list grounds for",
    },
    "unit-ends": { type: "string", value: "N", help: "ends in a unit; a whole repeat when not given" },
    "picks-per-row": { type: "string", value: "N", help: "picks in a row; a whole repeat when not given" },
    shafts: { type: "string", value: "N", help: "ground shafts of the loom" },
    action: {
      type: "string",
      value: "ACTION",
      choices: ACTIONS,
      help: "how the ground shafts are moved, to see the ties; list is a dobby's",
    },
    setts: {
      type: "string",
      value: "ENDSxPICKS",
      help: "ends and picks a centimetre, such as 20x16, for the angle of a twill",
    },
    format: {
      type: "string",
      value: "FORMAT",
      choices: ["pretty", "json"],
      default: "pretty",
      help: "how to print it",
    },
  },
  async run({ operands, options }, io) {
    const number = (name: "ends" | "unit-ends" | "picks-per-row" | "shafts") =>
      numberOption("ground", name, options[name]);
    const ends = number("ends");
    const unitEnds = number("unit-ends");
    const picksPerRow = number("picks-per-row");
    const loomShafts = number("shafts");
    const size = { ...(unitEnds && { unitEnds }), ...(picksPerRow && { picksPerRow }) };
    const asJson = options.format === "json";
    if (operands.length > 0) {
      const description = operands.join(" ");
      const plan = { ...size, ...(ends && { ends }), ...(loomShafts && { loomShafts }) };
      const studied = study(description, plan, options.action as Action | undefined, settsOf(options.setts));
      await io.stdout.write(
        asJson ? `${toJson(studiedJson(studied), 2)}\n` : groundPage(studied, paintFor(io), io.width),
      );
      return 0;
    }
    if (ends === undefined) {
      throw new CliError(
        "missing-operand",
        'drawcord ground needs a weave, such as "satin 8 step 3", or --ends N',
        {
          operand: "WEAVE",
        },
      );
    }
    await list(ends, size, asJson, io);
    return 0;
  },
});

/** Everything there is to say of one weave. */
function study(
  description: string,
  options: GroundPlanOptions,
  action: Action | undefined,
  setts: Setts | undefined,
): StudiedGround {
  const read = parseWeave(description);
  const drawdown = drawdownOf(weaveOf(read, options));
  const plan = groundPlanOf(read, options);
  const name = nameOf(drawdown);
  return {
    weave: printWeave(read),
    ...(name !== undefined && { name }),
    drawdown,
    properties: propertiesOf(drawdown, setts),
    plan,
    unitEnds: options.unitEnds ?? plan.ground.threading.length,
    picksPerRow: options.picksPerRow ?? plan.ground.steps.length,
    ...(action && { ties: tieUpOf(plan.ground, action) }),
  };
}

/** As it stands, but for the drawdown: a line of text a pick, the first pick first. */
function studiedJson({ weave, drawdown, ...rest }: StudiedGround): object {
  return { weave, drawdown: [...pickLines(drawdown)], ...rest };
}

async function list(ends: number, size: GroundPlanOptions, asJson: boolean, io: Io): Promise<void> {
  const grounds = groundsOn(ends, size);
  const twills = ends <= MOST_TWILL_ENDS ? twillsOn(ends).map((ratio) => ratio.join("/")) : undefined;
  await io.stdout.write(
    asJson
      ? `${toJson({ ends, ...size, grounds, ...(twills && { twills }) }, 2)}\n`
      : groundsPage(ends, grounds, twills, paintFor(io), io.width),
  );
}

/** @throws {CliError} `bad-number` */
function settsOf(value: string | undefined): Setts | undefined {
  if (value === undefined) return undefined;
  const [, ends, picks] = /^(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)$/.exec(value) ?? [];
  if (!(Number(ends) > 0 && Number(picks) > 0)) {
    const sentence = `drawcord ground: --setts takes ends and picks a centimetre, such as 20x16, not "${value}"`;
    throw new CliError("bad-number", sentence, { option: "setts", value });
  }
  return { ends: Number(ends), picks: Number(picks) };
}
