import type { Command } from "./command.js";

/** A command as `drawcord --help` knows it: its module is loaded only when it is called. */
export interface Entry {
  /** One line, lower case and without a full stop. */
  readonly summary: string;
  load(): Promise<{ readonly command: Command }>;
}

export type Registry = Readonly<Record<string, Entry>>;

/** Every command, in the order of the help. */
export const registry: Registry = {};
