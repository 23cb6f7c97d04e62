import { shown } from "../format.js";

/** English texts of reasons on attenuation, one function a code. Other languages add a catalogue of the same shape. */
export const ATTENUATION_REASONS_EN = {
  red_goes_first: (p: { red_stops: number; green_stops: number; blue_stops: number; depth_m: number }) =>
    `At ${shown(p.depth_m, 1)} m this water has taken ${shown(p.red_stops, 1)} stops from the red channel, ${shown(p.green_stops, 1)} from green and ${shown(p.blue_stops, 1)} from blue.`,
  no_daylight_relative: () =>
    "Without daylight the losses are those that an even sky of 5500 K would suffer; no illuminance is given.",
  sun_path: (p: { mu0: number }) =>
    `The sun's slant lengthens the way through the water: the mean path cosine is ${shown(p.mu0, 2)}, against 0.90 for the tables.`,
} as const;
