import {
  CARD_NOISE_STOPS,
  channelStops,
  type FilterKind,
  type FilterShape,
  filterTransmittance,
  fitDensity,
  illuminant,
  meanSensor,
  type Spectrum,
} from "@sunfathom/optics";
import type { FilterFit } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";

/** A filter's kind and density, as a camera's pictures of a grey card in daylight with and without it tell them. */
export interface SampledFilter {
  kind: FilterKind;
  density: number;
  fit: FilterFit;
}

/** Densities that fields hold. */
const MOST = 3;

/**
 * Transmittance of a filter that is known by pictures of a card, 0 to 1. Whatever its curve is, on the card it lost what was seen: where
 * the curve differs from the kind's nominal one, its density does, too, so that both take the same stops of daylight of 5500 K (least
 * squares over the channels of the mean sensor). What is left open then is the noise of the pictures: the fit's standard error less what
 * the curve has part in, but all of it where the filter is like no kind.
 */
export function sampledTransmittance(
  { kind, density, fit }: SampledFilter,
  { filterShape, filterDensityErrors }: Nuisance,
): Spectrum {
  const open = openIn(fit) * filterDensityErrors;
  const own = Math.min(MOST, Math.max(0, likeOnCard(kind, density, filterShape) + open));
  return filterTransmittance(kind, own, filterShape);
}

/** From here on no kind is quite like the filter: from memory. */
const UNLIKE_STOPS = 0.15;

function openIn({ density_standard_error, residual_stops }: FilterFit): number {
  if (residual_stops > UNLIKE_STOPS) return density_standard_error;
  return (density_standard_error * CARD_NOISE_STOPS) / Math.max(CARD_NOISE_STOPS, residual_stops);
}

/** Fits that were made: an answer asks for the same few at every depth. */
const known = new Map<string, number>();
const KNOWN_AT_MOST = 256;

function likeOnCard(kind: FilterKind, density: number, shape: FilterShape): number {
  const { shift_nm = 0, widthScale = 1 } = shape;
  if (shift_nm === 0 && widthScale === 1) return density;
  const key = `${kind} ${density} ${shift_nm} ${widthScale}`;
  let fitted = known.get(key);
  if (fitted === undefined) {
    const stops = channelStops(filterTransmittance(kind, density));
    fitted = fitDensity([{ light: illuminant("D55"), stops }], kind, meanSensor(), shape).density;
    if (known.size >= KNOWN_AT_MOST) known.clear();
    known.set(key, fitted);
  }
  return fitted;
}
