import { CLEAR, filterTransmittance, measuredTransmittance, type Spectrum } from "@sunfathom/optics";
import type { LensFilter } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";

/** Transmittance of the filter on the lens, 0 to 1; 1 where none is mounted. */
export function lensFilterOf(filter: LensFilter, nuisance: Nuisance): Spectrum {
  if (filter.filter_transmittance) {
    return measuredTransmittance(
      filter.filter_transmittance.map((s) => s.wavelength_nm),
      filter.filter_transmittance.map((s) => s.transmittance),
    );
  }
  if (filter.filter_kind && filter.filter_density !== undefined) {
    return filterTransmittance(filter.filter_kind, filter.filter_density, nuisance.filterShape);
  }
  return CLEAR;
}

export const hasLensFilter = (filter: LensFilter): boolean =>
  filter.filter_transmittance !== undefined || filter.filter_kind !== undefined;
