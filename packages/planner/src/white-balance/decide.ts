import { cctDuv, chromaticity, multiply, xyzOf } from "@sunfathom/optics";
import { balanceReach, balanceToCard } from "../camera/balance-reach.js";
import { balanceOf, balanceSettingOf, balanceSources } from "../camera/balance-setting.js";
import { castOfRaw } from "../camera/cast.js";
import type { Vector3 } from "../camera/matrix.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import { cautionsFor } from "../cautions/cautions-for.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { handDepth } from "../light/hand-depth.js";
import { hasLensFilter, lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { lastOf, mapBoth, mapEach } from "../lists/non-empty.js";
import { verdictAt } from "../mixed-light/lights.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { Estimate } from "../result/common.js";
import type { BalanceAtDepth, WhiteBalanceDecision, WhiteBalanceFigures } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { causesOf, filterCausesOf } from "../uncertainty/causes.js";
import type { Each } from "../uncertainty/figures.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { avoidableCast, cardLight } from "./avoidable-cast.js";
import { lampKelvin } from "./lamp-kelvin.js";
import { balanceReasons } from "./reasons.js";
import { balancesAlong } from "./rebalance.js";
import type { ShiftBetween } from "./shift-between.js";

/** Cast on grey since the last balance that a light grade of the shot still takes out: a judgement. */
const BALANCE_TOLERANCE_DELTA_E00 = 8;

export const toleranceFor = ({ balance_tolerance_delta_e00 }: Scene): number =>
  balance_tolerance_delta_e00 ?? BALANCE_TOLERANCE_DELTA_E00;

/** Gains that make the card neutral, as stops over the smallest. */
interface GainStops {
  red: number;
  green: number;
  blue: number;
}

function gainStops(conditions: Conditions, nuisance: Nuisance, depth_m: number): GainStops {
  const world = underwater(conditions, nuisance);
  const light = cardLight(world, lensFilterOf(conditions.scene, nuisance), depth_m);
  const [red, green, blue] = rawOf(sensorProfile(sensorOf(conditions.scene, nuisance)), light);
  const stops = { red: -Math.log2(red), green: -Math.log2(green), blue: -Math.log2(blue) };
  const least = Math.min(stops.red, stops.green, stops.blue);
  return { red: stops.red - least, green: stops.green - least, blue: stops.blue - least };
}

/** A channel this many stops below the strongest has no signal left to balance: a part in 10^12. */
const DARKEST_STOPS = 12 * Math.log2(10);

/** @throws SceneProblem where a channel receives nothing that a gain could bring back. */
function requireBalance(scene: Scene, depth_m: number, gains: Each<GainStops, Estimate>): void {
  for (const channel of ["red", "green", "blue"] as const) {
    if (gains[channel].high <= DARKEST_STOPS) continue;
    const field = hasLensFilter(scene) ? lensFilterField(scene) : "max_depth_m";
    throw new SceneProblem({ code: "no_balance", parameters: { channel, depth_m } }, field);
  }
}

const lensFilterField = ({ filter_transmittance }: Scene): string =>
  filter_transmittance ? "filter_transmittance" : "filter_kind";

function atDepth(
  conditions: Conditions,
  depth_m: number,
  { red, green, blue }: Each<GainStops, Estimate>,
): BalanceAtDepth {
  const { scene } = conditions;
  const profile = sensorProfile(sensorOf(scene, NOMINAL));
  const world = underwater(conditions, NOMINAL);
  const filter = lensFilterOf(scene, NOMINAL);
  const light = cardLight(world, filter, depth_m);
  const raw = rawOf(profile, light);
  const reach = balanceReach(scene, profile);
  const { in_reach, residual_stops, gains } = balanceToCard(reach, raw);
  const castUnder = (set: Vector3) => castOfRaw(profile, [1 / set[0], 1 / set[1], 1 / set[2]], raw);
  const onCard = in_reach ? 0 : castUnder(gains);
  const setting = balanceSettingOf(scene, profile);
  const whole = () => rawOf(profile, multiply(stageAt(world, depth_m).whole(), filter));
  const { x, y } = chromaticity(xyzOf(light));
  const { cct_K, duv } = cctDuv(x, y);
  const gain = (stops: Estimate) => mapRising(stops, (s) => 2 ** Math.max(0, s));
  return {
    depth_m,
    red_gain: gain(red),
    green_gain: gain(green),
    blue_gain: gain(blue),
    in_reach,
    short_of_reach_stops: residual_stops,
    ...(setting === "card"
      ? { cast_left_delta_e00: onCard }
      : {
          cast_left_delta_e00: castUnder(balanceOf(setting, reach, raw, whole).gains),
          card_cast_left_delta_e00: onCard,
        }),
    ...(cct_K === undefined ? {} : { cct_K }),
    duv,
  };
}

/** Balances one way through the range: at the start, and again where the shift is beyond the tolerance. */
function balancesOneWay(first_m: number, to_m: number, tolerance: number, shift: ShiftBetween) {
  const { depths_m, reached } = balancesAlong(
    { balanced_m: first_m, from_m: first_m, to_m },
    tolerance,
    shift,
  );
  return { depths_m: [first_m, ...depths_m], reached };
}

/**
 * How to balance white over the range, before it is put into a procedure: a dive's advice has steps of its own.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function decideBalance(scene: Scene, conditions = conditionsOf(scene)): WhiteBalanceDecision {
  requireLight(conditions);
  const depths = depthsOf(scene);
  const tolerance = toleranceFor(scene);
  const causes = [
    ...causesOf(conditions),
    ...filterCausesOf(scene).filter(({ code }) => code !== "full_well"),
  ];
  const propagated = propagate(
    (nuisance) => ({ depths: mapEach(depths, (depth_m) => gainStops(conditions, nuisance, depth_m)) }),
    causes,
  );
  mapBoth(depths, propagated.estimates.depths, (depth_m, gains) => requireBalance(scene, depth_m, gains));
  const world = underwater(conditions, NOMINAL);
  const verdict = verdictAt(world, (scene.min_depth_m + scene.max_depth_m) / 2);
  const mode = scene.white_balance_mode ?? "card";
  const isOnCard = mode === "card";
  const toLamps = isOnCard && (verdict === "lamps_only" || verdict === "lamps_lead");
  const shift = avoidableCast(conditions, world);
  const [top_m, bottom_m] = [handDepth(scene.min_depth_m, scene), handDepth(scene.max_depth_m, scene)];
  // What is set once, or sets itself, is not set again.
  const oneWay = (from_m: number, to_m: number) =>
    isOnCard ? balancesOneWay(from_m, to_m, tolerance, shift) : { depths_m: [from_m], reached: tolerance };
  const down = oneWay(top_m, scene.max_depth_m);
  const up = oneWay(bottom_m, scene.min_depth_m);
  const answer: WhiteBalanceFigures = {
    method: toLamps ? "card_at_lamp_distance" : mode,
    balance_depths_descending_m: down.depths_m,
    balance_depths_ascending_m: up.depths_m,
    balance_tolerance_delta_e00: Math.max(down.reached, up.reached),
    ...(toLamps ? lampKelvin(conditions) : {}),
    depths: mapBoth(depths, propagated.estimates.depths, (depth_m, gains) =>
      atDepth(conditions, depth_m, gains),
    ),
  };
  const reasons = [...balanceReasons(conditions, answer), ...sunReasons(conditions)];
  const uncertainty = shareOfCauses(propagated, (figures) => lastOf(figures.depths).red);
  return {
    ...answer,
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty, advises: ["balance", "way_up"] }),
    uncertainty,
    sources: [
      ...new Set([...lightSources(conditions), "ciede2000", "filter_shapes", ...balanceSources(scene)]),
    ],
  };
}
