import type { LampPlan } from "../../codes/summary.js";
import { meteredOnSubject } from "../../exposure-loss/sensitivity.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { ExposureAtDepth } from "../../result/exposure-loss.js";
import type { MixedLightAtDepth } from "../../result/mixed-light.js";
import type { Lamp } from "../../scene/scene.js";
import { fromArmsLength } from "../arms-length.js";
import { isSunny } from "../daylit.js";
import type { Decisions } from "../decisions.js";
import { brighterThanSubject, startOfPlan } from "../exposure-plan.js";
import { holdsBelow } from "../legs.js";
import { isHazeLit } from "./lit-haze.js";
import { step } from "./step.js";
import { tooDark } from "./too-dark.js";

/** Plans in which lamps light what the camera is set on. */
const SET_IN_LAMP_LIGHT: readonly LampPlan[] = [
  "lamps_only",
  "lamps_lead",
  "lamps_with_daylight",
  "lamps_with_filter",
];

function lampsOn(
  at: { phase: "at_start"; depth_m: number },
  lamps: readonly Lamp[],
  middle: MixedLightAtDepth,
): DiveStep {
  const distance_m = Math.min(...lamps.map((lamp) => lamp.distance_m));
  const wide = isHazeLit(middle) ? {} : { wide: true as const };
  return step({ ...at, basis: "common_practice" }, "lamps_on", { distance_m, ...wide });
}

/**
 * Down to here, under a sun of such a height, waves throw bands of light that wander over all that is filmed, and over a card. Common
 * practice, no published source.
 */
const BANDS = { to_m: 5, from_sun_deg: 25 };
/** Farther down than so many attenuation lengths, scattering blurs them: a judgement. */
const BLURRED_FROM = 2;

const attenuation_per_m = ({ contrast_left_percent }: ExposureAtDepth, distance_m: number): number =>
  -Math.log(contrast_left_percent.likely / 100) / distance_m;

function isBanded({ scene, mixed: { conditions }, exposure }: Decisions, depth_m: number): boolean {
  const clarity = attenuation_per_m(startOfPlan(exposure).exposure, scene.subject_distance_m);
  return (
    isSunny(scene) &&
    scene.cloud_oktas < 4 &&
    (conditions.sun?.elevation_deg ?? 0) >= BANDS.from_sun_deg &&
    depth_m <= BANDS.to_m &&
    depth_m * clarity < BLURRED_FROM
  );
}

/** From here down haze takes half of a picture's contrast, and coming closer does more for it than any filter: a judgement. */
const HAZE_MATTERS_BELOW_PERCENT = 50;

function comeClose(at: { phase: "at_start"; depth_m: number }, d: Decisions): DiveStep[] {
  const { subject_distance_m: distance_m, subject_in_reach } = d.filmed;
  // Its contrast may be the least at either end: nobody comes closer twice.
  const percent = Math.min(
    ...d.exposure.stations.map(({ exposure }) => exposure.contrast_left_percent.likely),
  );
  if (percent >= HAZE_MATTERS_BELOW_PERCENT || subject_in_reach === false) return [];
  return [step({ ...at, basis: "judgement" }, "come_close", { percent, distance_m })];
}

/** What is done when filming begins. */
export function atStart(d: Decisions): DiveStep[] {
  const { exposure, scene, lampPlan, filmed, middle } = d;
  const { exposure: first, setting } = startOfPlan(exposure);
  const at = { phase: "at_start", depth_m: d.legs[0].top_m } as const;
  return [
    ...comeClose(at, d),
    ...(SET_IN_LAMP_LIGHT.includes(lampPlan) ? [lampsOn(at, filmed.lamps, middle)] : []),
    first.verdict === "too_dark"
      ? tooDark(at, first)
      : scene.exposure_mode === "auto"
        ? step(at, "exposure_by_itself", { stops: brighterThanSubject(first) })
        : step(at, "start_exposure", {
            ...setting,
            ev: meteredOnSubject(first),
            ...(isSunny(scene) && scene.sun_side === "in_frame" ? { against_sun: true as const } : {}),
            ...(scene.recording_curve === "log" ? { log: true as const } : {}),
          }),
    firstBalance(d),
  ];
}

function firstBalance(d: Decisions): DiveStep {
  const { legs, scene, filmed } = d;
  const { balance, first_m: depth_m, down } = legs[0];
  const at = { phase: "at_start", depth_m } as const;
  if (balance.method === "card_at_lamp_distance") {
    const { lamp_kelvin_setting_K: cct_K, lamp_kelvin_leaves_delta_e00 } = balance;
    const cast = lamp_kelvin_leaves_delta_e00?.likely ?? 0;
    const kelvin = cct_K === undefined ? {} : { cct_K };
    return step(at, "balance_on_card_in_lamp_light", { ...kelvin, cast });
  }
  // Worked out at some depths: that next to the balance stands for it.
  const { cast_left_delta_e00: cast, in_reach } = balance.depths.reduce((near, other) =>
    Math.abs(other.depth_m - depth_m) < Math.abs(near.depth_m - depth_m) ? other : near,
  );
  if (balance.method !== "card") {
    const { white_balance_kelvin_K: cct_K } = scene;
    return cct_K === undefined
      ? step(at, "balance_by_itself", { cast })
      : step(at, "balance_in_kelvin", { cct_K, cast });
  }
  const isBehind = isSunny(scene) && scene.sun_side === "behind_camera";
  return step({ ...at, basis: "common_practice" }, "balance_on_card", {
    cast: in_reach ? 0 : cast,
    ...(isBehind ? { sun_behind: true as const } : {}),
    ...(isBanded(d, depth_m) ? { bands: true as const } : {}),
    ...(scene.subject_in_reach === false ? { far: fromArmsLength(filmed, depth_m) } : {}),
    ...(legs.length === 1 && down.depths_m.length === 0 ? holdsBelow(legs[0]) : {}),
  });
}
