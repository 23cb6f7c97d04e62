import { sceneDefaults as defaults, shutterOfFrame_s, type Scene as WireScene } from "@sunfathom/contract";
import type { Camera, Daylight, Dive, LensFilter, Scene, WaterBasis } from "@sunfathom/planner";
import { canonicalLamps } from "./canonical-lamps.js";
import { filled, given } from "./fields.js";

export interface CanonicalScene {
  /** Every default filled in, fields in one fixed order, one form for what can be said in several. */
  scene: Scene;
  /** Names of the fields that a default filled in, in the order of the scene. */
  assumed: string[];
}

/**
 * The one form of a valid scene: scenes that mean the same come out the same, to the byte.
 * @param wire a scene that has passed its schema and the rules between its fields
 */
export function canonicalScene(wire: WireScene): CanonicalScene {
  const assumed: string[] = [];
  const scene: Scene = {
    ...water(wire),
    ...daylight(wire, assumed),
    ...dive(wire, assumed),
    ...camera(wire, assumed),
    ...lensFilter(wire, assumed),
    lamps: canonicalLamps(wire, assumed),
  };
  return { scene, assumed };
}

function water(wire: WireScene): WaterBasis {
  return {
    ...given(wire, ["water_type"]),
    ...(wire.kd_samples === undefined
      ? {}
      : { kd_samples: wire.kd_samples.map(({ wavelength_nm, kd_per_m }) => ({ wavelength_nm, kd_per_m })) }),
  };
}

function daylight(wire: WireScene, assumed: string[]): Daylight {
  const daylight_basis = filled(wire.daylight_basis, defaults.daylight_basis, "daylight_basis", assumed);
  const sun = () => filled(wire.sun_elevation_deg, defaults.sun_elevation_deg, "sun_elevation_deg", assumed);
  return {
    daylight_basis,
    ...(daylight_basis === "sun" ? { sun_elevation_deg: sun() } : {}),
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
  };
}

function camera(wire: WireScene, assumed: string[]): Camera {
  type Filled = Exclude<keyof Camera, "iso" | "f_number" | "shutter_s">;
  const fill = (name: Filled) => filled(wire[name], defaults[name], name, assumed);
  return {
    ...given(wire, ["iso"]),
    min_iso: fill("min_iso"),
    max_iso: fill("max_iso"),
    ...given(wire, ["f_number"]),
    min_f_number: fill("min_f_number"),
    max_f_number: fill("max_f_number"),
    shutter_s: shutter_s(wire, assumed),
    bits: fill("bits"),
    white_balance_min_cct_K: fill("white_balance_min_cct_K"),
    white_balance_max_cct_K: fill("white_balance_max_cct_K"),
    white_balance_max_duv: fill("white_balance_max_duv"),
  };
}

/** Where only one of frame rate and angle was given, the other one is what was assumed. */
function shutter_s(wire: WireScene, assumed: string[]): number {
  if (wire.shutter_s !== undefined) return wire.shutter_s;
  const { frame_rate_fps: rate, shutter_angle_deg: angle } = wire;
  if (rate === undefined && angle === undefined) assumed.push("shutter_s");
  else if (rate === undefined) assumed.push("frame_rate_fps");
  else if (angle === undefined) assumed.push("shutter_angle_deg");
  return shutterOfFrame_s(rate, angle);
}

function lensFilter(wire: WireScene, assumed: string[]): LensFilter {
  const { filter_transmittance: curve } = wire;
  return {
    ...given(wire, ["filter_kind", "filter_density"]),
    ...(curve === undefined
      ? {}
      : {
          filter_transmittance: curve.map(({ wavelength_nm, transmittance }) => ({
            wavelength_nm,
            transmittance: transmittance + 0,
          })),
        }),
    filter_change_underwater: filled(
      wire.filter_change_underwater,
      defaults.filter_change_underwater,
      "filter_change_underwater",
      assumed,
    ),
  };
}
