// Generated from openapi/openapi.json by packages/sdk/scripts/generate.mjs. Do not edit.

import type { FieldsOf, Picked } from "../core/fields.js";
import type { Call, CallOptions, Send } from "../core/types.js";
import type {
  AttenuationAnswer,
  Brief,
  ColourRecoveryAnswer,
  CuttingTemplateLook,
  CuttingTemplateRequest,
  DiveAdviceAnswer,
  DiveTimelinesAnswer,
  DiveTimelinesRequest,
  ExposureLossAnswer,
  FilterChoiceAnswer,
  FilterKindsAnswer,
  FilterMountingAnswer,
  GradeLook,
  Health,
  KitAdviceAnswer,
  KitAdviceRequest,
  LightWindowsAnswer,
  LightWindowsRequest,
  MixedLightAnswer,
  ModelsAnswer,
  MountingScene,
  PictureLook,
  ProblemPage,
  QuizAnswersRequest,
  QuizItemsRequest,
  QuizMarks,
  QuizPackageRequest,
  QuizPaper,
  Scene,
  SlateLook,
  TripAdviceAnswer,
  TripAdviceRequest,
  WaterTypesAnswer,
  WhiteBalanceAnswer,
} from "./types.js";

const sceneQuery = [
  "water_type",
  "chlorophyll_mg_m3",
  "secchi_depth_m",
  "visibility_m",
  "water_hue",
  "daylight_basis",
  "sun_elevation_deg",
  "latitude_deg",
  "longitude_deg",
  "time",
  "local_time",
  "time_zone",
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
  "bottom_depth_m",
  "camera_class",
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
  "finish",
  "exposure_mode",
  "white_balance_mode",
  "white_balance_kelvin_K",
  "white_balance_min_cct_K",
  "white_balance_max_cct_K",
  "white_balance_max_duv",
  "balance_tolerance_delta_e00",
  "filter_kind",
  "filter_density",
  "filter_change_underwater",
  "filter_stops",
  "lamp_flux_lm",
  "lamp_count",
  "lamp_beam_angle_deg",
  "lamp_beam_angle_medium",
  "lamp_cct_K",
  "lamp_led",
  "lamp_distance_m",
  "lamp_filter_kind",
  "lamp_filter_density",
  "wanted_lead_stops",
  "wanted_lead_distance_m",
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
  "holder",
  "holder_inner_diameter_mm",
  "filter_thread_mm",
  "filter_clear_diameter_mm",
  "filter_thickness_mm",
  "filter_material",
  "rear_opening_width_mm",
  "rear_opening_height_mm",
  "rear_fixing",
  "sheet_thickness_mm",
  "sheet_refractive_index",
  "expect_model_version",
  "language",
  "units",
];

const query2 = [
  "port_kind",
  "lens_kind",
  "dome_radius_mm",
  "focal_length_mm",
  "sensor_diagonal_mm",
  "field_of_view_deg",
  "f_number",
  "lens_interchangeable",
  "lens_thread_mm",
  "port_thread_mm",
  "port_outer_diameter_mm",
  "wet_lens",
  "zoom_travel_mm",
  "lens_port_gap_mm",
  "entrance_pupil_distance_mm",
  "holder",
  "holder_inner_diameter_mm",
  "filter_thread_mm",
  "filter_clear_diameter_mm",
  "filter_thickness_mm",
  "filter_material",
  "filter_change_underwater",
  "rear_opening_width_mm",
  "rear_opening_height_mm",
  "rear_fixing",
  "sheet_thickness_mm",
  "sheet_refractive_index",
  "expect_model_version",
  "language",
  "units",
];

/**
 * Answers to a scene. POST is as safe as GET: nothing is stored.
 */
export class Calculations {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

