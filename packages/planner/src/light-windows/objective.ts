/**
 * What a window of light is ranked by: `cost = colour error / 2 ^ (weight x light)`, light in stops. It falls with less colour error
 * and with more light, so that no window is ranked before one that beats it on both. The weights are judgements, written down before
 * any result was seen (services/api/docs/guides/3-trips.md).
 */
export const AIMS = ["natural_colour", "sunlit_background", "lamps_lead"] as const;
export type WindowAim = (typeof AIMS)[number];

/** Of a stop of light, in doublings of the colour error. */
export const WEIGHT_PER_STOP: Readonly<Record<WindowAim, number>> = {
  natural_colour: 1 / 6,
  sunlit_background: 1 / 2,
  lamps_lead: 1 / 3,
};

/** @param light_stops of what the aim wants, above any fixed level */
export const windowCost = (aim: WindowAim, delta_e00: number, light_stops: number): number =>
  delta_e00 * 2 ** (-WEIGHT_PER_STOP[aim] * light_stops);
