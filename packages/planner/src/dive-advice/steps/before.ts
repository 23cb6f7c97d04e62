import type { Mount } from "../../codes/steps.js";
import type { DiveStep } from "../../result/dive-advice.js";
import { worseBelow } from "../below.js";
import type { Decisions } from "../decisions.js";
import { startOfPlan } from "../exposure-plan.js";
import { mountOf } from "../legs.js";
import { lampsBefore } from "./lamps-before.js";
import { step } from "./step.js";

const at = { phase: "before_dive" } as const;
const common = { ...at, basis: "common_practice" } as const;

/** What is mounted, set and packed on dry land. */
export function beforeDive(d: Decisions): DiveStep[] {
  const { filmed, exposure, filter } = d;
  const steps = [filterStep(d)];
  for (const reason of filter.reasons) {
    // Whoever has lights reads what is done with them.
    if (reason.code === "only_lamps_would_help" && d.scene.lamps.length === 0)
      steps.push(step({ ...at, basis: reason.basis }, "lamps_would_help", reason.parameters));
  }
  if (exposure.neutral) {
    const { density, excess_stops: stops, mount, off } = exposure.neutral;
    steps.push(step(at, "neutral_density", { density, stops, mount, stays: off === undefined }));
  }
  const { exposure_mode = "manual", white_balance_mode = "card", bits, recording_curve } = filmed;
  // One dial, one value: what filming begins with.
  const { shutter_s } = startOfPlan(exposure).setting.shutter ?? filmed;
  const log = recording_curve === "log" ? { log: true as const } : {};
  steps.push(
    exposure_mode === "manual" && white_balance_mode === "card"
      ? step(common, "set_frame", { exposure: { shutter_s }, bits, ...log })
      : step(common, "set_modes", { exposure_mode, white_balance_mode, exposure: { shutter_s } }),
  );
  return [...steps, ...(d.lampPlan === "none" ? [] : lampsBefore(d))];
}

function filterStep(d: Decisions): DiveStep {
  const { filter, filterNamed, filmed, lampPlan, legs, mounted, exposure } = d;
  // A neutral filter that the plan has a use for stays.
  const isNeeded = mounted?.filter.kind === "neutral" && mounted.filter.density === exposure.neutral?.density;
  const instead = mounted && !mounted.kept && !isNeeded ? { instead_of: mounted.filter } : {};
  if (filter.filter_kind === "none") {
    return lampPlan === "lamps_only" || lampPlan === "lamps_lead"
      ? step(at, "no_filter_for_lamps", instead)
      : step(at, "no_filter", { error: filter.colour_error_without_delta_e00.likely, ...instead });
  }
  const below = worseBelow(d);
  const worth = {
    filter: filterNamed,
    with_e: filter.colour_error_delta_e00.likely,
    without_e: filter.colour_error_without_delta_e00.likely,
    loss_stops: filter.filter_loss_stops.likely,
    ...(below ? { below } : {}),
    ...(filter.densest ? { densest: true as const } : {}),
    ...(filmed.lamps.length > 0 ? { lit: true as const } : {}),
    ...(filmed.filter_change_underwater === "none" ? {} : { outside: true as const }),
  };
  if (legs.length > 1) {
    const filtered = legs.find((leg) => leg.filtered) ?? legs[0];
    const mount: Mount = mountOf(filtered);
    const range = { from_m: filtered.top_m, to_m: filtered.bottom_m };
    return step(at, "carry_filter", { ...worth, mount, ...range, from_start: legs[0].filtered, ...instead });
  }
  return mounted?.kept
    ? step(at, "keep_filter", { ...worth, ...(mounted.better ? { better: mounted.better } : {}) })
    : step(at, "mount_filter", { ...worth, ...instead });
}
