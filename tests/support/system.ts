/** The calls of the system answered otherwise, for modules loaded long ago too: no module is loaded anew for a test. */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";

type Calls = Partial<Record<keyof typeof fs, unknown>>;
type Promised = Partial<Record<keyof typeof fs.promises, unknown>>;

/**
 * Has the calls given answer in the place of the system's own.
 * @returns what gives the system its own calls back
 */
export function answering(calls: Calls, promised: Promised = {}): () => void {
  const put = (into: object, given: object): object => {
    const before = Object.fromEntries(Object.keys(given).map((name) => [name, Reflect.get(into, name)]));
    Object.assign(into, given);
    return before;
  };
  const own = put(fs, calls);
  const ownPromised = put(fs.promises, promised);
  syncBuiltinESMExports();
  return () => {
    put(fs, own);
    put(fs.promises, ownPromised);
    syncBuiltinESMExports();
  };
}
