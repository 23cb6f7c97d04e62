import type { MountPlace, MountVerdict } from "../result/filter-mounting.js";
import type { FilterHolder } from "../scene/filter-mounting-scene.js";
import type { Coded } from "./coded.js";
import type { FilterMountingReasons } from "./filter-mounting.js";
import type { MountingSteps } from "./mounting-steps.js";
import type { NamedFilter } from "./named-filter.js";

/** Steps of a plan that knows what its filters are mounted on. */
export interface MountStepCodes {
  /** No holder takes a filter: the lens stays bare, whatever the colours would ask for. */
  no_filter_fits: {
    error: number;
    instead_of?: NamedFilter;
    why: readonly Coded<FilterMountingReasons>[];
  };
  /** How what goes on the lens is held, what is done for it, and what that does. */
  fit_filter: {
    holder: FilterHolder;
    place: MountPlace;
    verdict: MountVerdict;
    /** Filters one behind the other. */
    filters: number;
    how: readonly Coded<FilterMountingReasons>[];
    do: readonly Coded<MountingSteps>[];
    why: readonly Coded<FilterMountingReasons>[];
  };
}

/** What such a plan takes from the shelf beside its filters. */
export interface MountTakeCodes {
  holder: { holder: FilterHolder };
  rings: { rings: readonly string[] };
  ring_lacking: { from_mm: number; to_mm: number };
}
