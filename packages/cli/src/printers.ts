import type { Report } from "@drawcord/check";
import type { Io } from "./io.js";
import { paintFor } from "./paint.js";
import { lastLine } from "./pretty/last-line.js";
import { type Cloth, reportText } from "./pretty/report.js";
import { toJson } from "./printable.js";

/** One way of printing the reports of a run, in the order of the files. */
interface Printer {
  cloth(cloth: Cloth): Promise<void>;
  end(): Promise<void>;
}

/** The ways of printing reports, by the name of the format; `files` is how many were asked for. */
export const printers = { pretty, json, ndjson };

function pretty(io: Io): Printer {
  const paint = paintFor(io);
  const reports: Pick<Report, "summary" | "waived" | "rules">[] = [];
  return {
    async cloth(cloth) {
      const { rules, summary, waived } = cloth.report;
      reports.push({ rules, summary, waived });
      await io.stdout.write(`${reportText(cloth, io.width, paint)}\n`);
    },
    async end() {
      if (reports.length > 0) await io.stdout.write(lastLine(reports));
    },
  };
}

/** One object when one file was asked for, else an array. */
function json(io: Io, files: number): Printer {
  const one = files === 1;
  let before = one ? "" : "[\n";
  return {
    async cloth({ file, report }) {
      await io.stdout.write(`${before}${toJson({ file, ...report }, 2)}${one ? "\n" : ""}`);
      before = ",\n";
    },
    async end() {
      if (!one) await io.stdout.write(before === ",\n" ? "\n]\n" : "[]\n");
    },
  };
}

/** A line for each file. */
function ndjson(io: Io): Printer {
  return {
    async cloth({ file, report }) {
      await io.stdout.write(`${toJson({ file, ...report })}\n`);
    },
    async end() {},
  };
}
