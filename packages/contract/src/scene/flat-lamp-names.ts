/** Flat fields that stand for one group of lamps, each after the lamp's own field with `lamp_` before it. */
export const flatLampNames = [
  "lamp_flux_lm",
  "lamp_count",
  "lamp_beam_angle_deg",
  "lamp_beam_angle_medium",
  "lamp_cct_K",
  "lamp_led",
  "lamp_distance_m",
  "lamp_filter_kind",
  "lamp_filter_density",
] as const;
