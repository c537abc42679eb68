/** How the page looks and behaves on this device. */

/** What a weaver may choose. */
export interface Settings {
  readonly size: "1" | "1.25" | "1.5";
  readonly look: "device" | "light" | "dark";
  /** What one press is. */
  readonly step: "pick" | "row";
  /** The side at which handle 1 hangs. */
  readonly first: "left" | "right";
  readonly lengths: "cm" | "in";
  readonly awake: boolean;
  readonly aloud: boolean;
}

const KEY = "drawcord follow settings";

/** The settings of this device; what was never chosen is as given. */
export function readSettings(given: Settings, storage: Storage | undefined): Settings {
  try {
    const found: unknown = JSON.parse(storage?.getItem(KEY) ?? "null");
    return typeof found === "object" ? { ...given, ...found } : given;
  } catch {
    return given;
  }
}

/** Writes the settings down; a browser that keeps nothing forgets them. */
export function keepSettings(settings: Settings, storage: Storage | undefined): void {
  try {
    storage?.setItem(KEY, JSON.stringify(settings));
  } catch {
    // The place is what matters, and whether that is kept is said on the page.
  }
}

/** Dresses the page as it was chosen. */
export function dress({ size, look }: Settings): void {
  const root = document.documentElement;
  root.style.setProperty("--size", size);
  if (look === "device") delete root.dataset["look"];
  else root.dataset["look"] = look;
}
