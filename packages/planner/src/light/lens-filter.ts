import { CLEAR, filterTransmittance, type Spectrum } from "@sunfathom/optics";
import type { LensFilter } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { measuredCurve } from "./measured-curve.js";

/** Transmittance of the filter on the lens, 0 to 1; 1 where none is mounted. */
export function lensFilterOf(filter: LensFilter, nuisance: Nuisance): Spectrum {
  if (filter.filter_transmittance) {
    return measuredCurve(filter.filter_transmittance);
  }
  if (filter.filter_kind && filter.filter_density !== undefined) {
    return filterTransmittance(filter.filter_kind, filter.filter_density, nuisance.filterShape);
  }
  return CLEAR;
}

export const hasLensFilter = (filter: LensFilter): boolean =>
  filter.filter_transmittance !== undefined || filter.filter_kind !== undefined;
