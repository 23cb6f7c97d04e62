/**
 * Other words, common in the trade and in other programs, for what a field or an option is called here: those that `nearest`
 * does not find by their letters.
 */
export const otherNames: ReadonlyMap<string, string> = new Map(
  Object.entries({
    water_type: "water jerlov",
    visibility_m: "viz",
    sun_elevation_deg: "sun_height sun_angle sun_altitude elevation",
    longitude_deg: "lng",
    time_zone: "tz",
    cloud_oktas: "clouds cloud_cover",
    subject_distance_m: "camera_distance",
    f_number: "aperture f_stop fstop f",
    shutter_s: "shutter_speed exposure_time",
    bits: "bit_depth",
    filter_kind: "filter filter_colour filter_color",
    port_kind: "port",
    lens_kind: "lens",
    lamps: "lights",
    flux_lm: "lumen lumens",
    cct_K: "kelvin",
    field_of_view_deg: "fov angle_of_view",
  }).flatMap(([name, others]) => others.split(" ").map((other) => [other, name] as const)),
);
