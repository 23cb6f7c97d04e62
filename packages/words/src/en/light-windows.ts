import type { LightWindowReasons, WindowAim } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { shown, stops } from "./format.js";

const AIMS: Readonly<Record<WindowAim, string>> = {
  natural_colour: "natural colour, and the daylight that comes down on the subject",
  sunlit_background: "colour, and the light of the open water behind the subject",
  lamps_lead: "colour, and how far your video lights outshine daylight on the subject",
};

/** What covers the sky, in eighths. */
const clouds = (oktas: number): string => {
  if (oktas === 0) return " in a clear sky";
  if (oktas === 8) return " behind a closed cloud cover";
  return oktas === 1 ? ", with one eighth of cloud" : `, with ${shown(oktas)} eighths of cloud`;
};

const sky = (p: { elevation_deg: number; cloud_oktas: number }): string =>
  `the sun stands at ${shown(p.elevation_deg)} degrees${clouds(p.cloud_oktas)}`;

const colour = (delta_e00: number): string =>
  Math.abs(delta_e00) < 0.05
    ? "the same colour error"
    : `${shown(Math.abs(delta_e00), 1)} ${delta_e00 > 0 ? "more" : "less"} colour error`;

const light = (less_stops: number): string =>
  Math.abs(less_stops) < 1 / 6
    ? "about the same light"
    : `${stops(Math.abs(less_stops))} ${less_stops > 0 ? "less" : "more"} of the light you are after`;

/** Why windows of light stand where they do. */
export const lightWindowReasons: Texts<LightWindowReasons, string> = {
  window_best: (p) => `The best of the day: ${sky(p)}.`,
  window_only: (p) => `The only window of the day with enough sun: ${sky(p)}.`,
  window_behind: (p) =>
    `Against the best of the day: ${colour(p.more_delta_e00)} and ${light(p.less_stops)}.`,
  window_as_good: (p) =>
    `As good as the best of the day, as far as anyone can tell: ${colour(p.more_delta_e00)} and ${light(p.less_stops)}.`,
  windows_ranked: (p) =>
    `Windows are ranked by ${AIMS[p.aim]}. One stop of light weighs as much as ${shown(p.percent_per_stop)} % of the colour error.`,
  windows_sky_assumed: (p) =>
    `On ${p.days} of ${p.of_days} ${p.of_days === 1 ? "day" : "days"} there are hours without a forecast: the sky is taken for clear then. Send your forecast nearer the day.`,
  windows_forecast_unused: (p) =>
    `${p.entries} ${p.entries === 1 ? "entry" : "entries"} of the forecast ${p.entries === 1 ? "bears" : "bear"} on no window: another day, an hour outside the opening hours, or a day with all its hours given.`,
  windows_sun_too_low: (p) =>
    `${p.windows} ${p.windows === 1 ? "window is" : "windows are"} left out: the sun stands below ${shown(p.min_elevation_deg)} degrees for some of the time, and this model does not hold there.`,
  windows_interpolated: (p) =>
    `Figures are worked out for fixed heights of the sun and drawn straight between them: the colour error is right to ${shown(p.delta_e00, 2)}, light to ${shown(p.stops, 1)} stop.`,
  windows_spread_shared: () =>
    "How sure the figures are was worked out for the best window, and is taken for the others, too.",
};
