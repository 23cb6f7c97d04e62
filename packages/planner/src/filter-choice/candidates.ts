import { CLEAR, filterTransmittance, type Spectrum } from "@sunfathom/optics";
import type { FilterVerdict, NamedFilter } from "../codes/named-filter.js";
import { fitOf } from "../light/lens-filter.js";
import { measuredCurve } from "../light/measured-curve.js";
import { sampledTransmittance } from "../light/sampled-filter.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { FilterFit, KitItem, LensFilter, Scene } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { kindOfCurve } from "./kind-of-curve.js";
import { kindOfItem } from "./kind-of-item.js";

export interface Candidate {
  kind: FilterVerdict;
  /** Nominal density; 0 for `none`, absent for a measured filter. */
  density?: number;
  /** The caller's name of it, for a filter from the kit. */
  id?: string;
  /** A measured curve in place of kind and density. */
  measured?: Spectrum;
  /** How well pictures of a card tell its density. */
  fit?: FilterFit;
  /** On the lens already: taken as it is. */
  mounted?: true;
}

/** Densities are first searched in steps of half a stop, from half a stop to five. */
const COARSE_STEP = 0.15;
const COARSE_COUNT = 10;
/** Then around the best one. */
const FINE_SHIFTS = [-0.1, -0.05, 0.05, 0.1];
const hundredths = (density: number): number => Math.round(density * 100) / 100;
const coarse = Array.from({ length: COARSE_COUNT }, (_, i) => hundredths((i + 1) * COARSE_STEP));

export const NO_FILTER: Candidate = { kind: "none", density: 0 };
/** Kinds that belong on a lens to change colour. */
const LENS_KINDS = ["red", "magenta"] as const;

/** The stated grid on which filters are searched: none, then each kind from weak to dense; the first of equals wins. */
export const GRID: Readonly<NonEmpty<Candidate>> = [
  NO_FILTER,
  ...LENS_KINDS.flatMap((kind) => coarse.map((density) => ({ kind, density }))),
];

/** What is on a lens, or on a lamp; undefined where there is nothing. */
export function mountedIn({
  filter_kind,
  filter_density,
  filter_transmittance,
  ...fits
}: Omit<LensFilter, "filter_change_underwater">): Candidate | undefined {
  if (filter_transmittance) {
    const measured = measuredCurve(filter_transmittance);
    return { kind: kindOfCurve(filter_transmittance), measured, mounted: true };
  }
  return filter_kind === undefined || filter_density === undefined
    ? undefined
    : { kind: filter_kind, density: filter_density, ...toldBy(fitOf(fits)), mounted: true };
}

const toldBy = (fit: FilterFit | undefined) => fit && { fit };

function ofKit(item: KitItem, fits: Pick<Scene, "filter_fits">): Candidate[] {
  const { id, filter_kind, filter_density, filter_transmittance } = item;
  if (filter_transmittance) {
    const measured = measuredCurve(filter_transmittance);
    return [{ kind: kindOfItem(item), id, measured }];
  }
  return filter_kind && filter_density !== undefined
    ? [{ kind: filter_kind, density: filter_density, id, ...toldBy(fitOf(fits, id)) }]
    : [];
}

/** What a scene allows to choose from: the filters of its kit where it has one, else the grid. */
export const candidatesFor = ({
  kit,
  ...fits
}: Pick<Scene, "kit" | "filter_fits">): Readonly<NonEmpty<Candidate>> =>
  kit
    ? [NO_FILTER, ...kit.filter(({ item }) => item === "lens_filter").flatMap((item) => ofKit(item, fits))]
    : GRID;

/** Where a lens can carry no filter. */
export const bareLens: typeof candidatesFor = () => [NO_FILTER];

/** Densities around the best of the grid; none around a filter that is owned, or around no filter. */
export function finerThan({ kind, density, id, mounted }: Candidate): Candidate[] {
  if (kind === "none" || density === undefined || id !== undefined || mounted) return [];
  return FINE_SHIFTS.map((shift) => hundredths(density + shift))
    .filter((finer) => finer > 0)
    .map((finer) => ({ kind, density: finer }));
}

/** Densities beyond the ends of a band, so that it is known as finely as its best. */
export function beyondBand(
  { kind, id, mounted }: Candidate,
  band: { from: number; to: number } | undefined,
): Candidate[] {
  if (!band || id !== undefined || mounted) return [];
  return [band.from - 0.1, band.from - 0.05, band.to + 0.05, band.to + 0.1]
    .map(hundredths)
    .filter((density) => density > 0)
    .map((density) => ({ kind, density }));
}

export function candidateFilter({ kind, density, measured, fit }: Candidate, nuisance: Nuisance): Spectrum {
  if (measured) return measured;
  if (kind === "none" || density === undefined) return CLEAR;
  if (fit) return sampledTransmittance({ kind, density, fit }, nuisance);
  return filterTransmittance(kind, density, nuisance.filterShape);
}

/** Filters are sold in tenths of a density: those of a band, or the one nearest to it. */
export function onShelf(density: number, from = density, to = density): { from: number; to: number } {
  const [first, last] = [Math.ceil(from * 10 - 1e-6), Math.floor(to * 10 + 1e-6)];
  const nearest = Math.max(1, Math.round(density * 10));
  if (first > last) return { from: nearest / 10, to: nearest / 10 };
  // Filters are not sold by less than two tenths.
  return { from: first / 10, to: (last - first < 2 ? first : last) / 10 };
}

/** What to call a candidate by. */
export const named = ({ kind, density, id, mounted }: Candidate): NamedFilter => ({
  kind,
  ...(kind === "none" || density === undefined
    ? {}
    : { density, ...(id === undefined && !mounted ? { shelf: onShelf(density) } : {}) }),
  ...(id === undefined ? {} : { id }),
});
