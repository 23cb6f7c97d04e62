import { CLEAR, filterTransmittance, type Spectrum } from "@sunfathom/optics";
import type { FilterVerdict } from "../result/filter-choice.js";
import type { Nuisance } from "../uncertainty/nuisance.js";

export interface Candidate {
  kind: FilterVerdict;
  /** 0 for `none`. */
  density: number;
}

/** Steps of half a stop, from half a stop to five. */
const DENSITY_STEP = 0.15;
const DENSITY_COUNT = 10;
const densities = Array.from(
  { length: DENSITY_COUNT },
  (_, i) => Math.round((i + 1) * DENSITY_STEP * 100) / 100,
);

export const NO_FILTER: Candidate = { kind: "none", density: 0 };

/** The stated grid on which filters are searched: none, then each kind from weak to dense; the first of equals wins. */
export const CANDIDATES: readonly Candidate[] = [
  NO_FILTER,
  ...(["red", "magenta"] as const).flatMap((kind) => densities.map((density) => ({ kind, density }))),
];

export const candidateFilter = ({ kind, density }: Candidate, { filterShape }: Nuisance): Spectrum =>
  kind === "none" ? CLEAR : filterTransmittance(kind, density, filterShape);

export const nameOf = ({ kind, density }: Candidate): string =>
  kind === "none" ? "no filter" : `${kind} ${density.toFixed(2)}`;
