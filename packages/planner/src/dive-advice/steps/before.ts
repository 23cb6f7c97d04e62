import type { NamedFilter } from "../../codes/named-filter.js";
import { named } from "../../filter-choice/candidates.js";
import { kindOfItem } from "../../filter-choice/kind-of-curve.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { KitItem } from "../../scene/scene.js";
import type { Decisions } from "../decisions.js";
import { mountOf, startOf } from "../legs.js";
import { tooBright } from "../too-bright.js";
import { step } from "./step.js";

const at = { phase: "before_dive" } as const;
const common = { ...at, basis: "common_practice" } as const;

/** What is mounted, set and packed on dry land. */
export function beforeDive(d: Decisions): DiveStep[] {
  const { filmed, lampFilter, lampLight_lx, legs } = d;
  const steps = [filterStep(d)];
  const bright = tooBright(startOf(legs));
  if (bright) {
    const { depth_m: _, excess_stops: stops, ...away } = bright;
    steps.push(step(at, "neutral_density", { stops, ...away }));
  }
  steps.push(step(common, "set_frame", { exposure: { shutter_s: filmed.shutter_s }, bits: filmed.bits }));
  steps.push(step(common, "pack_card"));
  if (d.lampPlan === "lamps_with_filter" && lampFilter) {
    const { item, split_left_delta_e00: left } = lampFilter;
    steps.push(step(at, "filter_lamps", { filter: ownedName(item), left }));
  }
  if (filmed.lamps.length > 0) {
    const distance_m = Math.min(...filmed.lamps.map((lamp) => lamp.distance_m));
    steps.push(step(at, "check_lamps", { lux: lampLight_lx, distance_m }));
  }
  return steps;
}

function ownedName(item: KitItem): NamedFilter {
  const { id, filter_density: density } = item;
  return named({ kind: kindOfItem(item), id, ...(density === undefined ? {} : { density }) });
}

function filterStep({ filter, filterNamed, lampPlan, legs }: Decisions): DiveStep {
  const lampsLight = lampPlan === "lamps_only" || lampPlan === "lamps_lead";
  if (filter.filter_kind === "none") {
    return lampsLight
      ? step(at, "no_filter_for_lamps")
      : step(at, "no_filter", { error: filter.colour_error_without_delta_e00.likely });
  }
  const figures = {
    with_e: filter.colour_error_delta_e00.likely,
    without_e: filter.colour_error_without_delta_e00.likely,
    loss_stops: filter.filter_loss_stops.likely,
  };
  if (legs.length === 1) return step(at, "mount_filter", { filter: filterNamed, ...figures });
  const filtered = legs.find((leg) => leg.filtered) ?? legs[0];
  const { min_depth_m: from_m, max_depth_m: to_m } = filtered.scene;
  return step(at, "carry_filter", {
    filter: filterNamed,
    mount: mountOf(filtered),
    from_m,
    to_m,
    ...figures,
  });
}
