/** Options that several commands take alike. */

/** The file that what is printed is written to. */
export const PRINTED_OPTION = {
  type: "string",
  short: "o",
  value: "FILE",
  help: "the file to write; its ending says the format",
} as const;

/** The paper of what is printed. */
export const PAPER_OPTION = {
  type: "string",
  value: "PAPER",
  choices: ["a4", "letter"],
  default: "a4",
  help: "the paper of .pdf and of a printed .html",
} as const;

/** Text for people, or JSON for scripts. */
export function textOrJson<Help extends string>(help: Help) {
  return { type: "string", value: "FORMAT", choices: ["text", "json"], default: "text", help } as const;
}
