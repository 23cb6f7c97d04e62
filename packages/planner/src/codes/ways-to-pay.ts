/** Ways to pay for lost light, or to get rid of light in excess. */
export interface WaysToPay {
  wide_open: { f_number: number; iso: number };
  depth_of_field: { f_number: number; iso: number };
  more_gain: { iso: number; allowed: number };
  close_aperture: { f_number: number; enough: boolean };
  neutral_density: { density: number; stops: number };
  shorter_shutter: { shutter_s: number };
  longer_shutter: { shutter_s: number; gains_stops: number };
  filter_off: { gains_stops: number };
  wait_for_sun: { elevation_deg: number; gains_stops: number };
  if_sun_rises: { elevation_deg: number; gains_stops: number };
  shallower: { depth_m: number };
  add_lamp: { flux_lm: number; beam_angle_deg: number; distance_m: number };
}
