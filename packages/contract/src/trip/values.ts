import {
  behindLensNames,
  heldInFrontNames,
  lensAndPortNames,
  sheetNames,
} from "../scene/mounting/names-in-scene.js";

// What a trip is planned with. Plain data, without zod.

/** What light is looked for. */
export const windowAims = ["natural_colour", "sunlit_background", "lamps_lead"] as const;

/** Where a window's cloud comes from. */
export const cloudBases = ["hour", "day", "assumed_clear"] as const;

/** Days in which light is looked for. */
export const mostWindowDays = 31;
/** Entries of a forecast: one for each hour of these days, and one for each day. */
export const mostForecast = mostWindowDays * 25;
/** How long a window may be, min. */
export const windowLength_min = { least: 30, most: 240, usual: 60 } as const;
/** Windows that are listed of a day. */
export const mostListedWindows = 3;

/** Fields that a site does not have: where and when, and how the answer is said, stand beside it. */
export const besideSite = [
  "daylight_basis",
  "sun_elevation_deg",
  "latitude_deg",
  "longitude_deg",
  "time",
  "local_time",
  "time_zone",
  "cloud_oktas",
  "camera_heading_deg",
  "language",
  "units",
  "expect_model_version",
] as const;

/** What a trip may have: dives, guests, entries of the shelf, of each, filters of one guest's own, and rings of the shop. */
export const mostTrip = { dives: 31, guests: 40, shelf: 40, quantity: 40, kit: 16, rings: 24 } as const;
/** Filters that are judged before cameras, dive by dive: beyond it the answer takes longer than anybody waits. */
export const mostTripJudged = 5000;
/** How long a dive may be, min. */
export const diveLength_min = { least: 5, most: 240, usual: 60 } as const;

/** Fields that a dive's scene has: all but the camera, its filters and video lights, and what stands beside it. */
export const tripDiveNames = [
  "water_type",
  "chlorophyll_mg_m3",
  "secchi_depth_m",
  "visibility_m",
  "water_hue",
  "kd_samples",
  "card_samples",
  "transfer_curve",
  "locked_exposure",
  "locked_balance",
  "daylight_basis",
  "sun_elevation_deg",
  "latitude_deg",
  "longitude_deg",
  "cloud_oktas",
  "wind_speed_m_s",
  "overhead",
  "daylight_open_share",
  "ice_thickness_m",
  "snow_thickness_m",
  "depth_m",
  "min_depth_m",
  "max_depth_m",
  "subject_distance_m",
  "subject_facing",
  "subject_in_reach",
  "sun_side",
  "camera_heading_deg",
  "camera_tilt_deg",
  "bottom",
  "bottom_reflectance",
  "bottom_depth_m",
] as const;

/** Fields that a guest's camera has, port and rings among them. */
export const tripCameraNames = [
  "camera_class",
  "sensor_samples",
  "iso",
  "min_iso",
  "max_iso",
  "f_number",
  "min_f_number",
  "max_f_number",
  "shutter_s",
  "frame_rate_fps",
  "shutter_angle_deg",
  "bits",
  "recording_curve",
  "recording_curve_points",
  "white_balance_mode",
  "white_balance_kelvin_K",
  "exposure_mode",
  "finish",
  "white_balance_min_cct_K",
  "white_balance_max_cct_K",
  "white_balance_max_duv",
  "balance_tolerance_delta_e00",
  ...lensAndPortNames,
  ...behindLensNames,
  "rings",
] as const;

/** What of a piece says how it is held. */
export const tripPieceMountNames = [...heldInFrontNames, ...sheetNames] as const;

/** What was done to lens and balance on a dive. */
export const lensEvents = ["balance", "filter_on", "filter_off"] as const;
/** And what a timeline has moments for. */
export const momentActions = [...lensEvents, "exposure"] as const;
/** How the last balance stands over a clip. */
export const clipBalances = ["held", "close", "lost", "not_set"] as const;
/** Whether a timeline rests on what was told of a dive, or on the plan for it. */
export const timelineBases = ["events", "plan"] as const;

/** Samples of a dive's depth, and how long it may last, s. */
export const mostDiveSamples = 20_000;
export const longestDive_s = 43_200;
/** Characters of a file of a dive log. */
export const longestUddf = 1_000_000;
export const mostDiveClips = 200;
export const mostDiveEvents = 200;
/** Moments of an answer: those of the events or of the plan, and new exposures. */
export const mostMoments = 400;

/** What cards of a dive mark. */
export const markedThings = [
  "exposure",
  "balance_reach",
  "red_attenuation",
  "green_attenuation",
  "blue_attenuation",
  "filter_density",
] as const;
export const markVerdicts = ["agrees", "more", "less"] as const;
export const mostCardFrames = 32;

/** Fields that the site of a dive that was dived does not have: its depths are the dive's. */
export const besideDive = [
  "depth_m",
  "min_depth_m",
  "max_depth_m",
  "language",
  "units",
  "expect_model_version",
] as const;
