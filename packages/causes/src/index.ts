export { type Mend, mend } from "./mend.js";
