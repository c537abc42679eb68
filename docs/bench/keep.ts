/** What is kept as a file. */
interface Kept {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/**
 * Hands a file to the browser, which keeps it where it keeps downloads.
 * @param file its name, type and bytes
 */
export function keep({ bytes, name, type }: Kept): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
