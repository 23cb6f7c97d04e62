import { howOften, kelvin, shown } from "../format.js";

/** English texts of reasons on white balance, one function a code. Other languages add a catalogue of the same shape. */
export const WHITE_BALANCE_REASONS_EN = {
  kelvin_leaves_the_water: (p: { cct_K: number; left: number; path_m: number }) =>
    `Set to the lamps' own ${kelvin(p.cct_K)} K, the camera would leave a cast of ${shown(p.left, 1)} (CIEDE2000) from ${shown(p.path_m, 1)} m of water between lamp, subject and camera: a card at working distance takes it out.`,
  balance_again: (p: { times: number; first_m: number; tolerance: number }) =>
    `Light changes with depth: going down, the cast since the last balance reaches ${shown(p.tolerance, 1)} (CIEDE2000) ${howOften(p.times)}, first at ${shown(p.first_m, 1)} m.`,
  one_balance_serves: (p: { tolerance: number }) =>
    `One balance serves the whole range: a new one would nowhere take out a cast of more than ${shown(p.tolerance, 1)} (CIEDE2000).`,
  balance_in_reach: () => "The camera's white balance reaches a neutral card over the whole range.",
  balance_falls_short: (p: { depth_m: number; short_stops: number; cast: number }) =>
    `At ${shown(p.depth_m, 1)} m the camera's balance falls short by ${shown(p.short_stops, 2)} stops between channels, which leaves a cast of ${shown(p.cast, 1)} (CIEDE2000) on grey.`,
} as const;
