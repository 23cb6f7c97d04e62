import {
  sceneDefaults as defaults,
  impliedDaylightBasis,
  placeTimeNames,
  shutterOfFrame_s,
  type Scene as WireScene,
} from "@sunfathom/contract";
import type {
  Camera,
  CardSample,
  Daylight,
  Dive,
  KdSample,
  LensFilter,
  Scene,
  TransmittanceSample,
  WaterBasis,
} from "@sunfathom/planner";
import { canonicalLamps } from "./canonical-lamps.js";
import { filled, given, inOrder, joined } from "./fields.js";
import type { Canonical } from "./scene-kind.js";

const cardFields = [
  "depth_m",
  "red",
  "green",
  "blue",
  "iso",
  "shutter_s",
  "f_number",
  "red_gain",
  "green_gain",
  "blue_gain",
] as const;

/**
 * The one form of a valid scene: scenes that mean the same come out the same, to the byte.
 * @param wire a scene that has passed its schema and the rules between its fields
 */
export function canonicalScene(wire: WireScene): Canonical<Scene> {
  const assumed: string[] = [];
  const scene: Scene = joined(
    water(wire),
    daylight(wire, assumed),
    dive(wire, assumed),
    camera(wire, assumed),
    lensFilter(wire, assumed),
    kit(wire),
    { lamps: canonicalLamps(wire, assumed) },
  );
  return { scene, assumed };
}

function water(wire: WireScene): WaterBasis {
  const { kd_samples, card_samples } = wire;
  return {
    ...given(wire, ["water_type", "chlorophyll_mg_m3", "secchi_depth_m", "visibility_m", "water_hue"]),
    ...(kd_samples === undefined
      ? {}
      : { kd_samples: inOrder<KdSample>(kd_samples, ["wavelength_nm", "kd_per_m"]) }),
    ...(card_samples === undefined ? {} : { card_samples: inOrder<CardSample>(card_samples, cardFields) }),
    ...given(wire, ["transfer_curve", "locked_exposure", "locked_balance"]),
  };
}

function daylight(wire: WireScene, assumed: string[]): Daylight {
  const daylight_basis = filled(wire.daylight_basis, impliedDaylightBasis(wire), "daylight_basis", assumed);
  const sun = () => filled(wire.sun_elevation_deg, defaults.sun_elevation_deg, "sun_elevation_deg", assumed);
  return {
    daylight_basis,
    ...(daylight_basis === "sun" ? { sun_elevation_deg: sun() } : {}),
    ...given(wire, placeTimeNames),
    cloud_oktas: filled(wire.cloud_oktas, defaults.cloud_oktas, "cloud_oktas", assumed),
    wind_speed_m_s: filled(wire.wind_speed_m_s, defaults.wind_speed_m_s, "wind_speed_m_s", assumed),
  };
}

function dive(wire: WireScene, assumed: string[]): Dive {
  const min_depth_m = wire.min_depth_m ?? wire.depth_m;
  const max_depth_m = wire.max_depth_m ?? wire.depth_m;
  if (min_depth_m === undefined || max_depth_m === undefined) throw new Error("The scene has no depth.");
  return {
    min_depth_m,
    max_depth_m,
    subject_distance_m: filled(
      wire.subject_distance_m,
      defaults.subject_distance_m,
      "subject_distance_m",
      assumed,
    ),
    subject_facing: filled(wire.subject_facing, defaults.subject_facing, "subject_facing", assumed),
  };
}

function camera(wire: WireScene, assumed: string[]): Camera {
  type Filled = Exclude<Extract<keyof Camera, keyof typeof defaults>, "frame_rate_fps" | "recording_curve">;
  const fill = (name: Filled) => filled(wire[name], defaults[name], name, assumed);
  return {
    ...given(wire, ["iso"]),
    min_iso: fill("min_iso"),
    max_iso: fill("max_iso"),
    ...given(wire, ["f_number"]),
    min_f_number: fill("min_f_number"),
    max_f_number: fill("max_f_number"),
    ...shutter(wire, assumed),
    bits: fill("bits"),
    recording_curve: filled(wire.recording_curve, defaults.recording_curve, "recording_curve", assumed),
    white_balance_min_cct_K: fill("white_balance_min_cct_K"),
    white_balance_max_cct_K: fill("white_balance_max_cct_K"),
    white_balance_max_duv: fill("white_balance_max_duv"),
    ...given(wire, ["balance_tolerance_delta_e00"]),
  };
}

/**
 * The exposure time, and the frame rate where there is one. Of rate and angle the one that was not given is assumed; where
 * neither was, nor a time, the time is.
 */
function shutter(wire: WireScene, assumed: string[]): Pick<Camera, "shutter_s" | "frame_rate_fps"> {
  const { shutter_s, shutter_angle_deg: angle } = wire;
  if (shutter_s !== undefined) return { shutter_s, ...given(wire, ["frame_rate_fps"]) };
  if (wire.frame_rate_fps === undefined && angle === undefined) {
    assumed.push("shutter_s");
    return { shutter_s: shutterOfFrame_s() };
  }
  const frame_rate_fps = filled(wire.frame_rate_fps, defaults.frame_rate_fps, "frame_rate_fps", assumed);
  const angle_deg = filled(angle, defaults.shutter_angle_deg, "shutter_angle_deg", assumed);
  return { shutter_s: shutterOfFrame_s(frame_rate_fps, angle_deg), frame_rate_fps };
}

function lensFilter(wire: WireScene, assumed: string[]): LensFilter {
  return {
    ...given(wire, ["filter_kind", "filter_density"]),
    ...transmittance(wire.filter_transmittance),
    filter_change_underwater: filled(
      wire.filter_change_underwater,
      defaults.filter_change_underwater,
      "filter_change_underwater",
      assumed,
    ),
  };
}

function transmittance(curve: WireScene["filter_transmittance"]): Pick<LensFilter, "filter_transmittance"> {
  if (curve === undefined) return {};
  return { filter_transmittance: inOrder<TransmittanceSample>(curve, ["wavelength_nm", "transmittance"]) };
}

function kit({ kit: items }: WireScene): Pick<Scene, "kit"> {
  if (items === undefined) return {};
  return {
    kit: items.map(({ id, item, filter_transmittance: curve, ...rest }) => ({
      id,
      item,
      ...given(rest, ["filter_kind", "filter_density"]),
      ...transmittance(curve),
    })),
  };
}
