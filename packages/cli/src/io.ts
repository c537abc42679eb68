/** The world as a command sees it; tests hand in another. */
export interface Io {
  readonly stdout: Output;
  readonly stderr: Output;
  /** What is piped in, read only when asked for. */
  readonly stdin: AsyncIterable<Uint8Array>;
  /** The folder that relative names start from. */
  readonly cwd: string;
  /** Whether `stdout` is a terminal: colour, and lines fitted to its width, are for eyes only. */
  readonly isTerminal: boolean;
  /** Whether `stderr` is a terminal: how far a long run has come is shown on one only. */
  readonly stderrIsTerminal: boolean;
  /** Characters in a line of the terminal, 80 where there is none. */
  readonly width: number;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** Somewhere to write; resolves when more can be taken. Once the reader has gone, what is written is dropped. */
export interface Output {
  write(chunk: string | Uint8Array): Promise<void>;
  /** Whether the reader has gone. */
  readonly closed: boolean;
}
