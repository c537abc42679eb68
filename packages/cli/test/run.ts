import type { ExitStatus } from "../src/command.js";
import type { Io, Output } from "../src/io.js";
import { main } from "../src/main.js";
import type { Registry } from "../src/registry.js";

/** What one call of the command did. */
export interface Outcome {
  readonly status: ExitStatus;
  readonly stdout: string;
  readonly stderr: string;
}

/** The world of a test: an empty terminal-less one unless it says otherwise. */
export interface World {
  readonly cwd?: string;
  readonly stdin?: string | AsyncIterable<Uint8Array>;
  readonly isTerminal?: boolean;
  readonly stderrIsTerminal?: boolean;
  /** How many pieces of standard output are taken before its reader goes away. */
  readonly takes?: number;
  readonly width?: number;
  readonly env?: Io["env"];
  readonly commands?: Registry;
}

/** Runs `drawcord ARGV...` in this process. */
export async function run(argv: readonly string[], world: World = {}): Promise<Outcome> {
  const stdout = sink(world.takes);
  const stderr = sink();
  const io: Io = {
    stdout,
    stderr,
    stdin: typeof world.stdin === "object" ? world.stdin : piped(world.stdin ?? ""),
    cwd: world.cwd ?? import.meta.dirname,
    isTerminal: world.isTerminal ?? false,
    stderrIsTerminal: world.stderrIsTerminal ?? false,
    width: world.width ?? 80,
    env: world.env ?? {},
  };
  const status = await main(argv, io, world.commands);
  return { status, stdout: stdout.text(), stderr: stderr.text() };
}

function sink(takes = Number.POSITIVE_INFINITY): Output & { text(): string } {
  const chunks: Uint8Array[] = [];
  return {
    write: async (chunk) => {
      if (chunks.length < takes) chunks.push(Buffer.from(chunk));
    },
    get closed() {
      return chunks.length >= takes;
    },
    text: () => Buffer.concat(chunks).toString("utf8"),
  };
}

/** In pieces, as a pipe gives it. */
async function* piped(source: string): AsyncIterable<Uint8Array> {
  const bytes = Buffer.from(source);
  for (let at = 0; at < bytes.length; at += 7) yield bytes.subarray(at, at + 7);
}
