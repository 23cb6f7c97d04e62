import { CLEAR, filterTransmittance, type Spectrum } from "@sunfathom/optics";
import type { FilterFit, LensFilter } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { measuredCurve } from "./measured-curve.js";
import { sampledTransmittance } from "./sampled-filter.js";

/** Transmittance of the filter on the lens, 0 to 1; 1 where none is mounted. */
export function lensFilterOf(filter: LensFilter, nuisance: Nuisance): Spectrum {
  if (filter.filter_transmittance) {
    return measuredCurve(filter.filter_transmittance);
  }
  const { filter_kind: kind, filter_density: density } = filter;
  if (kind && density !== undefined) {
    const fit = fitOf(filter);
    if (fit) return sampledTransmittance({ kind, density, fit }, nuisance);
    return filterTransmittance(kind, density, nuisance.filterShape);
  }
  return CLEAR;
}

/** How well pictures tell a filter of the kit, or without a name the one on the lens; undefined where it is known in another way. */
export const fitOf = ({ filter_fits }: Pick<LensFilter, "filter_fits">, id?: string): FilterFit | undefined =>
  filter_fits?.find((fit) => fit.id === id);

export const hasLensFilter = (filter: LensFilter): boolean =>
  filter.filter_transmittance !== undefined || filter.filter_kind !== undefined;
