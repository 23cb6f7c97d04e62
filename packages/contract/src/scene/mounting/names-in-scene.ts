/** Fields of a scene that say what there is to mount a filter on: lens and port. */
export const lensAndPortNames = [
  "port_kind",
  "lens_kind",
  "dome_radius_mm",
  "focal_length_mm",
  "sensor_diagonal_mm",
  "field_of_view_deg",
  "lens_interchangeable",
  "lens_thread_mm",
  "port_thread_mm",
  "port_outer_diameter_mm",
  "wet_lens",
  "zoom_travel_mm",
  "lens_port_gap_mm",
  "entrance_pupil_distance_mm",
] as const;

/** How a filter is held in front of them. */
export const heldInFrontNames = [
  "holder",
  "holder_inner_diameter_mm",
  "filter_thread_mm",
  "filter_clear_diameter_mm",
  "filter_thickness_mm",
  "filter_material",
] as const;

/** What there is behind the lens. */
export const behindLensNames = ["rear_opening_width_mm", "rear_opening_height_mm", "rear_fixing"] as const;

/** A sheet that goes there. */
export const sheetNames = ["sheet_thickness_mm", "sheet_refractive_index"] as const;

/** Fields of a scene that say what a filter is mounted on; with one of them go `port_kind` and `lens_kind`. */
export const mountingInSceneNames = [
  ...lensAndPortNames,
  ...heldInFrontNames,
  ...behindLensNames,
  ...sheetNames,
  "rings",
] as const;
