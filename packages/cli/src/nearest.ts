// A module of its own, so that the bundle takes this one function of the package and not all.
export { nearest } from "@drawcord/files";
