/**
 * Kind and density of a filter from what a camera records of a grey card in daylight with and without it.
 *
 * Measured are the stops that each channel loses, which neither the card's grey nor the camera's gains move; fitted is the kind whose
 * nominal curve, at its best density, loses the same under D55 on the mean sensor (least squares over the channels). The standard
 * error of the density rests on what is left of the differences, and on 0.05 stop expected beforehand (from memory).
 */
import { illuminant } from "../colour/illuminants.js";
import { meanSensor } from "../sensor/mean-sensor.js";
import { multiply } from "../spectrum/combine.js";
import type { Spectrum } from "../spectrum/grid.js";
import { integrateProduct } from "../spectrum/integrate.js";
import { FILTER_KINDS, type FilterKind } from "./filter-kinds.js";
import { filterTransmittance } from "./transmittance.js";

/** Stops that red, green and blue lose. */
export type ChannelStops = readonly [red: number, green: number, blue: number];

export interface FilterFit {
  kind: FilterKind;
  density: number;
  density_standard_error: number;
  /** Root mean square over the channels of fitted less measured stops. */
  residual_stops: number;
  transmittance: Spectrum;
}

const EXPECTED_STOPS = 0.05;
const DENSITIES = Array.from({ length: 296 }, (_, n) => (n + 5) / 100);

let seen: readonly Spectrum[] | undefined;
const seenDaylight = (): readonly Spectrum[] => {
  const { red, green, blue } = meanSensor();
  seen ??= [red, green, blue].map((channel) => multiply(illuminant("D55"), channel));
  return seen;
};

/** Stops that the channels of the mean sensor lose to a filter in daylight of 5500 K. */
export function channelStops(transmittance: Spectrum): ChannelStops {
  const open = transmittance.map(() => 1);
  const [red = 0, green = 0, blue = 0] = seenDaylight().map((light) =>
    Math.log2(integrateProduct(light, open) / integrateProduct(light, transmittance)),
  );
  return [red, green, blue];
}

/** Every kind and density, and what it takes: worked out once. */
let nominal: { kind: FilterKind; density: number; stops: ChannelStops }[] | undefined;
const nominalFilters = () => {
  nominal ??= FILTER_KINDS.flatMap((kind) =>
    DENSITIES.map((density) => ({ kind, density, stops: channelStops(filterTransmittance(kind, density)) })),
  );
  return nominal;
};

/** @param measured stops that each channel lost */
export function fitFilter(measured: ChannelStops): FilterFit {
  const missOf = (stops: ChannelStops): number =>
    Math.sqrt(stops.reduce((sum, s, k) => sum + (s - (measured[k] ?? 0)) ** 2, 0) / stops.length);
  const [{ kind, density, miss }] = nominalFilters()
    .map((filter) => ({ ...filter, miss: missOf(filter.stops) }))
    .sort((p, q) => p.miss - q.miss);
  const step = 0.01;
  const [below, above] = [density - step, density + step].map((d) =>
    channelStops(filterTransmittance(kind, d)),
  );
  const steepness = Math.hypot(...above.map((s, k) => (s - (below[k] ?? 0)) / (2 * step)));
  return {
    kind,
    density,
    density_standard_error: Math.max(EXPECTED_STOPS, miss) / steepness,
    residual_stops: miss,
    transmittance: filterTransmittance(kind, density),
  };
}
