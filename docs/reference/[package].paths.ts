import { isWhole } from "../support/whole.js";

/** A page a package, from its docstrings; what reads them is loaded only where it is used. */
export default {
  paths: async () => {
    if (!isWhole) return [];
    const { referencePages } = await import("../support/reference.js");
    return (await referencePages()).map(({ name, content }) => ({ params: { package: name }, content }));
  },
};
