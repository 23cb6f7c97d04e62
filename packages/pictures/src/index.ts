import { chartUnderWater } from "./chart-under-water/chart-under-water.js";
import { colourStrip } from "./colour-strip/colour-strip.js";
import { exposureBudget } from "./exposure-budget/exposure-budget.js";
import { filterMap } from "./filter-map/filter-map.js";
import { lightWithDepth } from "./light-with-depth/light-with-depth.js";
import { mixedLightMap } from "./mixed-light-map/mixed-light-map.js";
import { redInPost } from "./red-in-post/red-in-post.js";

export { drawCuttingTemplate } from "./cutting-template/cutting-template.js";
export { gradeOf } from "./grade/grade-of.js";
export { drawLightWithDepth, lightWithDepth } from "./light-with-depth/light-with-depth.js";
export { LEAST_WIDTH_PX, type LookAsked, MOST_WIDTH_PX } from "./look.js";
export type { Picture } from "./picture.js";
export { type Mark, mmOf, type Pen, type Sheet } from "./sheet/sheet.js";
export { sheetSvg } from "./sheet/sheet-svg.js";
export { slateOf } from "./slate/slate.js";
export { type Theme, themes } from "./theme.js";

/** Every picture, in the order in which they are described. */
export const pictures = [
  chartUnderWater,
  lightWithDepth,
  redInPost,
  colourStrip,
  filterMap,
  mixedLightMap,
  exposureBudget,
] as const;
