export { YarnError, type YarnErrorCode } from "./error.js";
export { convert, toMetric } from "./quantity/convert.js";
export { type ReadOptions, readQuantity } from "./quantity/read.js";
export { type Kind, metricUnit, type Quantity, quantity, type UnitName } from "./quantity/units.js";
export { writeQuantity } from "./quantity/write.js";
