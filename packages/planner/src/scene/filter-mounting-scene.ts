import type { FilterChange } from "./filter-change.js";

/** What stands between the lens and the water; `none` for a camera that is watertight itself, behind its own flat window. */
export type PortKind = "flat" | "dome" | "none";

/** `wide` and `standard` draw straight lines straight (rectilinear); a `fisheye` does not. */
export type LensKind = "wide" | "standard" | "fisheye";

/** How a filter is held: by the lens's thread, the port's thread, a hinge, a clip, behind the lens, or a frame over an action camera. */
export type FilterHolder =
  | "screw_on_lens"
  | "screw_on_port"
  | "flip"
  | "clip_on"
  | "rear_sheet"
  | "action_camera";

/** A lens on the outside of the port, in the water. */
export type WetLens = "none" | "wide" | "close_up";

export type FilterMaterial = "glass" | "resin";

/** A step ring that someone owns. */
export interface StepRing {
  /** The caller's own, different for each ring. */
  id: string;
  /** Thread that screws into the lens or port. */
  from_mm: number;
  /** Thread that it offers to the next ring or the filter. */
  to_mm: number;
  /** By how much it moves forward what is screwed into it. */
  thickness_mm: number;
}

/** Camera, port, filter and rings, with defaults filled in; fields that have no meaning here are absent. */
export interface FilterMountingScene {
  port_kind: PortKind;
  /** Radius of curvature of the dome. */
  dome_radius_mm?: number;
  lens_kind: LensKind;
  /** At the widest setting that is used; with the format's diagonal, or instead of it, the field of view in air. */
  focal_length_mm?: number;
  sensor_diagonal_mm?: number;
  /** Full field over the diagonal, in air. */
  field_of_view_deg?: number;
  f_number: number;
  wet_lens: WetLens;
  /** How far the front of the lens moves forward from the setting that is described to its longest one. */
  zoom_travel_mm: number;
  /** Free room between the lens's front rim and the port, at the setting that is described. */
  lens_port_gap_mm?: number;
  /** Whether the lens comes off the camera, so that something can be put behind it. */
  lens_interchangeable: boolean;
  /** Filter thread of the lens; absent where it has none. */
  lens_thread_mm?: number;
  /** Filter thread on the outside of the port; absent where it has none. */
  port_thread_mm?: number;
  /** Of the flat port, or the housing's window, where a clip or a hinge goes over it. */
  port_outer_diameter_mm?: number;
  /** Of the clip, hinge or frame that goes over it. */
  holder_inner_diameter_mm?: number;
  /** The holder that is asked for; the best one is advised when absent. */
  holder?: FilterHolder;
  /** Thread of the filter; that of the lens or port is assumed when absent. */
  filter_thread_mm?: number;
  /** Clear diameter of the filter, for those without a thread, or where it is known. */
  filter_clear_diameter_mm?: number;
  filter_thickness_mm: number;
  filter_material: FilterMaterial;
  /** From the front rim of the lens, or from an action camera's window, back to the entrance pupil; assumed when absent. */
  entrance_pupil_distance_mm?: number;
  rings: StepRing[];
  /** The opening behind the lens that a sheet has to cover, or the slot that it slides into. */
  rear_opening_width_mm?: number;
  rear_opening_height_mm?: number;
  /** A sheet slides into a `slot`, or is held by `tape` around the opening. */
  rear_fixing: "slot" | "tape";
  sheet_thickness_mm: number;
  sheet_refractive_index: number;
  /** How the filter is to be changed at depth, if at all. */
  filter_change_underwater: FilterChange;
}
