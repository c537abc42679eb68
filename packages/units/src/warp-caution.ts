/** The usual caution about a warp that is wound, stretched or cut off. Source: common practice. */
export const WARP_CAUTION =
  "A stretched warp pulls hard and springs back: keep fingers out of ratchet and pawl, hold the handle before you free the pawl, and let the tension off before you reach in or cut. " +
  "Go by the maker of your loom and the local rules for your workplace; in a teaching room have a qualified person show it first.";
