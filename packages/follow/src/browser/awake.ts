/** Keeps the screen on while the page is seen, where the browser can. */

let lock: WakeLockSentinel | undefined;

/**
 * Keeps the screen on, or lets it sleep.
 * @returns whether the screen stays on
 */
export async function keepAwake(wanted: boolean): Promise<boolean> {
  if (!wanted) {
    await lock?.release();
    lock = undefined;
    return false;
  }
  try {
    // The browser lets go of it whenever the page is not seen.
    if (lock === undefined || lock.released) lock = await navigator.wakeLock.request("screen");
    return true;
  } catch {
    return false;
  }
}
