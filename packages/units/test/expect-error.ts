import { refusalsOf } from "../../../tests/support/refusal.js";
import { UnitsError } from "../src/index.js";

export const expectRefusal = refusalsOf(UnitsError);
