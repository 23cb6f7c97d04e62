import type { Estimate } from "@sunfathom/planner";
import type { ChartUnderWaterTexts, LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import type { TextUnits } from "../problems/texts.js";
import { capital } from "./capital.js";
import { colourStrip } from "./colour-strip.js";
import { cuttingTemplate } from "./cutting-template.js";
import { exposureBudget } from "./exposure-budget.js";
import { filterMap } from "./filter-map.js";
import { filterName } from "./filter-name.js";
import { between, depth, depthNumber, shown, span, strength } from "./format.js";
import { grade } from "./grade.js";
import { mixedLightMap } from "./mixed-light-map.js";
import { redInPost } from "./red-in-post.js";
import { slate } from "./slate.js";

/** As precise as anyone can use. */
const percentOf = (percent: number): string =>
  percent < 0.1 ? "under 0.1 %" : percent < 1 ? `${shown(percent, 1)} %` : `${shown(percent)} %`;

const at = ({ low, likely, high }: Estimate, u?: TextUnits): string =>
  depthNumber(low, u) === depthNumber(high, u)
    ? depth(likely, u)
    : `${depth(likely, u)} (${span(low, high, u)})`;

const lightWithDepth: LightWithDepthTexts = {
  headline: ({ red_to_tenth_depth_m }, u) =>
    `At ${depth(red_to_tenth_depth_m, u)}, a tenth of the red light is left`,
  left: "Light left, by depth",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  at_percent: ({ percent }) => `${shown(percent)} %`,
  no_daylight: "There is no daylight on this dive: this is how the water takes light from above.",
  names: { red: "red", green: "green", blue: "blue", eye: "the eye" },
  left_at: ({ depth_m }, u) => `Left at ${depth(depth_m, u)}`,
  percent: ({ percent }) => percentOf(percent),
  tenth: (estimate, u) => `Red down to a tenth: ${at(estimate, u)}`,
  hundredth: (estimate, u) => `Red down to a hundredth: ${at(estimate, u)}`,
  dive: ({ min_depth_m, max_depth_m }, u) => `You film ${between(min_depth_m, max_depth_m, u)}`,
  shaded: "Shaded: 8 times in 10 the curve runs there. 100 % is the light just below the surface.",
  bands: "Red is light of 600 to 700 nm, green of 500 to 600, blue of 400 to 500.",
  description: ({ max_depth_m, left_at_max_percent: left, end_m, ...red }, u) =>
    [
      `Curves of the light that is left from the surface down to ${depth(end_m, u)}, one each for red, green, blue and the eye.`,
      `Red is down to a tenth at ${at(red.red_to_tenth_depth_m, u)}, and to a hundredth at ${at(red.red_to_hundredth_depth_m, u)}.`,
      `At ${depth(max_depth_m, u)} there is ${percentOf(left.red.likely)} of the red left, ${percentOf(left.green.likely)} of the green, ${percentOf(left.blue.likely)} of the blue, and ${percentOf(left.eye.likely)} of what the eye sees.`,
    ].join(" "),
};

const offBy = (delta_e00: number): string => `${strength(delta_e00)} error, ${shown(delta_e00)}`;
const finishes = { basic_edit: "Edited: sliders", matched: "Matched to a chart" };

const chartUnderWater: ChartUnderWaterTexts = {
  headline: ({ filter, is_advised, depth_m }, u) =>
    is_advised
      ? `What ${filterName(filter)} does at ${depth(depth_m, u)}`
      : `At ${depth(depth_m, u)}, film without a filter`,
  truth: "The chart in daylight",
  reading:
    "24 colours by hue, greys in the middle. In the wheels below, each field shows what the camera makes of a colour, with the true colour along its inner edge: the less you see of that edge, the better.",
  daylight: "Daylight setting",
  balanced: "White balance set",
  finished: ({ finish }) => finishes[finish],
  without: "No filter",
  filtered: ({ filter, is_advised }) =>
    `${capital(filterName(filter))}${is_advised ? "" : ", not advised here"}`,
  off: ({ delta_e00 }) => offBy(delta_e00),
  screen:
    "Errors are mean CIEDE2000, noise included, which the fields do not show; we take about 1 as the least you can see. Colours that a screen cannot show are cut to what it can.",
  description: ({ depth_m, filter, without, filtered, finish }, u) =>
    [
      `A chart of 24 colours at ${depth(depth_m, u)} as a camera makes it, without a filter and with ${filterName(filter)}.`,
      `Colour error without a filter: ${shown(without.daylight.delta_e00)} at the daylight setting, ${shown(without.balanced.delta_e00)} once the white balance is set, ${shown(without.finished.delta_e00)} ${finish === "matched" ? "matched to a chart" : "edited"}.`,
      `With it: ${shown(filtered.daylight.delta_e00)}, ${shown(filtered.balanced.delta_e00)} and ${shown(filtered.finished.delta_e00)}.`,
    ].join(" "),
};

export const pictures: PictureTexts = {
  caution: "This is about light and colour. Your training and local rules decide the dive.",
  chart_under_water: chartUnderWater,
  colour_strip: colourStrip,
  exposure_budget: exposureBudget,
  filter_map: filterMap,
  light_with_depth: lightWithDepth,
  mixed_light_map: mixedLightMap,
  red_in_post: redInPost,
  slate,
  cutting_template: cuttingTemplate,
  grade,
};