  /**
   * What the water leaves of the light. Per depth: the spectrum that is left, the loss of red, green and blue, of light as the eye weighs it and of photosynthetically active radiation, the colour of the light, and how deep red reaches.
   * @param scene see `Scene` for fields, units and defaults
   * @returns `AttenuationAnswer`, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.calculations.attenuation({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  attenuation(scene: Scene, options?: CallOptions): Call<AttenuationAnswer>;
  attenuation<const Names extends FieldsOf<AttenuationAnswer>>(scene: Scene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<AttenuationAnswer, Names | "cautions">>;
  attenuation(scene: Scene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  attenuation(scene: Scene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/attenuation", query: sceneQuery, versioned: true, selects: true }, { body: scene }, options);
  }

  /**
   * Which filter to mount on the lens. None, red, magenta or another kind, its density, the depths that it serves, and by how much the runner-up loses; with a `kit` everything in it, ranked. Judged by the colours of a 24-patch chart after the camera has done what it can.
   * @param scene see `Scene` for fields, units and defaults
   * @returns `FilterChoiceAnswer`, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.calculations.filterChoice({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  filterChoice(scene: Scene, options?: CallOptions): Call<FilterChoiceAnswer>;
  filterChoice<const Names extends FieldsOf<FilterChoiceAnswer>>(scene: Scene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<FilterChoiceAnswer, Names | "cautions">>;
  filterChoice(scene: Scene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  filterChoice(scene: Scene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/filter-choice", query: sceneQuery, versioned: true, selects: true }, { body: scene }, options);
  }

  /**
   * Where light is lost, and what makes up for it. Stops lost to the surface, the water, the distance and the filters; the ISO speed, aperture and exposure time that make up for them; how much is missing or too much where the camera cannot do it.
   * @param scene see `Scene` for fields, units and defaults
   * @returns `ExposureLossAnswer`, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.calculations.exposureLoss({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  exposureLoss(scene: Scene, options?: CallOptions): Call<ExposureLossAnswer>;
  exposureLoss<const Names extends FieldsOf<ExposureLossAnswer>>(scene: Scene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<ExposureLossAnswer, Names | "cautions">>;
  exposureLoss(scene: Scene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  exposureLoss(scene: Scene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/exposure-loss", query: sceneQuery, versioned: true, selects: true }, { body: scene }, options);
  }

  /**
   * Video lights against daylight. Video lights over daylight per channel and depth, the colour cast that one white balance leaves between the two, and the way out: video lights off, filters on them, the white balance set to them, or coming closer.
   * @param scene see `Scene` for fields, units and defaults
   * @returns `MixedLightAnswer`, or rejects with a `SunfathomError`
   * @example
   * // The same at one depth, with two video lights
   * const answer = await client.calculations.mixedLight({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "depth_m": 12,
   *   "lamp_flux_lm": 4000,
   *   "lamp_count": 2,
   *   "lamp_distance_m": 0.8
   * });
   */
  mixedLight(scene: Scene, options?: CallOptions): Call<MixedLightAnswer>;
  mixedLight<const Names extends FieldsOf<MixedLightAnswer>>(scene: Scene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<MixedLightAnswer, Names | "cautions">>;
  mixedLight(scene: Scene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  mixedLight(scene: Scene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/mixed-light", query: sceneQuery, versioned: true, selects: true }, { body: scene }, options);
  }

  /**
   * How to set a white balance, and where to set it again. Per depth: the channel gains that make a grey card neutral and whether the camera reaches them; the depths at which to set it again on the way down and up; for video lights, the colour cast that their own Kelvin preset would leave.
   * @param scene see `Scene` for fields, units and defaults
   * @returns `WhiteBalanceAnswer`, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.calculations.whiteBalance({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  whiteBalance(scene: Scene, options?: CallOptions): Call<WhiteBalanceAnswer>;
  whiteBalance<const Names extends FieldsOf<WhiteBalanceAnswer>>(scene: Scene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<WhiteBalanceAnswer, Names | "cautions">>;
  whiteBalance(scene: Scene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  whiteBalance(scene: Scene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/white-balance", query: sceneQuery, versioned: true, selects: true }, { body: scene }, options);
  }

  /**
   * What grading can still bring back. Per depth, without and with the scene's filter: electrons, signal over noise and code values of each channel, how much of red is red light, and the depths at which it is no longer acceptable, gone, or not to be trusted.
   * @param scene see `Scene` for fields, units and defaults
   * @returns `ColourRecoveryAnswer`, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.calculations.colourRecovery({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  colourRecovery(scene: Scene, options?: CallOptions): Call<ColourRecoveryAnswer>;
  colourRecovery<const Names extends FieldsOf<ColourRecoveryAnswer>>(scene: Scene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<ColourRecoveryAnswer, Names | "cautions">>;
  colourRecovery(scene: Scene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  colourRecovery(scene: Scene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/colour-recovery", query: sceneQuery, versioned: true, selects: true }, { body: scene }, options);
  }

  /**
   * The whole job for one dive. Filter, exposure, white balance and video lights as one plan in the order in which you do things, each line with its number and its reason, and with `kit` what to take from the shelf.
   * @param scene see `Scene` for fields, units and defaults
   * @returns `DiveAdviceAnswer`, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.calculations.diveAdvice({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  diveAdvice(scene: Scene, options?: CallOptions): Call<DiveAdviceAnswer>;
  diveAdvice<const Names extends FieldsOf<DiveAdviceAnswer>>(scene: Scene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<DiveAdviceAnswer, Names | "cautions">>;
  diveAdvice(scene: Scene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  diveAdvice(scene: Scene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/dive-advice", query: sceneQuery, versioned: true, selects: true }, { body: scene }, options);
  }

  /**
   * Where the filter goes on this lens and port. On the lens, in front of the port or behind the lens, and what holds it; the rings to screw on or to buy; what filter and rings cost the corners; for a sheet behind the lens its size and what it does to focus; and what to do, step by step.
   * @param mountingScene see `MountingScene` for fields, units and defaults
   * @returns `FilterMountingAnswer`, or rejects with a `SunfathomError`
   * @example
   * // Fisheye behind a dome, a sheet behind the lens
   * const answer = await client.calculations.filterMounting({
   *   "port_kind": "dome",
   *   "dome_radius_mm": 100,
   *   "lens_kind": "fisheye",
   *   "field_of_view_deg": 180,
   *   "sensor_diagonal_mm": 43.3,
   *   "rear_opening_width_mm": 30,
   *   "rear_opening_height_mm": 24,
   *   "sheet_thickness_mm": 0.1
   * });
   */
  filterMounting(mountingScene: MountingScene, options?: CallOptions): Call<FilterMountingAnswer>;
  filterMounting<const Names extends FieldsOf<FilterMountingAnswer>>(mountingScene: MountingScene, options: CallOptions & { fields: readonly Names[] }): Call<Picked<FilterMountingAnswer, Names | "cautions">>;
  filterMounting(mountingScene: MountingScene, options: CallOptions & { fields: "brief" }): Call<Brief>;
  filterMounting(mountingScene: MountingScene, options?: CallOptions): Call<never> {
    return this.#send({ method: "POST", path: "/v1/filter-mounting", query: query2, versioned: true, selects: true }, { body: mountingScene }, options);
  }
}

/**
 * What people look at: drawn from the figures of the calculations, to show on any page.
 */
export class Pictures {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

  /**
   * What a filter does to colours. The 24-patch chart in the middle of the filmed depths as the camera makes it: at its daylight setting, with the white balance set, and finished, without and with the filter that is advised there, each beside the true colours. An SVG or a PNG that any page may show, with a title and a description that say what it says.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.pictures.chartUnderWater({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  chartUnderWater(scene: Scene, options?: CallOptions & PictureLook & { format?: "svg" }): Call<string>;
  chartUnderWater(scene: Scene, options: CallOptions & PictureLook & { format: "png" }): Call<ArrayBuffer>;
  chartUnderWater(scene: Scene, options?: CallOptions & PictureLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/pictures/chart-under-water", versioned: true, file: "image/", beside: ["format","width_px","theme"] }, { body: scene }, options);
  }

  /**
   * How the light fades on the way down. Red, green, blue and light as the eye sees it, over depth, with the bounds between which they run 8 times in 10, the depths at which red is down to a tenth and a hundredth, and the depths that are filmed. An SVG or a PNG that any page may show, with a title and a description that say what it says.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.pictures.lightWithDepth({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  lightWithDepth(scene: Scene, options?: CallOptions & PictureLook & { format?: "svg" }): Call<string>;
  lightWithDepth(scene: Scene, options: CallOptions & PictureLook & { format: "png" }): Call<ArrayBuffer>;
  lightWithDepth(scene: Scene, options?: CallOptions & PictureLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/pictures/light-with-depth", versioned: true, file: "image/", beside: ["format","width_px","theme"] }, { body: scene }, options);
  }

  /**
   * Why not add red afterwards. A red patch and a white card in the middle of the filmed depths, recorded without and with the filter that is advised there, at the settings that suit either, and pushed afterwards until red, white and black are right: with the noise and the code values that each recording has. An SVG or a PNG that any page may show, with a title and a description that say what it says.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.pictures.redInPost({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  redInPost(scene: Scene, options?: CallOptions & PictureLook & { format?: "svg" }): Call<string>;
  redInPost(scene: Scene, options: CallOptions & PictureLook & { format: "png" }): Call<ArrayBuffer>;
  redInPost(scene: Scene, options?: CallOptions & PictureLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/pictures/red-in-post", versioned: true, file: "image/", beside: ["format","width_px","theme"] }, { body: scene }, options);
  }

  /**
   * How colours fade on the way down. Grey, red and skin from the surface to the deepest filmed depth as the camera makes them: at its daylight setting, with the white balance set at each depth, and with the filter that is advised as well, each under the true colours. An SVG or a PNG that any page may show, with a title and a description that say what it says.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.pictures.colourStrip({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  colourStrip(scene: Scene, options?: CallOptions & PictureLook & { format?: "svg" }): Call<string>;
  colourStrip(scene: Scene, options: CallOptions & PictureLook & { format: "png" }): Call<ArrayBuffer>;
  colourStrip(scene: Scene, options?: CallOptions & PictureLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/pictures/colour-strip", versioned: true, file: "image/", beside: ["format","width_px","theme"] }, { body: scene }, options);
  }

  /**
   * How far colours are off, by density and depth. Mean colour errors behind filters of the kind that is advised, from none to five stops, from near the surface to the deepest filmed depth, each as a number on a field that is the darker the larger it is. The advised densities are framed over the filmed depths. An SVG or a PNG that any page may show, with a title and a description that say what it says.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.pictures.filterMap({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  filterMap(scene: Scene, options?: CallOptions & PictureLook & { format?: "svg" }): Call<string>;
  filterMap(scene: Scene, options: CallOptions & PictureLook & { format: "png" }): Call<ArrayBuffer>;
  filterMap(scene: Scene, options?: CallOptions & PictureLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/pictures/filter-map", versioned: true, file: "image/", beside: ["format","width_px","theme"] }, { body: scene }, options);
  }

  /**
   * Which light leads, by depth and by the distance of the video lights. Where video lights lead, where daylight leads and where the two fight, over depth and over the distance from the video lights to the subject, with the distance that the scene has and the ways out. Where a scene has no video lights, for two usual ones. An SVG or a PNG that any page may show, with a title and a description that say what it says.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // The same at one depth, with two video lights
   * const answer = await client.pictures.mixedLightMap({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "depth_m": 12,
   *   "lamp_flux_lm": 4000,
   *   "lamp_count": 2,
   *   "lamp_distance_m": 0.8
   * });
   */
  mixedLightMap(scene: Scene, options?: CallOptions & PictureLook & { format?: "svg" }): Call<string>;
  mixedLightMap(scene: Scene, options: CallOptions & PictureLook & { format: "png" }): Call<ArrayBuffer>;
  mixedLightMap(scene: Scene, options?: CallOptions & PictureLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/pictures/mixed-light-map", versioned: true, file: "image/", beside: ["format","width_px","theme"] }, { body: scene }, options);
  }

  /**
   * Where light is lost, stop by stop. The stops that are lost at the surface, on the way down, on the way to the camera, at the port and in the filter on the lens, at the shallowest filmed depth and at the deepest, each bar beginning where the one before ends; and what to set there. An SVG or a PNG that any page may show, with a title and a description that say what it says.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.pictures.exposureBudget({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  exposureBudget(scene: Scene, options?: CallOptions & PictureLook & { format?: "svg" }): Call<string>;
  exposureBudget(scene: Scene, options: CallOptions & PictureLook & { format: "png" }): Call<ArrayBuffer>;
  exposureBudget(scene: Scene, options?: CallOptions & PictureLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/pictures/exposure-budget", versioned: true, file: "image/", beside: ["format","width_px","theme"] }, { body: scene }, options);
  }
}

/**
 * What people print and take along: made of the same scenes.
 */
export class Sheets {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

  /**
   * A slate of the plan, to print and take along. The plan of `dive-advice` on one side of A5, landscape, in letters of 14 pt and more, black on white with one colour: three numbers to remember; what to do before the dive, at the start, on the way down, on the way up and afterwards; and every caution, ascent and safety stop first. What does not fit is left out by its rank, what the plan on land says as well before what is looked up under water, and the slate counts it. No caution and none of the three numbers is left out. Print it on waterproof paper or laminate it.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the bytes of a PDF, or the text of an SVG, or the bytes of a PNG, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.sheets.slate({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  slate(scene: Scene, options?: CallOptions & SlateLook & { format?: "pdf" }): Call<ArrayBuffer>;
  slate(scene: Scene, options: CallOptions & SlateLook & { format: "svg" }): Call<string>;
  slate(scene: Scene, options: CallOptions & SlateLook & { format: "png" }): Call<ArrayBuffer>;
  slate(scene: Scene, options?: CallOptions & SlateLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/slates", versioned: true, file: "*", beside: ["format"] }, { body: scene }, options);
  }

  /**
   * A template for a sheet behind the lens, at full size. From the opening that you measured behind the lens and the size of the sheet: its outline, the opening within it, where tape goes, where sheet and tape keep off the contacts, and a bar of 50 mm to check the print by. Measure before you cut, and practise on a cheap sheet first. The file is true to size within 0.2 mm; the bar tells what the printer made of it.
   * @param cuttingTemplateRequest see `CuttingTemplateRequest` for fields, units and defaults
   * @returns the bytes of a PDF, or the text of an SVG, or rejects with a `SunfathomError`
   * @example
   * // An opening of 30 × 24 mm, with 2 mm for tape on each side
   * const answer = await client.sheets.cuttingTemplate({
   *   "opening_width_mm": 30,
   *   "opening_height_mm": 24,
   *   "sheet_width_mm": 34,
   *   "sheet_height_mm": 28
   * });
   */
  cuttingTemplate(cuttingTemplateRequest: CuttingTemplateRequest, options?: CallOptions & CuttingTemplateLook & { format?: "pdf" }): Call<ArrayBuffer>;
  cuttingTemplate(cuttingTemplateRequest: CuttingTemplateRequest, options: CallOptions & CuttingTemplateLook & { format: "svg" }): Call<string>;
  cuttingTemplate(cuttingTemplateRequest: CuttingTemplateRequest, options?: CallOptions & CuttingTemplateLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/cutting-templates", file: "*", beside: ["format"] }, { body: cuttingTemplateRequest }, options);
  }

  /**
   * A grade to start from, for an editing program. What `matched` or `basic_edit` (`finish`) does to footage from the middle of the filmed depths, shot through the filter that the scene has on the lens, as a file: in the Common LUT Format (SMPTE ST 2136-1), from the code values of the recording to those of sRGB, or as an ASC CDL for linear light, which `basic_edit` alone fits into. The file says what goes in and comes out, between which depths it holds, and how much red was recorded: red that was not recorded stays lost. It is a start for the eye to go on from, and an editor may need it converted. Any other `finish` than `matched` gives the `basic_edit`.
   * @param scene see `Scene` for fields, units and defaults
   * @returns the text of a CLF, or the text of a CDL, or rejects with a `SunfathomError`
   * @example
   * // What is known on a boat: place, local time, water that is blue and clear for 25 m
   * const answer = await client.sheets.grade({
   *   "latitude_deg": -47,
   *   "longitude_deg": -128,
   *   "time_zone": "Etc/GMT+9",
   *   "local_time": "2027-01-16T10:00",
   *   "cloud_oktas": 2,
   *   "visibility_m": 25,
   *   "water_hue": "blue",
   *   "min_depth_m": 5,
   *   "max_depth_m": 18
   * });
   */
  grade(scene: Scene, options?: CallOptions & GradeLook & { format?: "clf" }): Call<string>;
  grade(scene: Scene, options: CallOptions & GradeLook & { format: "cdl" }): Call<string>;
  grade(scene: Scene, options?: CallOptions & GradeLook): Call<never> {
    return this.#send({ method: "POST", path: "/v1/grades", versioned: true, file: "*", beside: ["format"] }, { body: scene }, options);
  }
}

/**
 * More than one dive at a time: when the light is best, and what to take.
 */
export class Trips {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

  /**
   * When the light of a site is best. For one site and up to 31 days: the best windows of each day within the opening hours, up to 3, each with its light and the red that is left at the middle of the depths, the filter, the exposure and why. Cloud comes from your forecast, by the hour or by the day; without one the sky is taken for clear, and the answer says so. Windows are ranked by colour error / 2 ^ (weight x light), with a weight for each `aim`: none that is listed has both a larger colour error and less light than one that is not. The guide to trips says the weights.
   * @param lightWindowsRequest see `LightWindowsRequest` for fields, units and defaults
   * @returns `LightWindowsAnswer`, or rejects with a `SunfathomError`
   * @example
   * // Three days at a reef, a forecast for the second
   * const answer = await client.trips.lightWindows({
   *   "site": {
   *     "visibility_m": 25,
   *     "water_hue": "blue",
   *     "min_depth_m": 5,
   *     "max_depth_m": 18
   *   },
   *   "latitude_deg": -47.3,
   *   "longitude_deg": -128.4,
   *   "time_zone": "Etc/GMT+9",
   *   "first_date": "2027-01-16",
   *   "last_date": "2027-01-18",
   *   "opens_at": "08:00",
   *   "closes_at": "17:00",
   *   "forecast": [
   *     {
   *       "date": "2027-01-17",
   *       "cloud_oktas": 7
   *     }
   *   ]
   * });
   */
  lightWindows(lightWindowsRequest: LightWindowsRequest, options?: CallOptions): Call<LightWindowsAnswer> {
    return this.#send({ method: "POST", path: "/v1/light-windows", versioned: true }, { body: lightWindowsRequest }, options);
  }

  /**
   * The smallest kit that serves several dives. For up to 12 dives and 24 pieces: the smallest set of filters, rings, holders and video lights with which no dive loses what an eye sees against all pieces at hand; what each piece buys, on which dives; what is never used; and which further filter would help most, by kind and density. Sets of up to 4 pieces are all tried (`method` `exact`); where none of them is enough, the set is put together piece by piece, and the answer says so (`greedy`). Sets of one size are compared by what all dives lose together, then by the light that their filters take, then by `id`. A filter counts where it fits: a ring is taken for what it lets fit. Each dive is judged as `filter-choice` and the plan for a dive judge it.
   * @param kitAdviceRequest see `KitAdviceRequest` for fields, units and defaults
   * @returns `KitAdviceAnswer`, or rejects with a `SunfathomError`
   * @example
   * // A week of four dives, and what lies on the shelf
   * const answer = await client.trips.kitAdvice({
   *   "scene": {
   *     "camera_class": "action"
   *   },
   *   "dives": [
   *     {
   *       "id": "gannet-reef",
   *       "scene": {
   *         "visibility_m": 25,
   *         "water_hue": "blue",
   *         "min_depth_m": 5,
   *         "max_depth_m": 18
   *       }
   *     },
   *     {
   *       "id": "mole",
   *       "scene": {
   *         "water_type": "5C",
   *         "depth_m": 8
   *       }
   *     },
   *     {
   *       "id": "lagoon",
   *       "scene": {
   *         "water_type": "II",
   *         "depth_m": 4
   *       }
   *     },
   *     {
   *       "id": "wreck-by-night",
   *       "scene": {
   *         "water_type": "3C",
   *         "depth_m": 12,
   *         "daylight_basis": "none"
   *       }
   *     }
   *   ],
   *   "pieces": [
   *     {
   *       "id": "red-light",
   *       "item": "lens_filter",
   *       "filter_kind": "red",
   *       "filter_density": 0.6
   *     },
   *     {
   *       "id": "red-dense",
   *       "item": "lens_filter",
   *       "filter_kind": "red",
   *       "filter_density": 1.2
   *     },
   *     {
   *       "id": "magenta",
   *       "item": "lens_filter",
   *       "filter_kind": "magenta",
   *       "filter_stops": 2
   *     },
   *     {
   *       "id": "wide-lights",
   *       "item": "lamp",
   *       "flux_lm": 4000,
   *       "count": 2,
   *       "distance_m": 0.8
   *     },
   *     {
   *       "id": "small-light",
   *       "item": "lamp",
   *       "flux_lm": 800,
   *       "distance_m": 0.5
   *     }
   *   ]
   * });
   */
  kitAdvice(kitAdviceRequest: KitAdviceRequest, options?: CallOptions): Call<KitAdviceAnswer> {
    return this.#send({ method: "POST", path: "/v1/kit-advice", versioned: true }, { body: kitAdviceRequest }, options);
  }

  /**
   * One shelf of filters for all guests of a trip. For up to 31 dives, 40 guests with their cameras and a shelf of up to 40 filters, with how many there are of each: what each guest mounts and sets on each dive, what goes into each crate, and what goes on the boat or stays ashore. The shelf is handed out again for each dive, to guests whom a filter fits and who gain enough by it: the guest who would be worst off, by the colour error that is left, is served as well as can be, then the next one, and so on; exactly, and not one after another. What is even goes by the guests' ids. As `text/calendar` (RFC 5545, by `Accept`) the answer is an event for each dive, of one guest in the guest's language (`calendar_for`), or of the crew.
   * @param tripAdviceRequest see `TripAdviceRequest` for fields, units and defaults
   * @returns `TripAdviceAnswer`, or rejects with a `SunfathomError`
   * @example
   * // Two dives, three guests, and two filters to share
   * const answer = await client.trips.tripAdvice({
   *   "id": "packet-2027-01",
   *   "dives": [
   *     {
   *       "id": "d1",
   *       "name": "Gannet Stair",
   *       "local_time": "2027-01-16T09:30",
   *       "time_zone": "Etc/GMT+9",
   *       "scene": {
   *         "latitude_deg": -47.3,
   *         "longitude_deg": -128.4,
   *         "visibility_m": 25,
   *         "water_hue": "blue",
   *         "min_depth_m": 5,
   *         "max_depth_m": 18,
   *         "cloud_oktas": 2
   *       }
   *     },
   *     {
   *       "id": "d2",
   *       "name": "Old Mole",
   *       "local_time": "2027-01-16T14:00",
   *       "time_zone": "Etc/GMT+9",
   *       "duration_min": 50,
   *       "scene": {
   *         "latitude_deg": -47.3,
   *         "longitude_deg": -128.4,
   *         "visibility_m": 12,
   *         "water_hue": "blue_green",
   *         "min_depth_m": 3,
   *         "max_depth_m": 10,
   *         "cloud_oktas": 4
   *       }
   *     }
   *   ],
   *   "guests": [
   *     {
   *       "id": "g1",
   *       "language": "de",
   *       "camera": {
   *         "camera_class": "interchangeable",
   *         "port_kind": "flat",
   *         "lens_kind": "standard",
   *         "focal_length_mm": 28,
   *         "sensor_diagonal_mm": 28.4,
   *         "lens_thread_mm": 52
   *       }
   *     },
   *     {
   *       "id": "g2",
   *       "camera": {
   *         "camera_class": "compact",
   *         "port_kind": "flat",
   *         "lens_kind": "standard",
   *         "field_of_view_deg": 62,
   *         "port_thread_mm": 67
   *       }
   *     },
   *     {
   *       "id": "g3",
   *       "camera": {
   *         "camera_class": "action"
   *       },
   *       "kit": [
   *         {
   *           "id": "own-red",
   *           "item": "lens_filter",
   *           "filter_kind": "red",
   *           "filter_density": 0.9
   *         }
   *       ]
   *     }
   *   ],
   *   "shelf": [
   *     {
   *       "id": "red-67",
   *       "item": "lens_filter",
   *       "filter_kind": "red",
   *       "filter_density": 0.9,
   *       "filter_thread_mm": 67,
   *       "quantity": 1
   *     },
   *     {
   *       "id": "magenta-67",
   *       "item": "lens_filter",
   *       "filter_kind": "magenta",
   *       "filter_density": 0.6,
   *       "filter_thread_mm": 67,
   *       "quantity": 1
   *     }
   *   ],
   *   "rings": [
   *     {
   *       "id": "52-67",
   *       "from_mm": 52,
   *       "to_mm": 67,
   *       "thickness_mm": 3,
   *       "quantity": 2
   *     }
   *   ]
   * });
   */
  tripAdvice(tripAdviceRequest: TripAdviceRequest, options?: CallOptions): Call<TripAdviceAnswer> {
    return this.#send({ method: "POST", path: "/v1/trip-advice", versioned: true }, { body: tripAdviceRequest }, options);
  }

  /**
   * One shelf of filters for all guests of a trip. For up to 31 dives, 40 guests with their cameras and a shelf of up to 40 filters, with how many there are of each: what each guest mounts and sets on each dive, what goes into each crate, and what goes on the boat or stays ashore. The shelf is handed out again for each dive, to guests whom a filter fits and who gain enough by it: the guest who would be worst off, by the colour error that is left, is served as well as can be, then the next one, and so on; exactly, and not one after another. What is even goes by the guests' ids. As `text/calendar` (RFC 5545, by `Accept`) the answer is an event for each dive, of one guest in the guest's language (`calendar_for`), or of the crew.
   * @param tripAdviceRequest see `TripAdviceRequest` for fields, units and defaults
   * @returns the text of the file (`text/calendar`), or rejects with a `SunfathomError`
   * @example
   * // Two dives, three guests, and two filters to share
   * const answer = await client.trips.tripAdviceCalendar({
   *   "id": "packet-2027-01",
   *   "dives": [
   *     {
   *       "id": "d1",
   *       "name": "Gannet Stair",
   *       "local_time": "2027-01-16T09:30",
   *       "time_zone": "Etc/GMT+9",
   *       "scene": {
   *         "latitude_deg": -47.3,
   *         "longitude_deg": -128.4,
   *         "visibility_m": 25,
   *         "water_hue": "blue",
   *         "min_depth_m": 5,
   *         "max_depth_m": 18,
   *         "cloud_oktas": 2
   *       }
   *     },
   *     {
   *       "id": "d2",
   *       "name": "Old Mole",
   *       "local_time": "2027-01-16T14:00",
   *       "time_zone": "Etc/GMT+9",
   *       "duration_min": 50,
   *       "scene": {
   *         "latitude_deg": -47.3,
   *         "longitude_deg": -128.4,
   *         "visibility_m": 12,
   *         "water_hue": "blue_green",
   *         "min_depth_m": 3,
   *         "max_depth_m": 10,
   *         "cloud_oktas": 4
   *       }
   *     }
   *   ],
   *   "guests": [
   *     {
   *       "id": "g1",
   *       "language": "de",
   *       "camera": {
   *         "camera_class": "interchangeable",
   *         "port_kind": "flat",
   *         "lens_kind": "standard",
   *         "focal_length_mm": 28,
   *         "sensor_diagonal_mm": 28.4,
   *         "lens_thread_mm": 52
   *       }
   *     },
   *     {
   *       "id": "g2",
   *       "camera": {
   *         "camera_class": "compact",
   *         "port_kind": "flat",
   *         "lens_kind": "standard",
   *         "field_of_view_deg": 62,
   *         "port_thread_mm": 67
   *       }
   *     },
   *     {
   *       "id": "g3",
   *       "camera": {
   *         "camera_class": "action"
   *       },
   *       "kit": [
   *         {
   *           "id": "own-red",
   *           "item": "lens_filter",
   *           "filter_kind": "red",
   *           "filter_density": 0.9
   *         }
   *       ]
   *     }
   *   ],
   *   "shelf": [
   *     {
   *       "id": "red-67",
   *       "item": "lens_filter",
   *       "filter_kind": "red",
   *       "filter_density": 0.9,
   *       "filter_thread_mm": 67,
   *       "quantity": 1
   *     },
   *     {
   *       "id": "magenta-67",
   *       "item": "lens_filter",
   *       "filter_kind": "magenta",
   *       "filter_density": 0.6,
   *       "filter_thread_mm": 67,
   *       "quantity": 1
   *     }
   *   ],
   *   "rings": [
   *     {
   *       "id": "52-67",
   *       "from_mm": 52,
   *       "to_mm": 67,
   *       "thickness_mm": 3,
   *       "quantity": 2
   *     }
   *   ]
   * });
   */
  tripAdviceCalendar(tripAdviceRequest: TripAdviceRequest, options?: CallOptions): Call<string> {
    return this.#send({ method: "POST", path: "/v1/trip-advice", versioned: true, file: "text/calendar" }, { body: tripAdviceRequest }, options);
  }

  /**
   * A dive as it was dived. A dive's depth over time, up to 20000 samples, with the scene of its site: where to have set the white balance, changed the filter and set the exposure again, by the decisions of `dive-advice`; and for up to 200 clips, on the camera's clock, their depths, light, the red that is left, the colour cast, and whether the last white balance still held. It looks backwards, and at filming alone. With `Accept: text/vtt` the clips and moments come as WebVTT captions (W3C), with times of day by the camera's clock. The body has 4 MB at most.
   * @param diveTimelinesRequest see `DiveTimelinesRequest` for fields, units and defaults
   * @returns `DiveTimelinesAnswer`, or rejects with a `SunfathomError`
   * @example
   * // A wall dive with three clips, and nothing known of what was done
   * const answer = await client.trips.diveTimeline({
   *   "site": {
   *     "visibility_m": 25,
   *     "water_hue": "blue",
   *     "sun_elevation_deg": 50
   *   },
   *   "samples": [
   *     {
   *       "time_s": 0,
   *       "depth_m": 0
   *     },
   *     {
   *       "time_s": 180,
   *       "depth_m": 18
   *     },
   *     {
   *       "time_s": 1200,
   *       "depth_m": 22
   *     },
   *     {
   *       "time_s": 2100,
   *       "depth_m": 9
   *     },
   *     {
   *       "time_s": 2700,
   *       "depth_m": 5
   *     },
   *     {
   *       "time_s": 2880,
   *       "depth_m": 0
   *     }
   *   ],
   *   "start_clock": "09:30:00",
   *   "clock_offset_s": 75,
   *   "clips": [
   *     {
   *       "id": "A001",
   *       "from_clock": "09:35:40",
   *       "length_s": 60
   *     },
   *     {
   *       "id": "A002",
   *       "from_clock": "09:52:10",
   *       "length_s": 45
   *     },
   *     {
   *       "id": "A003",
   *       "from_clock": "10:12:00",
   *       "length_s": 90
   *     }
   *   ]
   * });
   */
  diveTimeline(diveTimelinesRequest: DiveTimelinesRequest, options?: CallOptions): Call<DiveTimelinesAnswer> {
    return this.#send({ method: "POST", path: "/v1/dive-timelines", versioned: true }, { body: diveTimelinesRequest }, options);
  }

  /**
   * A dive as it was dived. A dive's depth over time, up to 20000 samples, with the scene of its site: where to have set the white balance, changed the filter and set the exposure again, by the decisions of `dive-advice`; and for up to 200 clips, on the camera's clock, their depths, light, the red that is left, the colour cast, and whether the last white balance still held. It looks backwards, and at filming alone. With `Accept: text/vtt` the clips and moments come as WebVTT captions (W3C), with times of day by the camera's clock. The body has 4 MB at most.
   * @param diveTimelinesRequest see `DiveTimelinesRequest` for fields, units and defaults
   * @returns the text of the file (`text/vtt`), or rejects with a `SunfathomError`
   * @example
   * // A wall dive with three clips, and nothing known of what was done
   * const answer = await client.trips.diveTimelineCaptions({
   *   "site": {
   *     "visibility_m": 25,
   *     "water_hue": "blue",
   *     "sun_elevation_deg": 50
   *   },
   *   "samples": [
   *     {
   *       "time_s": 0,
   *       "depth_m": 0
   *     },
   *     {
   *       "time_s": 180,
   *       "depth_m": 18
   *     },
   *     {
   *       "time_s": 1200,
   *       "depth_m": 22
   *     },
   *     {
   *       "time_s": 2100,
   *       "depth_m": 9
   *     },
   *     {
   *       "time_s": 2700,
   *       "depth_m": 5
   *     },
   *     {
   *       "time_s": 2880,
   *       "depth_m": 0
   *     }
   *   ],
   *   "start_clock": "09:30:00",
   *   "clock_offset_s": 75,
   *   "clips": [
   *     {
   *       "id": "A001",
   *       "from_clock": "09:35:40",
   *       "length_s": 60
   *     },
   *     {
   *       "id": "A002",
   *       "from_clock": "09:52:10",
   *       "length_s": 45
   *     },
   *     {
   *       "id": "A003",
   *       "from_clock": "10:12:00",
   *       "length_s": 90
   *     }
   *   ]
   * });
   */
  diveTimelineCaptions(diveTimelinesRequest: DiveTimelinesRequest, options?: CallOptions): Call<string> {
    return this.#send({ method: "POST", path: "/v1/dive-timelines", versioned: true, file: "text/vtt" }, { body: diveTimelinesRequest }, options);
  }
}

/**
 * What a scene can name, and the parts of the model.
 */
export class Reference {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

  /**
   * The optical water types. Every water type that a scene can name, with its attenuation and where it comes from.
   * @returns `WaterTypesAnswer`, or rejects with a `SunfathomError`
   * @example
   * const answer = await client.reference.waterTypes();
   */
  waterTypes(options?: CallOptions): Call<WaterTypesAnswer> {
    return this.#send({ method: "GET", path: "/v1/water-types" }, {}, options);
  }

  /**
   * The kinds of filter. Every kind of filter that a scene can name, with its spectral shape.
   * @returns `FilterKindsAnswer`, or rejects with a `SunfathomError`
   * @example
   * const answer = await client.reference.filterKinds();
   */
  filterKinds(options?: CallOptions): Call<FilterKindsAnswer> {
    return this.#send({ method: "GET", path: "/v1/filter-kinds" }, {}, options);
  }

  /**
   * The parts of the model. Every table, formula and assumption behind the answers, with its source, domain and weaknesses.
   * @returns `ModelsAnswer`, or rejects with a `SunfathomError`
   * @example
   * const answer = await client.reference.models();
   */
  models(options?: CallOptions): Call<ModelsAnswer> {
    return this.#send({ method: "GET", path: "/v1/models" }, {}, options);
  }
}

/**
 * Questions for courses: drawn, marked, and packed for learning platforms.
 */
export class Quiz {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

  /**
   * Draw a paper of questions, without their answers. Questions on light and colour under water: every figure computed, no two alike, a new paper with each call. They come with a token, encrypted and authenticated, to have the answers marked until it expires. Nothing is stored. They are in English (`en`) or Spanish (`es`): `language`, or what `Accept-Language` likes best of the two, or English, as `Content-Language` says; the same seed asks the same in each. `avoid` leaves out questions that learners have met, by their `fingerprint`, and with the instructor's key a `seed` gives the same paper again. A paper is for practice unless `release` says `after_close`: then its token reveals nothing before `closes_at`.
   * Sent once, never repeated by the client.
   * @param quizItemsRequest see `QuizItemsRequest` for fields, units and defaults
   * @returns `QuizPaper`, or rejects with a `SunfathomError`
   * @example
   * // Four questions, each with one right option
   * const answer = await client.quiz.drawItems({
   *   "level": "working",
   *   "count": 4,
   *   "templates": [
   *     "red_left",
   *     "filter_for_water"
   *   ]
   * });
   */
  drawItems(quizItemsRequest: QuizItemsRequest, options?: CallOptions): Call<QuizPaper> {
    return this.#send({ method: "POST", path: "/v1/quiz-items", once: true, versioned: true }, { body: quizItemsRequest }, options);
  }

  /**
   * Mark the answers to a paper. Marks the answers, with feedback on each misunderstanding and the worked solution, in the language that the paper was drawn in; blanks and questions left out score 0 and get no solution. The token holds the right answers, so you can have the same answers marked as often as you like until it expires. For a practice paper (`release` `at_once`) that gives the whole key to anyone who holds its token and asks again and again. A paper with `release` `after_close` is marked from `closes_at` on; before that, `marks_held_back` says that the answers fit and nothing else, not even a score, from which repeated calls could work out the key. The instructor's key has it marked at any time, blanks with their solutions. To give each learner one attempt is the platform's job.
   * @param quizAnswersRequest see `QuizAnswersRequest` for fields, units and defaults
   * @returns `QuizMarks`, or rejects with a `SunfathomError`
   * @example
   * // Option A of the first question
   * const answer = await client.quiz.markAnswers({
   *   "token": "sq1.2026-05.bm9uY2Ugb2YgMTIg.c2VhbGVk",
   *   "responses": [
   *     {
   *       "item": "q1",
   *       "choices": [
   *         "A"
   *       ]
   *     }
   *   ]
   * });
   */
  markAnswers(quizAnswersRequest: QuizAnswersRequest, options?: CallOptions): Call<QuizMarks> {
    return this.#send({ method: "POST", path: "/v1/quiz-answers" }, { body: quizAnswersRequest }, options);
  }

  /**
   * Pack a paper for a learning platform. A content package of QTI 3.0 or 2.1 or, with `format` `scorm_1_2`, a practice package. QTI has a manifest, a test, and a file for each question and each picture. Cautions stand before the questions. `language` is chosen as for `/v1/quiz-items`, and said in each file of the package (`xml:lang`). With keys, feedback and solutions a platform does the marking; this needs the instructor's key. Without them, and with `release` `after_close`, `paper.json` in the package has the token that `/v1/quiz-answers` takes from `closes_at` on. A practice paper without keys has no token: learners hold the package, and it would open the solutions to them. A new paper with each call, except with an instructor's `seed`, which gives the same paper as in `/v1/quiz-items`. A SCORM 1.2 package holds a page that shows the questions, marks them on its own as `/v1/quiz-answers` does, explains each answer, and reports progress and score; it fetches nothing, and works without a platform, too. Its keys are inside, where anyone can read them: it is for practice alone, says so on its first page, and cannot be had of a paper with `release` or `closes_at`. It was checked with the open-source run-time scorm-again.
   * Sent once, never repeated by the client.
   * @param quizPackageRequest see `QuizPackageRequest` for fields, units and defaults
   * @returns the bytes of the file (`application/zip`), or rejects with a `SunfathomError`
   * @example
   * // Without keys, to talk through in class
   * const answer = await client.quiz.packItems({
   *   "level": "beginner",
   *   "count": 10,
   *   "title": "Colour under water"
   * });
   */
  packItems(quizPackageRequest: QuizPackageRequest, options?: CallOptions): Call<ArrayBuffer> {
    return this.#send({ method: "POST", path: "/v1/quiz-packages", once: true, versioned: true, file: "application/zip" }, { body: quizPackageRequest }, options);
  }
}

/**
 * The state of the service, and what its problems mean.
 */
export class Service {
  readonly #send: Send;

  constructor(send: Send) {
    this.#send = send;
  }

  /**
   * Whether the process runs. For process supervisors.
   * @returns `Health`, or rejects with a `SunfathomError`
   * @example
   * const answer = await client.service.liveness();
   */
  liveness(options?: CallOptions): Call<Health> {
    return this.#send({ method: "GET", path: "/health/live" }, {}, options);
  }

  /**
   * Whether the service answers requests. For load balancers: 503 while it starts or stops.
   * @returns `Health`, or rejects with a `SunfathomError`
   * @example
   * const answer = await client.service.readiness();
   */
  readiness(options?: CallOptions): Call<Health> {
    return this.#send({ method: "GET", path: "/health/ready" }, {}, options);
  }

  /**
   * What a kind of problem means. The page that the `type` of a problem leads to. Browsers get it in HTML (`Accept`).
   * @param name Name of the kind, as the last part of a problem's `type`.
   * @returns `ProblemPage`, or rejects with a `SunfathomError`
   * @example
   * const answer = await client.service.problemKind("...");
   */
  problemKind(name: string, options?: CallOptions): Call<ProblemPage> {
    return this.#send({ method: "GET", path: "/problems/{name}" }, { path: { name } }, options);
  }
}

/**
 * What each calculation takes, by its name.
 */
export interface SceneOf {
  "attenuation": Scene;
  "filter-choice": Scene;
  "exposure-loss": Scene;
  "mixed-light": Scene;
  "white-balance": Scene;
  "colour-recovery": Scene;
  "dive-advice": Scene;
  "filter-mounting": MountingScene;
}

/**
 * What each calculation answers, by its name.
 */
export interface AnswerOf {
  "attenuation": AttenuationAnswer;
  "filter-choice": FilterChoiceAnswer;
  "exposure-loss": ExposureLossAnswer;
  "mixed-light": MixedLightAnswer;
  "white-balance": WhiteBalanceAnswer;
  "colour-recovery": ColourRecoveryAnswer;
  "dive-advice": DiveAdviceAnswer;
  "filter-mounting": FilterMountingAnswer;
}

/**
 * Every operation of the service, in groups: what `Sunfathom` and `OfflineSunfathom` have in common.
 */
export abstract class Api {
  /** Answers to a scene. POST is as safe as GET: nothing is stored. */
  declare readonly calculations: Calculations;
  /** What people look at: drawn from the figures of the calculations, to show on any page. */
  declare readonly pictures: Pictures;
  /** What people print and take along: made of the same scenes. */
  declare readonly sheets: Sheets;
  /** More than one dive at a time: when the light is best, and what to take. */
  declare readonly trips: Trips;
  /** What a scene can name, and the parts of the model. */
  declare readonly reference: Reference;
  /** Questions for courses: drawn, marked, and packed for learning platforms. */
  declare readonly quiz: Quiz;
  /** The state of the service, and what its problems mean. */
  declare readonly service: Service;

  constructor(send: Send) {
    this.calculations = new Calculations(send);
    this.pictures = new Pictures(send);
    this.sheets = new Sheets(send);
    this.trips = new Trips(send);
    this.reference = new Reference(send);
    this.quiz = new Quiz(send);
    this.service = new Service(send);
  }
}
