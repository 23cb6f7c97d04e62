import type { FilterKind } from "../scene/scene.js";

/** A kind of filter to mount, or none. */
export type FilterVerdict = FilterKind | "none";

/** What to call a filter by. */
export interface NamedFilter {
  kind: FilterVerdict;
  /** Nominal density; absent for no filter, and for one that is known by its measured curve. */
  density?: number;
  /** The caller's name of it, for a filter from the kit. */
  id?: string;
  /** One to be bought: densities to a tenth that do as well, the weakest first. */
  shelf?: { from: number; to: number };
}
