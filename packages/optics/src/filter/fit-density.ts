/**
 * Density of a filter of a known kind from what a camera records of a grey card under water with and without it.
 *
 * Measured are the stops that each channel loses in each picture, under light that is known; fitted is the density whose nominal curve
 * loses the same (least squares over all channels and pictures). Domain: densities from 0.01 to 3.
 */
import type { Sensor } from "../sensor/mean-sensor.js";
import { multiply } from "../spectrum/combine.js";
import type { Spectrum } from "../spectrum/grid.js";
import { integrateProduct } from "../spectrum/integrate.js";
import type { FilterKind, FilterShape } from "./filter-kinds.js";
import { CLEAR, filterTransmittance } from "./transmittance.js";

/** A picture through the filter. */
export interface FilteredPicture {
  /** Light of the card as it arrives at the filter, any scale. */
  light: Spectrum;
  /** Stops that red, green and blue lost to the filter. */
  stops: readonly [red: number, green: number, blue: number];
}

export interface DensityFit {
  density: number;
  /** By how much the density moves for each stop that is measured more, channel by channel, picture by picture. */
  gains: number[];
  /** Root mean square of fitted less measured stops. */
  residual_stops: number;
}

const LEAST = 0.01;
const MOST = 3;
const STEP = 1e-3;

/** Stops that channels lose to a filter in each of the lights, one after another. */
export function stopsUnder(
  lights: readonly Spectrum[],
  { red, green, blue }: Sensor,
  transmittance: Spectrum,
): number[] {
  return lights.flatMap((light) =>
    [red, green, blue].map((channel) => {
      const seen = multiply(light, channel);
      return Math.log2(integrateProduct(seen, CLEAR) / integrateProduct(seen, transmittance));
    }),
  );
}

/** @param shape of the filter's curve; the nominal one where absent */
export function fitDensity(
  pictures: readonly FilteredPicture[],
  kind: FilterKind,
  sensor: Sensor,
  shape: FilterShape = {},
): DensityFit {
  const lights = pictures.map(({ light }) => light);
  const measured = pictures.flatMap(({ stops }) => stops);
  const lost = (density: number) => stopsUnder(lights, sensor, filterTransmittance(kind, density, shape));
  const missAt = (density: number): number =>
    lost(density).reduce((sum, stops, i) => sum + (stops - (measured[i] ?? stops)) ** 2, 0);
  // Stops rise with density: the miss has one least, which halving the stretch by the golden section finds.
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [LEAST, MOST];
  while (high - low > STEP / 10) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (missAt(a) <= missAt(b)) high = b;
    else low = a;
  }
  const density = (low + high) / 2;
  const [below, above] = [lost(density - STEP), lost(density + STEP)];
  const slopes = above.map((stops, i) => (stops - (below[i] ?? stops)) / (2 * STEP));
  const squares = slopes.reduce((sum, slope) => sum + slope ** 2, 0);
  return {
    density,
    gains: slopes.map((slope) => slope / squares),
    residual_stops: Math.sqrt(missAt(density) / measured.length),
  };
}
