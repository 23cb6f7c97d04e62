// The scenes on which the percentiles are held against a simulation.

const CAMERA = {
  min_iso: 200,
  max_iso: 3200,
  min_f_number: 2.8,
  max_f_number: 16,
  shutter_s: 1 / 50,
  bits: 8,
  white_balance_min_cct_K: 2500,
  white_balance_max_cct_K: 10000,
  white_balance_max_duv: 0.03,
};
const BY_DAY = {
  daylight_basis: "sun",
  cloud_oktas: 0,
  wind_speed_m_s: 4,
  subject_distance_m: 1,
  subject_facing: "camera",
  sun_side: "behind_camera",
  camera_tilt_deg: 0,
  bottom: "none",
  filter_change_underwater: "none",
};
const TWO_LAMPS = {
  flux_lm: 4000,
  count: 2,
  beam_angle_deg: 100,
  beam_angle_medium: "water",
  cct_K: 5600,
  distance_m: 0.8,
};
const scene = (name, depth_m, differs) => ({
  name,
  depth_m,
  scene: {
    ...CAMERA,
    ...BY_DAY,
    lamps: [TWO_LAMPS],
    min_depth_m: depth_m,
    max_depth_m: depth_m,
    sun_elevation_deg: 50,
    ...differs,
  },
});

export const SCENES = [
  scene("Type IB, 12 m, sun 50°", 12, { water_type: "IB" }),
  scene("Type 3C, 8 m, sun 50°", 8, { water_type: "3C" }),
  scene("Type 1C, 10 m, 7 oktas", 10, { water_type: "1C", sun_elevation_deg: 40, cloud_oktas: 7 }),
  scene("Blue, visibility 25 m, 15 m deep", 15, { visibility_m: 25, water_hue: "blue" }),
  scene("Green, Secchi 6 m, 6 m deep", 6, { secchi_depth_m: 6, water_hue: "green", subject_facing: "sun" }),
  scene("Chlorophyll 0.3 mg/m³, 18 m", 18, { chlorophyll_mg_m3: 0.3, cloud_oktas: 3 }),
  scene("Type IA, 4 m, over sand, sun beside", 4, {
    water_type: "IA",
    sun_side: "beside",
    bottom: "sand",
    bottom_depth_m: 6,
  }),
];

/** The check scene of practice: blue water of 15 m visibility under a clear sky, sun 60 degrees high. */
export const practiceAt = (depth_m, differs = {}) =>
  scene("practice", depth_m, {
    visibility_m: 15,
    water_hue: "blue",
    sun_elevation_deg: 60,
    lamps: [],
    ...differs,
  }).scene;

/** A reef over which pictures are finished in several ways: a range of depths by day. */
export const reefFinishedBy = (differs) =>
  scene("reef", 5, { water_type: "IB", max_depth_m: 12, lamps: [], ...differs }).scene;

/** One depth by day, of a water and a finish that are given. */
export const choiceAt = (depth_m, differs) => scene("choice", depth_m, { lamps: [], ...differs }).scene;
