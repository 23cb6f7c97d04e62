import type { Estimate } from "@sunfathom/planner";
import type { LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import { metres, shown } from "./format.js";

/** As precise as anyone can use. */
const percentOf = (percent: number): string =>
  percent < 0.1 ? "under 0.1 %" : percent < 1 ? `${shown(percent, 1)} %` : `${shown(percent)} %`;

const span = ({ low, high }: Estimate, show: (value: number) => string): string =>
  show(low) === show(high) ? "" : ` (${show(low)} to ${show(high)} m)`;
const at = (depth: Estimate): string => `${metres(depth.likely)} m${span(depth, metres)}`;

const lightWithDepth: LightWithDepthTexts = {
  headline: ({ red_to_tenth_depth_m }) =>
    `At ${metres(red_to_tenth_depth_m)} m, a tenth of the red light is left`,
  left: "Light left, by depth",
  at_depth: ({ depth_m }) => `${shown(depth_m)} m`,
  at_percent: ({ percent }) => `${shown(percent)} %`,
  no_daylight: "There is no daylight on this dive: this is how the water takes light from above.",
  names: { red: "red", green: "green", blue: "blue", eye: "the eye" },
  left_at: ({ depth_m }) => `Left at ${metres(depth_m)} m`,
  percent: ({ percent }) => percentOf(percent),
  tenth: (depth) => `Red down to a tenth: ${at(depth)}`,
  hundredth: (depth) => `Red down to a hundredth: ${at(depth)}`,
  dive: ({ min_depth_m, max_depth_m }) =>
    metres(min_depth_m) === metres(max_depth_m)
      ? `You film at ${metres(max_depth_m)} m`
      : `You film from ${metres(min_depth_m)} to ${metres(max_depth_m)} m`,
  shaded: "Shaded: 8 times in 10 the curve runs there. 100 % is the light just below the surface.",
  bands: "Red is light of 600 to 700 nm, green of 500 to 600, blue of 400 to 500.",
  description: ({ max_depth_m, left_at_max_percent: left, end_m, ...red }) =>
    [
      `Curves of the light that is left from the surface down to ${shown(end_m)} m, one each for red, green, blue and the eye.`,
      `Red is down to a tenth at ${at(red.red_to_tenth_depth_m)}, and to a hundredth at ${at(red.red_to_hundredth_depth_m)}.`,
      `At ${metres(max_depth_m)} m there is ${percentOf(left.red.likely)} of the red left, ${percentOf(left.green.likely)} of the green, ${percentOf(left.blue.likely)} of the blue, and ${percentOf(left.eye.likely)} of what the eye sees.`,
    ].join(" "),
};

export const pictures: PictureTexts = {
  caution: "This is about light and colour. Your training and local rules decide the dive.",
  light_with_depth: lightWithDepth,
};
