import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import type { WhiteBalanceReasons } from "../codes/white-balance.js";
import type { Conditions } from "../light/conditions.js";
import { cctReasons } from "../reasons/cct-reasons.js";
import type { WhiteBalanceFigures } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";

type Reason = CodedReason<WhiteBalanceReasons & LightReasons>;

const reason = reasonsOf<WhiteBalanceReasons>();

export function balanceReasons({ scene }: Conditions, answer: WhiteBalanceFigures): Reason[] {
  const reasons: Reason[] = [];
  const { depths, balance_depths_descending_m: down, balance_tolerance_delta_e00: tolerance } = answer;
  const [, again_m] = down;
  if (answer.lamp_kelvin_setting_K !== undefined && answer.lamp_kelvin_leaves_delta_e00) {
    reasons.push(
      reason("kelvin_leaves_the_water", "computed", {
        cct_K: answer.lamp_kelvin_setting_K,
        left: answer.lamp_kelvin_leaves_delta_e00.likely,
        path_m: Math.min(...scene.lamps.map((lamp) => lamp.distance_m)) + scene.subject_distance_m,
      }),
    );
  }
  if (answer.method === "kelvin" || answer.method === "auto")
    return [leftUncorrected(scene, answer), ...cctReasons(depths)];
  const deepestShort = [...depths].reverse().find(({ in_reach }) => !in_reach);
  if (scene.max_depth_m > scene.min_depth_m) {
    // The model's own tolerance is a judgement.
    const basis = scene.balance_tolerance_delta_e00 === undefined ? "judgement" : "computed";
    // Where the camera is at its limit a new balance takes nothing out either: none serves.
    const serves = depths.every(({ cast_left_delta_e00 }) => cast_left_delta_e00 <= tolerance);
    if (again_m !== undefined) {
      reasons.push(reason("balance_again", basis, { times: down.length - 1, first_m: again_m, tolerance }));
    } else if (serves) reasons.push(reason("one_balance_serves", basis, { tolerance }));
  }
  if (deepestShort) {
    reasons.push(
      reason("balance_falls_short", "computed", {
        depth_m: deepestShort.depth_m,
        short_stops: deepestShort.short_of_reach_stops,
        cast: deepestShort.cast_left_delta_e00,
      }),
    );
  } else {
    reasons.push(reason("balance_in_reach", "computed"));
  }
  return [...reasons, ...cctReasons(depths)];
}

/** Where a balance in kelvin, or one that the camera finds, leaves most on grey. */
function leftUncorrected(scene: Scene, { depths }: WhiteBalanceFigures): Reason {
  const worst = depths.reduce((most, depth) =>
    depth.cast_left_delta_e00 > most.cast_left_delta_e00 ? depth : most,
  );
  const left = {
    depth_m: worst.depth_m,
    cast: worst.cast_left_delta_e00,
    card_cast: worst.card_cast_left_delta_e00 ?? worst.cast_left_delta_e00,
  };
  const { white_balance_kelvin_K: cct_K } = scene;
  return cct_K === undefined
    ? reason("auto_balance_leaves", "computed", left)
    : reason("kelvin_balance_leaves", "computed", { cct_K, ...left });
}
