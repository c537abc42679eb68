export { LessonError, type LessonErrorCode } from "./error.js";
export { type ExerciseOptions, exerciseOf, type SetClass, type SetSheet } from "./exercise.js";
export { type TaskName, taskKinds, taskNames, usualTasks } from "./kinds.js";
export type { Dice } from "./random.js";
export type { Answer, Filling, Level, Task, TaskKind, WorkingLine } from "./task.js";
export { whyDocument } from "./why/document.js";
export { type Crossing, type CrossingCause, whyCrossing } from "./why/why.js";
export { whyInWords } from "./why/words.js";
