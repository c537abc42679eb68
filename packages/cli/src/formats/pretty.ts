import { paintIn } from "../paint.js";
import { lastLine } from "../pretty/last-line.js";
import { reportText } from "../pretty/report.js";
import type { Format } from "./format.js";
import { isSilent } from "./worst.js";

/** For a weaver's eyes: each fault drawn, the numbers of the cloth, and last what ran. */
export const pretty: Format = {
  cloth(cloth, look) {
    if (isSilent(cloth, look.least)) return "";
    return `${reportText(cloth, look, paintIn(look.colour))}\n`;
  },
  tail({ look, status, tally }) {
    if (tally.files === 0 || (look.least !== undefined && status === 0)) return "";
    return `${lastLine(tally)}\n`;
  },
};
