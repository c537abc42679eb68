export { ChartError, type ChartErrorCode } from "./error.js";
export { type CornerTurn, framedChart } from "./framed-chart.js";
export { type ChartOptions, chartCloth, MOST_CHART_SHAFTS } from "./nearest-chart.js";
export { type NearestCloth, nearestLifts } from "./nearest-lifts.js";
export { threadedChart } from "./threaded-chart.js";
export { type Quarrel, quarrelSentence, type Weavable, weavable } from "./weavable.js";
