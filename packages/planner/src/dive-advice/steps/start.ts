import { meteredOnSubject } from "../../exposure-loss/sensitivity.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { ExposureAtDepth } from "../../result/exposure-loss.js";
import type { Decisions } from "../decisions.js";
import { startOfPlan } from "../exposure-plan.js";
import { step } from "./step.js";
import { tooDark } from "./too-dark.js";

/** What the whole picture asks for beyond the subject, in stops: the compensation that gives the subject its own exposure. */
const brighterThanSubject = (exposure: ExposureAtDepth): number => {
  const subject = meteredOnSubject(exposure);
  return (exposure.scene_exposure_value_ev100?.likely ?? subject) - subject;
};

/** What is done when filming begins. */
export function atStart({ legs, exposure, scene }: Decisions): DiveStep[] {
  const { exposure: first, setting } = startOfPlan(exposure);
  const { balance, top_m: depth_m } = legs[0];
  const at = { phase: "at_start", depth_m } as const;
  const steps = [
    first.verdict === "too_dark"
      ? tooDark(at, first)
      : scene.exposure_mode === "auto"
        ? step(at, "exposure_by_itself", { stops: brighterThanSubject(first) })
        : step(at, "start_exposure", { ...setting, ev: meteredOnSubject(first) }),
  ];
  if (balance.method === "card_at_lamp_distance") {
    const { lamp_kelvin_setting_K: cct_K, lamp_kelvin_leaves_delta_e00 } = balance;
    const cast = lamp_kelvin_leaves_delta_e00?.likely ?? 0;
    const kelvin = cct_K === undefined ? {} : { cct_K };
    steps.push(step(at, "balance_on_card_in_lamp_light", { ...kelvin, cast }));
  } else if (balance.method !== "card") {
    const { cast_left_delta_e00: cast } = balance.depths[0];
    const { white_balance_kelvin_K: cct_K } = scene;
    steps.push(
      cct_K === undefined
        ? step(at, "balance_by_itself", { cast })
        : step(at, "balance_in_kelvin", { cct_K, cast }),
    );
  } else {
    const { cast_left_delta_e00: cast, in_reach } = balance.depths[0];
    const near = scene.subject_in_reach === false ? { near_m: scene.subject_distance_m } : {};
    steps.push(
      step({ ...at, basis: "common_practice" }, "balance_on_card", { cast: in_reach ? 0 : cast, ...near }),
    );
  }
  return steps;
}
