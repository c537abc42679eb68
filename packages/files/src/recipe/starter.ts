import { stringify } from "yaml";
import { schemaLine } from "./schema-line.js";

/**
 * A recipe to begin from: a small figured cloth, with a comment at each thing to change. It checks clean.
 * @param title what the cloth is called
 * @param schema where an editor finds the schema of recipes; by default in the command's package, installed beside the recipe
 * @example soundRecipe(starterRecipe("Moth"), "moth.recipe.yaml").title // "Moth"
 */
export function starterRecipe(title = "A first figured cloth", schema?: string): string {
  return `# A recipe for figured cloth on a drawloom. Change what is here, then run: drawcord check
${schemaLine(schema)}

recipe: 1

title: ${stringify(title, { lineWidth: 0, blockQuote: false }).trimEnd()}

# What the ground harness weaves where nothing is drawn: broken twill, twill 1/3, satin 8 step 3, ...
ground:
  weave: broken twill
  ends: 4

# A unit is the ends on one leash. The threading gives the pattern shaft of each, from the left:
# X is a static unit that always weaves ground, 1-8 goes up and 7-1 down, (...)*3 comes three times.
units:
  ends: 4
  threading: X*2 9 (1-8 7-2)*3 1 9 X*2

# The pattern shafts drawn, row by row; the row that is woven first stands first.
lifts:
  picks: 4 # picks for each row
  blocks:
    border: { rows: [ none, 9, none ] }
    # A picture: the last line is row 1, the columns are shafts 1 to 9.
    lozenge:
      picture: |
        .......##
        ......###
        .....##.#
        ....##..#
        ...##...#
        ..##....#
        .##.....#
        ##......#
        #.......#
        #.......#
        ##......#
        .##.....#
        ..##....#
        ...##...#
        ....##..#
        .....##.#
        ......###
        .......##
  # Woven from first to last; upside-down, mirrored on 1-8 and exchanged on 1-8 change a block.
  order:
    - border
    - lozenge*8
    - border upside-down

yarns:
  warp: { count: Nm 16/2, fibre: cottolin, package: 250 g }
  weft: { count: Nm 16/2, fibre: linen, package: 250 g }

cloth:
  sett: 12 per cm
  picks: 12 per cm
  reed: 60 per 10 cm
  draw-in: 6 %
  take-up: 10 %
  shrinkage: 10 %

# The lifts make 50 cm on the loom: 45 cm washed, and 5 cm of that are hems.
project:
  pieces: 2
  length: 40 cm
  hems: 5 cm
  sampling: 20 cm
  waste: 70 cm
  spare: 5 %

# The longest float that may be.
limits:
  float: 9
`;
}
