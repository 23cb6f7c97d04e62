import type { RedInPostTexts } from "../picture-texts.js";
import { capital } from "./capital.js";
import { dialShutter, settings } from "./dial.js";
import { filterName } from "./filter-name.js";
import { depth, neutral, shown, stops } from "./format.js";

/** How many times: a tenth matters below 3 alone. */
const times = (count: number): string =>
  shown(count, count < 2.95 && Math.round(10 * count) % 10 > 0 ? 1 : 0);

const quality: RedInPostTexts["quality"] = {
  excellent: "Clean",
  acceptable: "Grainy",
  poor: "Very grainy",
  gone: "Noise, no red",
};
const clipped = "White burns out";
const without = "No filter";

const exposed: (p: { off_by_stops: number }) => string = ({ off_by_stops }) =>
  Math.abs(off_by_stops) < 1 / 6
    ? "exposed right"
    : `${stops(Math.abs(off_by_stops))} too ${off_by_stops < 0 ? "dark" : "bright"}`;
const signal: (p: { red_signal_to_noise: number }) => string = ({ red_signal_to_noise }) =>
  red_signal_to_noise < 0.95
    ? "red is weaker than its noise"
    : red_signal_to_noise < 1.05
      ? "red is as strong as its noise"
      : `red is ${times(red_signal_to_noise)} times its noise`;

export const redInPost: RedInPostTexts = {
  headline: ({ verdict, cleaner_by, depth_m }, u) =>
    ({
      gone: `At ${depth(depth_m, u)}, there is no red to bring back afterwards`,
      clean_without: `At ${depth(depth_m, u)}, red can be brought back afterwards`,
      cleaner_through_filter: `At ${depth(depth_m, u)}, red added afterwards has ${times(cleaner_by)} times the noise`,
      alike: `At ${depth(depth_m, u)}, a filter makes red no cleaner`,
    })[verdict],
  why: {
    gone: "The water took the red before the camera could record it. Pushing lifts noise and nothing else, with a filter or without.",
    clean_without:
      "There is enough red in the light here. Pushed afterwards, it stays clean; a filter costs light and gains little.",
    cleaner_through_filter:
      "Pushing red afterwards lifts its noise along with it. A filter holds back green and blue instead: you can expose for more light, and red gets more of it.",
    alike: "Red is recorded hardly better through the filter. With it or without, pushing lifts noise, too.",
  },
  truth: "As it is",
  reading:
    "A red patch above, a white card below; the light falls by 3 stops to the right. Each picture below is pushed until this red and this white are right. Look for grain, for steps, and at the white.",
  settings_for: ({ settings_for, settings: set, neutral_density }) =>
    `Set for the picture ${settings_for === "filter" ? "with the" : "without a"} filter: ${settings(set)}, ${dialShutter(set.shutter_s)}${neutral_density === undefined ? "" : `, with ${neutral(neutral_density)}`}`,
  without,
  filtered: ({ filter, is_advised }) =>
    `${capital(filterName(filter))}${is_advised ? "" : ", not advised here"}`,
  quality,
  clipped,
  caption: (way) =>
    `${capital(exposed(way))}${way.is_clipped ? "" : `; ${signal(way)}, in ${shown(way.red_steps)} brightness steps`}`,
  squares: ({ bits }) =>
    `Each square is a pixel as you look at it, enlarged. Noise is drawn at random, as strong as computed; steps are those of a recording with ${bits} bits.`,
  description: ({ depth_m, filter, ways }, u) =>
    [
      `A red patch and a white card at ${depth(depth_m, u)}, recorded four ways and pushed until red and white are right.`,
      ...ways.map((way) => {
        const name = way.filtered ? capital(filterName(filter)) : without;
        const set = `set for the picture ${way.settings_for === "filter" ? "with the" : "without a"} filter`;
        return `${name}, ${set}: ${exposed(way)}; ${way.is_clipped ? clipped.toLowerCase() : signal(way)}.`;
      }),
    ].join(" "),
};
