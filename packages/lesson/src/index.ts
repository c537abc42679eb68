export { LessonError, type LessonErrorCode } from "./error.js";
export { type ExerciseOptions, exerciseOf, type SetClass, type SetSheet } from "./exercise.js";
export { type TaskName, taskKinds, taskNames, usualTasks } from "./kinds.js";
export { type Dice, diceOf } from "./random.js";
export type { Answer, Filling, Level, Step, Task, TaskKind } from "./task.js";
export { whyDocument } from "./why/document.js";
export { sectionDrawing } from "./why/section.js";
export { type Cause, type Crossing, whyCrossing } from "./why/why.js";
export { whyInWords } from "./why/words.js";
