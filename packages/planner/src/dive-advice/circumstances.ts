import { illuminant, type Spectrum } from "@sunfathom/optics";
import { limitsOf } from "../camera/exposure-settings.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import { redShareAbove600 } from "../camera/shot.js";
import type { CircumstanceReasons } from "../codes/circumstances.js";
import { type Reason, reasonsOf } from "../codes/coded.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { underwater } from "../light/underwater.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { isSunny } from "./daylit.js";
import type { Decisions } from "./decisions.js";
import { brighterThanSubject, endOfPlan, startOfPlan } from "./exposure-plan.js";

const reason = reasonsOf<CircumstanceReasons>();

/**
 * Whether the water leaves a camera less of blue than of red, against white in daylight: then no filter is there for red. Of what the
 * red channel records, only what lies above 600 nm is red: in green water the rest is green.
 */
export function isBlueMissing({ scene, mixed: { conditions } }: Decisions): boolean {
  if (!conditions.daylight) return false;
  const profile = sensorProfile(sensorOf(scene, NOMINAL));
  const left = (light: Spectrum): { red: number; blue: number } => {
    const [red, , blue] = rawOf(profile, light);
    return { red: red * redShareAbove600(profile.sensor, light), blue };
  };
  const there = left(cardDaylightAt(underwater(conditions, NOMINAL), scene.max_depth_m));
  const white = left(illuminant("D65"));
  return there.blue / white.blue < there.red / white.red;
}

/** A filter that costs more than this has to be accounted for: what is sold for diving costs 1 to 2 1/2 stops, from memory. */
const DENSE_FROM_STOPS = 2.75;
/** From here down an hour changes the light by a stop and more. Common practice, no published source. */
const LOW_SUN_DEG = 20;
/** From so many eighths on no sun is to be seen: a closed cover has no side. */
const CLOSED_OKTAS = 7;
/** Less than this between subject and picture is met by no other exposure. */
const AGAINST_LIGHT_STOPS = 0.5;

function whyDense({ filter, scene }: Decisions): Reason<CircumstanceReasons>[] {
  if (filter.filter_kind === "none" || filter.filter_loss_stops.likely < DENSE_FROM_STOPS) return [];
  const reached = (test: "advised_balance_in_reach" | "without_balance_in_reach") =>
    filter.depths.filter((depth) => depth[test]).at(-1)?.depth_m;
  const [with_m, to_m] = [reached("advised_balance_in_reach"), reached("without_balance_in_reach")];
  if (with_m === undefined || with_m - (to_m ?? scene.min_depth_m) < 1) return [];
  return [
    reason("dense_for_balance", "computed", { with_m, ...(to_m === undefined ? {} : { without: { to_m } }) }),
  ];
}

/** How much darker it may be than at the deep end before the camera is at its limit, where lights are there that stay off. */
function spareOf({ scene, exposure, lampPlan }: Decisions): { lamps?: { spare_stops: number } } {
  const spare_stops = Math.log2(limitsOf(scene).max_iso / endOfPlan(exposure).setting.iso);
  return lampPlan === "lamps_off" && spare_stops > 0 ? { lamps: { spare_stops } } : {};
}

/** What is special to this light, this place and this camera. */
export function circumstancesOf(d: Decisions): Reason<CircumstanceReasons>[] {
  const { scene, exposure, filmed, mixed, filter } = d;
  const { daylight, sun } = mixed.conditions;
  if (!daylight) return [];
  const reasons = whyDense(d);
  const start = startOfPlan(exposure).exposure;
  const overhead = filter.reasons.find(({ code }) => code === "overhead_cuts");
  if (scene.overhead === "cavern" && overhead?.code === "overhead_cuts")
    reasons.push(
      reason("mouth_is_brighter", "judgement", { stops: overhead.parameters.stops, ...spareOf(d) }),
    );
  if (isSunny(scene) && scene.sun_side === "in_frame") {
    const stops = brighterThanSubject(start);
    if (stops >= AGAINST_LIGHT_STOPS) reasons.push(reason("subject_against_light", "computed", { stops }));
  }
  if (isSunny(scene) && sun && sun.elevation_deg < LOW_SUN_DEG)
    reasons.push(reason("low_sun_moves", "common_practice", { elevation_deg: sun.elevation_deg }));
  if (scene.cloud_oktas >= CLOSED_OKTAS && (scene.overhead ?? "none") === "none")
    reasons.push(reason("cloud_lights_evenly", "common_practice"));
  if (scene.bottom === "macroalgae" || scene.bottom === "seagrass")
    reasons.push(reason("weed_tints", "common_practice"));
  if (filmed.white_balance_mode === "auto") {
    const behind = isSunny(scene) && scene.sun_side === "behind_camera";
    reasons.push(reason("automatic_colours", "common_practice", behind ? { sun_behind: true } : {}));
  }
  if (filter.filter_kind !== "none" && isBlueMissing(d))
    reasons.push(reason("blue_is_missing", "computed", { depth_m: scene.max_depth_m }));
  return reasons;
}
