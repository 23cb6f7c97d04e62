/**
 * Kind and density of a filter from what a camera records of a grey card in daylight with and without it.
 *
 * Measured are the stops that each channel loses, which neither the card's grey nor the camera's gains move; fitted is the kind whose
 * nominal curve, at its best density, loses the same under D55 on the camera's sensor, the mean one where no other is known (least squares over the channels). The standard
 * error of the density rests on what is left of the differences, and on 0.05 stop expected beforehand (from memory).
 */
import { illuminant } from "../colour/illuminants.js";
import { meanSensor, type Sensor } from "../sensor/mean-sensor.js";
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

const MEAN = meanSensor();
const EXPECTED_STOPS = 0.05;
const DENSITIES = Array.from({ length: 296 }, (_, n) => (n + 5) / 100);

/** What each channel of a sensor sees of daylight. */
const seenDaylight = ({ red, green, blue }: Sensor): readonly Spectrum[] =>
  [red, green, blue].map((channel) => multiply(illuminant("D55"), channel));

/** Stops that channels lose to a filter. @param seen without it */
function stopsOf(seen: readonly Spectrum[], transmittance: Spectrum): ChannelStops {
  const open = transmittance.map(() => 1);
  const [red = 0, green = 0, blue = 0] = seen.map((light) =>
    Math.log2(integrateProduct(light, open) / integrateProduct(light, transmittance)),
  );
  return [red, green, blue];
}

/** Stops that the channels of a sensor lose to a filter in daylight of 5500 K. */
export const channelStops = (transmittance: Spectrum, sensor: Sensor = MEAN): ChannelStops =>
  stopsOf(seenDaylight(sensor), transmittance);

interface Nominal {
  kind: FilterKind;
  density: number;
  stops: ChannelStops;
}

const filtersSeenBy = (seen: readonly Spectrum[]): Nominal[] =>
  FILTER_KINDS.flatMap((kind) =>
    DENSITIES.map((density) => ({ kind, density, stops: stopsOf(seen, filterTransmittance(kind, density)) })),
  );

/** Every kind and density, and what it takes from a sensor: worked out once for each. */
const known = new WeakMap<Sensor, { seen: readonly Spectrum[]; filters: Nominal[] }>();

function nominalFilters(sensor: Sensor): { seen: readonly Spectrum[]; filters: Nominal[] } {
  const found = known.get(sensor);
  if (found !== undefined) return found;
  const seen = seenDaylight(sensor);
  const worked = { seen, filters: filtersSeenBy(seen) };
  known.set(sensor, worked);
  return worked;
}

/**
 * @param measured stops that each channel lost
 * @param sensor that saw it; the mean one where absent
 */
export function fitFilter(measured: ChannelStops, sensor: Sensor = MEAN): FilterFit {
  const { seen, filters } = nominalFilters(sensor);
  const missOf = (stops: ChannelStops): number =>
    Math.sqrt(stops.reduce((sum, s, k) => sum + (s - (measured[k] ?? 0)) ** 2, 0) / stops.length);
  const [{ kind, density, miss }] = filters
    .map((filter) => ({ ...filter, miss: missOf(filter.stops) }))
    .sort((p, q) => p.miss - q.miss);
  const step = 0.01;
  const [below, above] = [density - step, density + step].map((d) =>
    stopsOf(seen, filterTransmittance(kind, d)),
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
