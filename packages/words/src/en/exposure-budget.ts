import type { BudgetAtDepth, Estimate } from "@sunfathom/planner";
import type { ExposureBudgetTexts } from "../picture-texts.js";
import { dialShutter, settings } from "./dial.js";
import { depth, stops } from "./format.js";

/** In thirds; less than that is told as it is. */
const likely = ({ likely: value }: Estimate): string =>
  value < -1 / 6 ? `gains ${stops(-value)}` : stops(value);

const verdict = ({ verdict: of, shortfall_stops = 0, excess_stops = 0 }: BudgetAtDepth): string =>
  ({
    fits: "that fits",
    too_dark: `still ${stops(shortfall_stops)} too dark`,
    too_bright: `still ${stops(excess_stops)} too bright`,
  })[of];

export const exposureBudget: ExposureBudgetTexts = {
  headline: ({ depths }, u) => {
    const deepest = depths[depths.length - 1];
    return deepest?.total === undefined
      ? "Where light is lost on the way to the sensor"
      : `At ${depth(deepest.depth_m, u)}, the way to the sensor costs ${stops(deepest.total.likely)} of daylight`;
  },
  reading: "Each bar begins where the one above it ends. Every stop halves the light.",
  losses: {
    surface: "At the surface",
    depth: "On the way down",
    upright: "Because the subject faces you, not the sky",
    distance: "From the subject to the camera",
    port: "At the port",
    lens_filter: "In the filter on the lens",
  },
  total: "All together",
  no_daylight: "There is no daylight on this dive: what counts is the way from the subject to the sensor.",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  stops: likely,
  set: (p, u) => `At ${depth(p.depth_m, u)}: ${settings(p)}, ${dialShutter(p.shutter_s)}; ${verdict(p)}.`,
  description: ({ depths }, u) =>
    depths
      .map((p) => {
        const told = p.losses.map(({ at, stops: lost }) => `${PLACES[at]} ${likely(lost)}`);
        return `Light lost at ${depth(p.depth_m, u)}: ${told.join(", ")}${p.total ? `; in all ${stops(p.total.likely)}` : ""}. Set ${settings(p)}; ${verdict(p)}.`;
      })
      .join(" "),
};

const PLACES = {
  surface: "surface",
  depth: "way down",
  upright: "subject upright",
  distance: "distance",
  port: "port",
  lens_filter: "lens filter",
} as const;
