import { refusalsOf } from "../../../tests/support/refusal.js";
import { ChartError } from "../src/index.js";

export const expectRefusal = refusalsOf(ChartError);
