import type { FilterKind } from "../scene/scene.js";
import type { Nothing } from "./coded.js";
import type { NamedFilter } from "./named-filter.js";

/** What to take from the shelf, and why. */
export interface TakeCodes {
  lens_filter: { filter: NamedFilter };
  neutral_density: { density: number };
  lamp_filters: { filter: NamedFilter };
  lamp_filters_lacking: { kind: FilterKind; density: number };
  /** Also where they stay off: the rig is balanced with them. */
  lamp: Nothing;
  card: Nothing;
  spares: Nothing;
}
