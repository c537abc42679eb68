import { closeSett } from "./rules/close-sett.js";
import { impossibleNumber } from "./rules/impossible-number.js";
import { lengthRows } from "./rules/length-rows.js";
import { openSett } from "./rules/open-sett.js";
import { reedWidth } from "./rules/reed-width.js";
import type { AnyRule } from "./rules/rule.js";
import { shortStock } from "./rules/short-stock.js";
import { shortWarp } from "./rules/short-warp.js";
import { sleySett } from "./rules/sley-sett.js";
import { unusualNumber } from "./rules/unusual-number.js";
import { widthUnits } from "./rules/width-units.js";

/** The rules that look at the numbers of a project, which come with `projectNumbers`. */
export const rulesOfNumbers: readonly AnyRule[] = [
  impossibleNumber,
  unusualNumber,
  lengthRows,
  widthUnits,
  closeSett,
  openSett,
  sleySett,
  reedWidth,
  shortWarp,
  shortStock,
];
