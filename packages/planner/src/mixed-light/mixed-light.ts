import { add, illuminance_lx, multiply, pathTransmittance, type Spectrum } from "@sunfathom/optics";
import { castBetween, redExcessStops } from "../camera/cast.js";
import { rawOf, type SensorProfile } from "../camera/sensor-profile.js";
import { conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { lampsAtPort } from "../light/lamps.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { towardsCamera, type Underwater, underwater } from "../light/underwater.js";
import { cautionsFor } from "../messages/cautions-for.js";
import { reason } from "../messages/say.js";
import { sunReasons } from "../messages/sun-reasons.js";
import type { Estimate, Reason } from "../result/common.js";
import type { MixedLightAnswer, MixedLightAtDepth, MixedLightVerdict } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { causesOf } from "../uncertainty/causes.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { mapRising, propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { lightsAt, verdictAt } from "./lights.js";
import { waysOut } from "./ways-out.js";

/** Log to base 2 of an illuminance; of a millionth of a lux where it is dark, so that differences stay finite. */
const log2Lux = (light: Spectrum): number => Math.log2(Math.max(1e-6, illuminance_lx(light)));

interface Numbers {
  red: number;
  green: number;
  blue: number;
  split: number;
  redExcess: number;
  log2LampLux: number;
  log2DaylightLux: number;
  waterRed: number;
  waterGreen: number;
  waterBlue: number;
}
const KEYS = [
  "red",
  "green",
  "blue",
  "split",
  "redExcess",
  "log2LampLux",
  "log2DaylightLux",
  "waterRed",
  "waterGreen",
  "waterBlue",
] as const satisfies readonly (keyof Numbers)[];

function numbersAt(world: Underwater, depth_m: number, mixed: boolean): Numbers {
  const { daylight, lamps, profile } = lightsAt(world, depth_m);
  const path = towardsCamera(world);
  const ratio = mixed ? stopsBetween(profile, multiply(daylight, path), multiply(lamps, path)) : [0, 0, 0];
  const both = add(daylight, lamps);
  const water = world.scene.lamps.length > 0 ? waterLoss(world, profile) : [0, 0, 0];
  return {
    red: ratio[0],
    green: ratio[1],
    blue: ratio[2],
    split: mixed ? castBetween(profile, daylight, both) : 0,
    redExcess: mixed ? redExcessStops(profile, daylight, both) : 0,
    log2LampLux: log2Lux(lamps),
    log2DaylightLux: log2Lux(daylight),
    waterRed: water[0],
    waterGreen: water[1],
    waterBlue: water[2],
  };
}

/** Channel by channel, how far `light` outshines `reference`, in stops. */
function stopsBetween(profile: SensorProfile, reference: Spectrum, light: Spectrum): number[] {
  const below = rawOf(profile, reference);
  return rawOf(profile, light).map((value, k) => Math.log2(value / below[k]));
}

/** What the water takes from the lamps' light on its way to the subject and on to the camera, per channel, in stops. */
function waterLoss(world: Underwater, profile: SensorProfile): number[] {
  const { lamps, subject_distance_m } = world.scene;
  const path_m = Math.min(...lamps.map((lamp) => lamp.distance_m)) + subject_distance_m;
  const port = lampsAtPort(lamps);
  return stopsBetween(profile, multiply(port, pathTransmittance(world.path_per_m, path_m)), port);
}

function atDepth(world: Underwater, depth_m: number, e: Record<keyof Numbers, Estimate>): MixedLightAtDepth {
  const verdict = verdictAt(world, depth_m);
  const hasLamps = verdict !== "daylight_only";
  const mixed = hasLamps && verdict !== "lamps_only";
  const dark: Estimate = { low: 0, likely: 0, high: 0 };
  const lux = (log2: Estimate) => mapRising(log2, (l) => 2 ** l);
  return {
    depth_m,
    verdict,
    ...(mixed
      ? {
          red_lamp_over_daylight_stops: e.red,
          green_lamp_over_daylight_stops: e.green,
          blue_lamp_over_daylight_stops: e.blue,
          split_delta_e00: mapRising(e.split, (x) => Math.max(0, x)),
          red_excess_stops: e.redExcess,
        }
      : {}),
    lamp_illuminance_lx: hasLamps ? lux(e.log2LampLux) : dark,
    daylight_illuminance_lx: verdict === "lamps_only" ? dark : lux(e.log2DaylightLux),
    ...(hasLamps
      ? {
          lamp_red_water_loss_stops: e.waterRed,
          lamp_green_water_loss_stops: e.waterGreen,
          lamp_blue_water_loss_stops: e.waterBlue,
        }
      : {}),
    ways_out: verdict === "lights_fight" ? waysOut({ world, ...lightsAt(world, depth_m) }) : [],
  };
}

/**
 * Lamps against daylight on an upright subject, depth by depth: per channel, the colour split that one balance leaves, a verdict
 * and the ways out.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function mixedLight(scene: Scene): MixedLightAnswer {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depths = depthsOf(scene);
  const mixed = scene.lamps.length > 0 && conditions.daylight !== undefined;
  const propagated = propagate((nuisance) => {
    const world = underwater(conditions, nuisance);
    return depths.flatMap((depth_m) => {
      const numbers = numbersAt(world, depth_m, mixed);
      return KEYS.map((key) => numbers[key]);
    });
  }, causesOf(conditions));
  const world = underwater(conditions, NOMINAL);
  const answers = depths.map((depth_m, d) => {
    const own = propagated.estimates.slice(d * KEYS.length, (d + 1) * KEYS.length);
    const e = Object.fromEntries(KEYS.map((key, k) => [key, own[k]])) as Record<keyof Numbers, Estimate>;
    return atDepth(world, depth_m, e);
  });
  const main = KEYS.indexOf(mixed ? "green" : scene.lamps.length > 0 ? "log2LampLux" : "log2DaylightLux");
  return {
    balance_to: balanceTo(answers),
    depths: answers,
    reasons: [...reasonsOf(answers), ...sunReasons(conditions)],
    cautions: cautionsFor(scene),
    uncertainty: shareOfCauses(propagated, (depths.length - 1) * KEYS.length + main),
    sources: [...lightSources(conditions), "ciede2000"],
  };
}

/** To the lamps where they are alone or lead at most depths, else to daylight. */
function balanceTo(answers: readonly MixedLightAtDepth[]): "daylight" | "lamps" {
  const toLamps = answers.filter(({ verdict }) => verdict === "lamps_only" || verdict === "lamps_lead");
  return toLamps.length * 2 > answers.length ? "lamps" : "daylight";
}

function reasonsOf(answers: readonly MixedLightAtDepth[]): Reason[] {
  const reasons: Reason[] = [];
  const firstOf = (verdict: MixedLightVerdict) => answers.find((a) => a.verdict === verdict);
  const lampsOnly = firstOf("lamps_only");
  if (lampsOnly) {
    reasons.push(
      reason("lamps_only", "computed", {
        red: lampsOnly.lamp_red_water_loss_stops?.likely ?? 0,
        green: lampsOnly.lamp_green_water_loss_stops?.likely ?? 0,
        blue: lampsOnly.lamp_blue_water_loss_stops?.likely ?? 0,
      }),
    );
  }
  if (firstOf("daylight_only")) reasons.push(reason("daylight_only", "computed"));
  const fight = firstOf("lights_fight");
  if (fight) {
    reasons.push(
      reason("lights_fight", "computed", {
        depth_m: fight.depth_m,
        split: fight.split_delta_e00?.likely ?? 0,
        red_excess: fight.red_excess_stops?.likely ?? 0,
      }),
    );
  }
  for (const verdict of ["daylight_leads", "lamps_lead"] as const) {
    const leads = firstOf(verdict);
    const green = leads?.green_lamp_over_daylight_stops?.likely;
    if (leads && green !== undefined)
      reasons.push(reason(verdict, "computed", { depth_m: leads.depth_m, green }));
  }
  if (answers.some((a) => a.green_lamp_over_daylight_stops))
    reasons.push(reason("upright_subject", "computed"));
  return reasons;
}
