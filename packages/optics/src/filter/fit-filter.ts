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
import { densityShape, FILTER_KINDS, type FilterKind } from "./filter-kinds.js";
import { bandTransmittance, CLEAR, filterTransmittance } from "./transmittance.js";

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
/** Noise of a channel's stops, two pictures of a card taken one from the other: from memory. */
export const CARD_NOISE_STOPS = 0.05;
const DENSITIES = Array.from({ length: 296 }, (_, n) => (n + 5) / 100);

/** What a channel sees of daylight, by wavelength and in all. */
interface Seen {
  light: Spectrum;
  open: number;
}

const seenDaylight = ({ red, green, blue }: Sensor): readonly Seen[] =>
  [red, green, blue].map((channel) => {
    const light = multiply(illuminant("D55"), channel);
    return { light, open: integrateProduct(light, CLEAR) };
  });

/** Stops that channels lose to a filter. @param seen without it */
function stopsOf(seen: readonly Seen[], transmittance: Spectrum): ChannelStops {
  const [red = 0, green = 0, blue = 0] = seen.map(({ light, open }) =>
    Math.log2(open / integrateProduct(light, transmittance)),
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

interface Curve {
  kind: FilterKind;
  density: number;
  transmittance: Spectrum;
}

/** Every kind and density, worked out when a filter is first fitted: by far the most of what a sensor of its own takes. */
let curves: Curve[] | undefined;
function nominalCurves(): Curve[] {
  curves ??= FILTER_KINDS.flatMap((kind) => {
    const band = densityShape(kind);
    return DENSITIES.map((density) => ({ kind, density, transmittance: bandTransmittance(band, density) }));
  });
  return curves;
}

const filtersSeenBy = (seen: readonly Seen[]): Nominal[] =>
  nominalCurves().map(({ kind, density, transmittance }) => ({
    kind,
    density,
    stops: stopsOf(seen, transmittance),
  }));

/** Every kind and density, and what it takes from a sensor: worked out once for each. */
const known = new WeakMap<Sensor, { seen: readonly Seen[]; filters: Nominal[] }>();

function nominalFilters(sensor: Sensor): { seen: readonly Seen[]; filters: Nominal[] } {
  const found = known.get(sensor);
  if (found !== undefined) return found;
  const seen = seenDaylight(sensor);
  const worked = { seen, filters: filtersSeenBy(seen) };
  known.set(sensor, worked);
  return worked;
}

const distance2 = ([r, g, b]: ChannelStops, [red, green, blue]: ChannelStops): number =>
  (r - red) ** 2 + (g - green) ** 2 + (b - blue) ** 2;

/**
 * @param measured stops that each channel lost
 * @param sensor that saw it; the mean one where absent
 */
export function fitFilter(measured: ChannelStops, sensor: Sensor = MEAN): FilterFit {
  const { seen, filters } = nominalFilters(sensor);
  // A kit may have sixty-four filters to fit, before anybody knows what its answer costs: one pass over all there are, no more.
  let [nearest] = filters;
  let least = Number.POSITIVE_INFINITY;
  for (const filter of filters) {
    const squares = distance2(filter.stops, measured);
    if (squares < least) [nearest, least] = [filter, squares];
  }
  const { kind, density } = nearest;
  const miss = Math.sqrt(least / measured.length);
  const step = 0.01;
  const [below, above] = [density - step, density + step].map((d) =>
    stopsOf(seen, filterTransmittance(kind, d)),
  );
  const steepness = Math.hypot(...above.map((s, k) => (s - (below[k] ?? 0)) / (2 * step)));
  return {
    kind,
    density,
    density_standard_error: Math.max(CARD_NOISE_STOPS, miss) / steepness,
    residual_stops: miss,
    transmittance: filterTransmittance(kind, density),
  };
}
