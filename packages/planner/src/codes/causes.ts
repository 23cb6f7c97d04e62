import type { WaterCause } from "@sunfathom/optics";
import type { Nothing } from "./coded.js";

/** Causes of doubt on the light of lamps. */
export interface LampCauses {
  lamp_beam: Nothing;
  /** How far a hand aims beside the subject. */
  lamp_aim: Nothing;
  lamp_offset: Nothing;
}

/** Causes of doubt on light in water. */
export interface LightCauses extends LampCauses, Record<WaterCause, Nothing> {
  /** How strongly the water scatters: told from attenuation, or from how far one sees. */
  water_scattering: { known_by: "attenuation" | "sight" };
  path_scattering: Nothing;
  sensor: Nothing;
  daylight_level: Nothing;
  /** Which way the camera looks against the sun. */
  upright_share: Nothing;
  light_field: Nothing;
  reference_sun: Nothing;
  sea_floor: Nothing;
  /** What comes through what lies over the diver. */
  overhead: Nothing;
  filter_edge: Nothing;
  filter_width: Nothing;
  /** Of a filter that is known by pictures of a card. */
  filter_density: Nothing;
  full_well: Nothing;
}

/** Causes of doubt on where a filter goes. */
export interface MountingCauses {
  pupil_distance: Nothing;
}
