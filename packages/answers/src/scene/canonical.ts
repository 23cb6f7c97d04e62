import {
  bottomBelowDeepest_m,
  cameraDefault,
  sceneDefaults as defaults,
  type FormFields,
  impliedDaylightBasis,
  plainResolvedSceneForm,
  type ResolvedScene,
  shutterOfFrame_s,
  type Scene as WireScene,
  wantedLeadFrom_m,
} from "@sunfathom/contract";
import type { Scene } from "@sunfathom/planner";
import { byDensity } from "./by-density.js";
import { bySamples } from "./by-samples.js";
import { canonicalLamps } from "./canonical-lamps.js";
import { type Assume, assuming, type OwnFields, oneForm } from "./one-form.js";
import type { Canonical, Echo } from "./scene-kind.js";

const hasLamps = ({ lamps = [], lamp_flux_lm }: WireScene): boolean =>
  lamps.length > 0 || lamp_flux_lm !== undefined;

/** So that sums of decimals look like what they are. */
const toMicrometre = (metres: number): number => Number(metres.toFixed(6));

/** A field whose default goes by the class of the camera. */
const byClass =
  (field: Parameters<typeof cameraDefault>[1]) =>
  (wire: WireScene, assume: Assume): object => ({
    [field]: assume(wire[field], cameraDefault(wire, field), field),
  });

const ownFields = {
  daylight_basis: (wire, assume) => ({
    daylight_basis: assume(wire.daylight_basis, impliedDaylightBasis(wire), "daylight_basis"),
  }),
  // Where daylight comes from says whether there is a height of the sun to assume.
  sun_elevation_deg: (wire, assume) =>
    (wire.daylight_basis ?? impliedDaylightBasis(wire)) === "sun"
      ? {
          sun_elevation_deg: assume(wire.sun_elevation_deg, defaults.sun_elevation_deg, "sun_elevation_deg"),
        }
      : {},
  min_depth_m: ({ min_depth_m, depth_m }) => ({ min_depth_m: min_depth_m ?? depth_m }),
  max_depth_m: ({ max_depth_m, depth_m }) => ({ max_depth_m: max_depth_m ?? depth_m }),
  sun_side: ({ sun_side, camera_heading_deg }, assume) =>
    camera_heading_deg === undefined ? { sun_side: assume(sun_side, defaults.sun_side, "sun_side") } : {},
  bottom: ({ bottom, bottom_reflectance }, assume) =>
    bottom_reflectance === undefined ? { bottom: assume(bottom, defaults.bottom, "bottom") } : {},
  bottom_depth_m: ({ bottom, bottom_depth_m, max_depth_m, depth_m = 0 }, assume) =>
    bottom === "none"
      ? {}
      : {
          bottom_depth_m: assume(
            bottom_depth_m,
            toMicrometre((max_depth_m ?? depth_m) + bottomBelowDeepest_m),
            "bottom_depth_m",
          ),
        },
  min_f_number: byClass("min_f_number"),
  max_f_number: byClass("max_f_number"),
  white_balance_min_cct_K: byClass("white_balance_min_cct_K"),
  white_balance_max_cct_K: byClass("white_balance_max_cct_K"),
  white_balance_max_duv: byClass("white_balance_max_duv"),
  recording_curve: ({ recording_curve, recording_curve_points }, assume) =>
    recording_curve_points === undefined
      ? { recording_curve: assume(recording_curve, defaults.recording_curve, "recording_curve") }
      : {},
  // The exposure time, and the frame rate where there is one. Of rate and angle the one that was not given is assumed;
  // where neither was, nor a time, the time is.
  shutter_s: ({ shutter_s, frame_rate_fps: rate, shutter_angle_deg: angle }, assume) => {
    if (shutter_s !== undefined) return { shutter_s };
    if (rate === undefined && angle === undefined)
      return { shutter_s: assume(undefined, shutterOfFrame_s(), "shutter_s") };
    const frame_rate_fps = assume(rate, defaults.frame_rate_fps, "frame_rate_fps");
    const angle_deg = assume(angle, defaults.shutter_angle_deg, "shutter_angle_deg");
    return { shutter_s: shutterOfFrame_s(frame_rate_fps, angle_deg), frame_rate_fps };
  },
  frame_rate_fps: ({ shutter_s, frame_rate_fps }) =>
    shutter_s === undefined || frame_rate_fps === undefined ? {} : { frame_rate_fps },
  lamps: (wire, assume) => ({ lamps: hasLamps(wire) ? canonicalLamps(wire, assume) : [] }),
  wanted_lead_distance_m: ({ wanted_lead_stops, wanted_lead_distance_m, ...wire }, assume) => {
    if (wanted_lead_stops === undefined) return {};
    const lamps_m = [
      ...(wire.lamps ?? []).map(({ distance_m }) => distance_m),
      wire.lamp_distance_m ?? Infinity,
    ];
    const nearest_m = Math.min(...lamps_m);
    const from_m = nearest_m === Infinity ? wantedLeadFrom_m : nearest_m;
    return { wanted_lead_distance_m: assume(wanted_lead_distance_m, from_m, "wanted_lead_distance_m") };
  },
  assumed: () => ({}),
} satisfies OwnFields<WireScene>;

/** The same scene with its filters by kind and density, however they were given. */
function described(wire: WireScene): WireScene {
  const { filter_samples, kit = [] } = wire;
  const isSampled = filter_samples !== undefined || kit.some((item) => item.filter_samples !== undefined);
  const nominal = byDensity(wire);
  return isSampled ? bySamples(nominal) : nominal;
}

/** What a scene says beyond the plain ones: its fields, what they are taken to be, and names of those that an answer assumes by itself. */
export interface Further {
  form: FormFields;
  defaults: Readonly<Record<string, unknown>>;
  own: OwnFields<WireScene>;
  assumed: (scene: Scene) => string[];
}

const NOTHING: Further = { form: {}, defaults: {}, own: {}, assumed: () => [] };

/** Brings scenes into their one form: scenes that mean the same come out the same, to the byte. They have passed their schema and the rules between their fields. */
export function canonicalWith(further: Further = NOTHING): (wire: WireScene) => Canonical<Scene> {
  const inOneForm = oneForm<WireScene>({
    form: { ...plainResolvedSceneForm, ...further.form },
    defaults: { ...defaults, ...further.defaults },
    own: { ...ownFields, ...further.own },
  });
  return (wire) => {
    const assumed: string[] = [];
    // By its form it is what the contract resolves, and that must be a scene of the planner: else this does not compile.
    const scene: Scene = inOneForm(described(wire), assuming(assumed)) as Echo<ResolvedScene>;
    return { scene, assumed: [...assumed, ...further.assumed(scene)] };
  };
}

/** The same for scenes that say nothing of what a filter is mounted on. */
export const canonicalScene = canonicalWith();
