import type { ColourStripTexts } from "../picture-texts.js";
import { capital } from "./capital.js";
import { filterName } from "./filter-name.js";
import { between, depth, shown, strength } from "./format.js";

export const colourStrip: ColourStripTexts = {
  headline: ({ max_depth_m }, u) => `How colours fade on the way down to ${depth(max_depth_m, u)}`,
  names: { grey: "grey", red: "red", skin: "skin" },
  reading:
    "Each strip runs from the surface down to where you film deepest: grey, red and skin as the camera makes them, with the exposure set again at each depth. The top edge shows them in daylight.",
  daylight: "Daylight setting",
  balanced: "White balance set",
  filtered: ({ filter, is_advised }) =>
    `White balance set, ${filterName(filter)}${is_advised ? "" : ", not advised here"}`,
  truth: "true",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  off: ({ delta_e00 }) => `${capital(strength(delta_e00))} error, ${shown(delta_e00)}`,
  dive: ({ min_depth_m, max_depth_m }, u) => `You film ${between(min_depth_m, max_depth_m, u)}`,
  screen:
    "Errors are the mean CIEDE2000 of the three at the deepest depth, without noise; we take about 1 as the least you can see. Colours that a screen cannot show are cut to what it can.",
  description: ({ max_depth_m, filter, daylight, balanced, filtered }, u) =>
    [
      `Three strips of grey, red and skin from the surface down to ${depth(max_depth_m, u)}, as a camera makes them.`,
      `At ${depth(max_depth_m, u)} the colour error is ${shown(daylight.delta_e00)} at the daylight setting, ${shown(balanced.delta_e00)} once the white balance is set, and ${shown(filtered.delta_e00)} with ${filterName(filter)} as well.`,
    ].join(" "),
};
