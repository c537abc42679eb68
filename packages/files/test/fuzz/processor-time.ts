import process from "node:process";

/** The processor's time that this process has taken, in milliseconds. */
export function processorTime(): number {
  return process.cpuUsage().user / 1000;
}
