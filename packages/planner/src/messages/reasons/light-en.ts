import { shown } from "../format.js";

/** English texts of reasons on the light itself, which several decisions give, one function a code. Other languages add a catalogue of the same shape. */
export const LIGHT_REASONS_EN = {
  cct_without_meaning: (p: { depth_m: number; duv: number }) =>
    `From ${shown(p.depth_m, 1)} m the light lies ${shown(Math.abs(p.duv), 3)} from the Planckian locus: a colour temperature in kelvin has no meaning there (CIE: beyond 0.05), so none is given. Balance on a card.`,
  cct_beyond_locus: (p: { depth_m: number }) =>
    `From ${shown(p.depth_m, 1)} m the light is bluer than any glowing body: it has no colour temperature in kelvin. Balance on a card.`,
  red_not_only_transmitted: (p: { depth_m: number }) =>
    `Below about ${shown(p.depth_m)} m the last red is made in the water itself, by inelastic scattering and fluorescence, more than it comes down from the surface. This model counts only what comes down, so red figures there are too low and not to be trusted.`,
  sun_stands: (p: { elevation_deg: number; azimuth_deg: number; utc: string }) =>
    `At ${p.utc} the sun stands ${shown(p.elevation_deg)} degrees above the horizon there, at ${shown(p.azimuth_deg)} degrees from north.`,
  clock_shows_twice: (p: { utc: string }) =>
    `The clock shows this local time twice that day; the first is meant, ${p.utc}.`,
  night_there: () =>
    "It is night at that place and time: there is no daylight, and lamps are the only light.",
} as const;
