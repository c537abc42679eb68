import type { Given } from "../formula/input.js";
import { type Result, type ValuesOf, workOut } from "../formula/work-out.js";
import { crimpFormulas } from "../formulas/crimp.js";
import { sampleFormulas } from "../formulas/sample.js";
import { sampleTrees } from "../formulas/trees.js";
import type { Measured, Plan, PlanSample, Project, SampleNumber } from "./types.js";

/** What a sample tells. */
interface Sample {
  readonly drawIn?: Result;
  readonly takeUp?: Result;
  readonly shrinkageOfWidth?: Result;
  readonly shrinkageOfLength?: Result;
  readonly pickSett?: Result;
  readonly weight?: Result;
}

type Id = keyof typeof sampleFormulas;

/** A formula of samples worked out: they alone are needed to read a recipe. */
function tell<I extends Id>(id: I, values: ValuesOf<(typeof sampleFormulas)[I]["symbols"]>): Result {
  return workOut(sampleFormulas, sampleTrees, id, values);
}

/** The losses, picks and weight that follow from the measures of a sample; of half a pair nothing follows. */
function sampleOf(measured: Measured): Sample {
  const { length, over, picks, square, squareWeight, warp, washedLength, washedWidth, width, widthInReed } =
    measured;
  return {
    ...(widthInReed && width && { drawIn: tell("draw-in-of-sample", { W: widthInReed, b: width }) }),
    ...(warp && length && { takeUp: tell("take-up-of-sample", { L_y: warp, L_c: length }) }),
    ...(width &&
      washedWidth && {
        shrinkageOfWidth: tell("shrinkage-of-sample", { b: width, f: washedWidth }),
      }),
    ...(length &&
      washedLength && {
        shrinkageOfLength: tell("shrinkage-of-sample", { b: length, f: washedLength }),
      }),
    ...(picks !== undefined && over && { pickSett: tell("picks-of-sample", { n: picks, l: over }) }),
    ...(squareWeight && { weight: tell("weight-of-sample", { m: squareWeight, a: square }) }),
  };
}

/**
 * A project with what was measured on its sample in place of what is given or assumed.
 * @param project what is known, with what was measured
 * @throws {YarnError} `absurd` where a measure cannot be, such as a sample that is wider on the loom than in the reed
 * @example withSample({ ends: 4, picks: 8, measured: { widthInReed: parseQuantity("40 cm"), width: parseQuantity("38 cm") } }).drawIn.value // 5
 */
export function withSample(project: Project): Project {
  const { measured } = project;
  if (measured === undefined) return project;
  const { drawIn, pickSett, shrinkageOfLength, shrinkageOfWidth, takeUp } = sampleOf(measured);
  return {
    ...project,
    ...(drawIn && { drawIn }),
    ...(takeUp && { takeUp }),
    ...(pickSett && { pickSett }),
    ...((shrinkageOfWidth || shrinkageOfLength) && {
      shrinkage: {
        ...project.shrinkage,
        ...(shrinkageOfWidth && { width: shrinkageOfWidth }),
        ...(shrinkageOfLength && { length: shrinkageOfLength }),
      },
    }),
  };
}

/** The plan by the sample, beside what each of its numbers was before. */
export function sampleNumbers(project: Project, before: Plan): PlanSample["numbers"] {
  const { measured, shrinkage = {} } = project;
  if (measured === undefined) return [];
  const sample = sampleOf(measured);
  const { symbols } = crimpFormulas["width-after-draw-in"];
  const usualShrinkage = crimpFormulas["size-after-shrinkage"].symbols.s.usual;
  const list: readonly (readonly [SampleNumber["name"], string, Result | undefined, Given | undefined])[] = [
    ["draw-in", "draw-in", sample.drawIn, project.drawIn ?? symbols.d.usual],
    ["take-up", "take-up", sample.takeUp, project.takeUp ?? crimpFormulas["yarn-in-cloth"].symbols.k.usual],
    [
      "shrinkage-of-width",
      "shrinkage of the width",
      sample.shrinkageOfWidth,
      shrinkage.width ?? usualShrinkage,
    ],
    [
      "shrinkage-of-length",
      "shrinkage of the length",
      sample.shrinkageOfLength,
      shrinkage.length ?? usualShrinkage,
    ],
    ["picks", "picks", sample.pickSett, project.pickSett],
    ["cloth-weight", "weight of the finished cloth", sample.weight, before.clothWeight],
  ];
  return list.flatMap(([name, title, value, instead]) =>
    value === undefined ? [] : [{ name, title, value, ...(instead === undefined ? {} : { instead }) }],
  );
}

/** The weight of the cloth that a sample tells; undefined where no square was weighed. */
export function sampleWeight({ measured }: Project): Result | undefined {
  return measured && sampleOf(measured).weight;
}
