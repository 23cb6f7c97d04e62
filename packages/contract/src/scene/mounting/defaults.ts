/** What a mounting scene is taken to be where the caller does not say. The resolved scene lists what was taken from here. */
export const mountingDefaults = {
  f_number: 8,
  lens_interchangeable: true,
  wet_lens: "none",
  zoom_travel_mm: 0,
  filter_thickness_mm: 5,
  filter_material: "glass",
  rear_fixing: "slot",
  sheet_thickness_mm: 0.1,
  sheet_refractive_index: 1.5,
  filter_change_underwater: "none",
} as const;
