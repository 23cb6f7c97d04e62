import type { NamedFilter } from "../../codes/named-filter.js";
import type { Mount } from "../../codes/steps.js";
import { named } from "../../filter-choice/candidates.js";
import { kindOfItem } from "../../filter-choice/kind-of-curve.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { KitItem } from "../../scene/scene.js";
import type { Decisions } from "../decisions.js";
import { mountOf } from "../legs.js";
import { step } from "./step.js";

const at = { phase: "before_dive" } as const;
const common = { ...at, basis: "common_practice" } as const;

/** What is mounted, set and packed on dry land. */
export function beforeDive(d: Decisions): DiveStep[] {
  const { filmed, exposure } = d;
  const steps = [filterStep(d)];
  if (exposure.neutral) {
    const { density, excess_stops: stops, mount } = exposure.neutral;
    steps.push(step(at, "neutral_density", { density, stops, mount }));
  }
  const { exposure_mode = "manual", white_balance_mode = "card", shutter_s, bits } = filmed;
  steps.push(
    exposure_mode === "manual" && white_balance_mode === "card"
      ? step(common, "set_frame", { exposure: { shutter_s }, bits })
      : step(common, "set_modes", { exposure_mode, white_balance_mode, exposure: { shutter_s } }),
  );
  return [...steps, ...lampsBefore(d)];
}

function lampsBefore({ filmed, fitted, lampFilter, lampPlan, lampLight_lx, middle }: Decisions): DiveStep[] {
  const distance_m = Math.min(...filmed.lamps.map((lamp) => lamp.distance_m));
  const light = filmed.lamps.length > 0 ? { lux: lampLight_lx, distance_m } : undefined;
  // With the lights at hand they are checked, too.
  const check = light ? { check: light } : {};
  if (lampPlan === "lamps_with_filter" && lampFilter) {
    const { item, split_left_delta_e00: left } = lampFilter;
    const instead = fitted ? { instead_of: fitted.filter } : {};
    return [step(at, "filter_lamps", { filter: ownedName(item), left, ...instead, ...check })];
  }
  if (fitted && !fitted.kept) return [step(at, "bare_lamps", { filter: fitted.filter, ...check })];
  if (fitted && lampPlan !== "lamps_off") {
    const left = middle.split_delta_e00?.likely ?? 0;
    return [step(at, "keep_lamp_filters", { filter: fitted.filter, left, ...check })];
  }
  return light ? [step(at, "check_lamps", light)] : [];
}

export function ownedName(item: KitItem): NamedFilter {
  const { id, filter_density: density } = item;
  return named({ kind: kindOfItem(item), id, ...(density === undefined ? {} : { density }) });
}

function filterStep({ filter, filterNamed, lampPlan, legs, mounted, exposure }: Decisions): DiveStep {
  // A neutral filter that the plan has a use for stays.
  const isNeeded = mounted?.filter.kind === "neutral" && mounted.filter.density === exposure.neutral?.density;
  const instead = mounted && !mounted.kept && !isNeeded ? { instead_of: mounted.filter } : {};
  if (filter.filter_kind === "none") {
    return lampPlan === "lamps_only" || lampPlan === "lamps_lead"
      ? step(at, "no_filter_for_lamps", instead)
      : step(at, "no_filter", { error: filter.colour_error_without_delta_e00.likely, ...instead });
  }
  const worth = {
    filter: filterNamed,
    with_e: filter.colour_error_delta_e00.likely,
    without_e: filter.colour_error_without_delta_e00.likely,
    loss_stops: filter.filter_loss_stops.likely,
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
