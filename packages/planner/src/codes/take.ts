import type { FilterKind } from "../scene/scene.js";
import type { Nothing } from "./coded.js";
import type { NamedFilter } from "./named-filter.js";
import type { LampCheck, Mount } from "./steps.js";

/** What to take from the shelf, and why. */
export interface TakeCodes {
  lens_filter: { filter: NamedFilter };
  neutral_density: { density: number };
  /** What filters are changed on under water. */
  filter_mount: { mount: Mount };
  lamp_filters: { filter: NamedFilter };
  lamp_filters_lacking: { kind: FilterKind; density: number };
  /** With what they are checked for, where they are used; also where they stay off: the rig is balanced with them. */
  lamp: { check?: LampCheck };
  /** Beside video lights that are used. */
  dive_light: Nothing;
  card: Nothing;
  spares: Nothing;
}
