import { densityToStops } from "@sunfathom/optics";
import { nameOf } from "../filter-choice/candidates.js";
import { shown } from "../messages/format.js";
import { spokenDepths } from "../messages/list.js";
import { step } from "../messages/say-step.js";
import type { DiveStep } from "../result/dive-advice.js";
import type { Decisions } from "./decisions.js";

/** Below this share of contrast, coming closer goes before everything else. */
const HAZE_LIMITS_BELOW_PERCENT = 30;
const HAZE_SPOILS_FROM_PERCENT = 15;

/** The plan, in the order in which things are done. */
export const stepsOf = (d: Decisions): DiveStep[] => [
  ...before(d),
  ...atStart(d),
  ...goingDown(d),
  ...lamps(d),
  ...comingUp(d),
  ...after(d),
];

export const filterName = ({ filter }: Decisions): string =>
  nameOf({
    kind: filter.filter_kind,
    ...(filter.filter_density === undefined ? {} : { density: filter.filter_density }),
    ...(filter.filter_id === undefined ? {} : { id: filter.filter_id }),
  });

const lampsAreLight = ({ lampPlan }: Decisions): boolean =>
  lampPlan === "lamps_only" || lampPlan === "lamps_lead";

function before(d: Decisions): DiveStep[] {
  const { filter, filmed, middle, lampFilter } = d;
  const at = { phase: "before_dive" } as const;
  const steps = [filterBefore(d)];
  if (filter.neutral_density !== undefined) {
    const { neutral_density: density } = filter;
    steps.push(step(at, "neutral_density", { density, stops: densityToStops(density) }));
  }
  const { shutter_s, bits } = filmed;
  steps.push(
    step({ ...at, basis: "common_practice" }, "set_frame", { shutter: shutterText(shutter_s), bits }),
  );
  steps.push(step({ ...at, basis: "common_practice" }, "pack_card"));
  if (filmed.lamps.length > 0) {
    const distance_m = Math.min(...filmed.lamps.map((lamp) => lamp.distance_m));
    steps.push(step(at, "check_lamps", { lux: middle.lamp_illuminance_lx.likely, distance_m }));
  }
  if (
    d.lampPlan === "lamps_with_filter" &&
    lampFilter?.lamp_filter_kind &&
    lampFilter.lamp_filter_density !== undefined
  ) {
    steps.push(
      step(at, "filter_lamps", {
        kind: lampFilter.lamp_filter_kind,
        density: lampFilter.lamp_filter_density,
        left: lampFilter.split_left_delta_e00,
      }),
    );
  }
  return steps;
}

const shutterText = (shutter_s: number): string =>
  shutter_s < 1 ? `1/${shown(1 / shutter_s)} s` : `${shown(shutter_s, 1)} s`;

function filterBefore(d: Decisions): DiveStep {
  const { filter } = d;
  const at = { phase: "before_dive" } as const;
  if (lampsAreLight(d) && filter.filter_kind === "none") return step(at, "no_filter_for_lamps");
  if (filter.filter_kind === "none") {
    return step(at, "no_filter", { error: filter.colour_error_without_delta_e00.likely });
  }
  const name = filterName(d);
  if (d.filterIn_m !== undefined) return step(at, "carry_filter", { name, depth_m: d.filterIn_m });
  return step(at, "mount_filter", {
    name,
    with_e: filter.colour_error_delta_e00.likely,
    without_e: filter.colour_error_without_delta_e00.likely,
    loss_stops: filter.filter_loss_stops.likely,
  });
}

function atStart(d: Decisions): DiveStep[] {
  const { exposure, exposureBefore, balance } = d;
  const first = (exposureBefore ?? exposure).depths[0];
  const { depth_m, iso, f_number } = first;
  const at = { phase: "at_start", depth_m } as const;
  const steps = [step(at, "start_exposure", { iso, f_number, ev: first.exposure_value_ev100.likely })];
  if (balance.method === "card_at_lamp_distance") {
    const kelvin = balance.lamp_kelvin_setting_K;
    steps.push(
      step(at, "balance_on_card_in_lamp_light", {
        kelvin:
          kelvin === undefined
            ? ""
            : `Without a card, set ${shown(Math.round(kelvin / 100) * 100)} K, the lamps' own.`,
        cast: balance.lamp_kelvin_leaves_delta_e00?.likely ?? 0,
      }),
    );
  } else {
    steps.push(step({ ...at, basis: "common_practice" }, "balance_on_card"));
  }
  return steps;
}

function goingDown(d: Decisions): DiveStep[] {
  const { exposure, balance, filter, filmed, filterIn_m, filterOut_m } = d;
  const first = (d.exposureBefore ?? exposure).depths[0];
  const last = exposure.depths[exposure.depths.length - 1];
  const deep = { phase: "going_down", depth_m: last.depth_m } as const;
  const steps: DiveStep[] = [];
  if (filterIn_m !== undefined) {
    steps.push(step({ phase: "going_down", depth_m: filterIn_m }, "filter_in", { depth_m: filterIn_m }));
  }
  const again = balance.balance_depths_descending_m.slice(1);
  if (again.length > 0) {
    const tolerance = balance.balance_tolerance_delta_e00;
    steps.push(
      step({ phase: "going_down", depth_m: again[0] }, "balance_again", {
        list: spokenDepths(again),
        tolerance,
      }),
    );
  }
  if (filterOut_m !== undefined) {
    steps.push(step({ phase: "going_down", depth_m: filterOut_m }, "filter_out", { depth_m: filterOut_m }));
  }
  const darker = first.exposure_value_ev100.likely - last.exposure_value_ev100.likely;
  if (last.verdict === "too_dark") {
    const ways = last.ways_to_pay.filter(({ enough }) => enough).slice(0, 2);
    const text =
      ways.length > 0 ? ways.map((way) => way.text).join(" Or: ") : "nothing within reach pays for it.";
    steps.push(step(deep, "too_dark_below", { shortfall: last.shortfall_stops?.likely ?? 0, ways: text }));
  } else if (darker > 0.3) {
    steps.push(step(deep, "deep_exposure", { iso: last.iso, f_number: last.f_number, stops: darker }));
  }
  const contrast = last.contrast_left_percent.likely;
  if (contrast < HAZE_LIMITS_BELOW_PERCENT) {
    steps.push(step(deep, "come_close", { percent: contrast, distance_m: filmed.subject_distance_m }));
  }
  return filter.filter_kind === "none" ? steps : steps.sort((a, b) => (a.depth_m ?? 0) - (b.depth_m ?? 0));
}

function lamps(d: Decisions): DiveStep[] {
  const { lampPlan, middle, mixed } = d;
  const at = { phase: "lamps" } as const;
  const steps: DiveStep[] = [];
  const green = middle.green_lamp_over_daylight_stops?.likely ?? 0;
  if (lampPlan === "lamps_off") {
    const off = middle.ways_out.find(({ way }) => way === "lamps_off");
    steps.push(
      step(at, "lamps_off", {
        split: middle.split_delta_e00?.likely ?? 0,
        red_excess: middle.red_excess_stops?.likely ?? 0,
        cost: off?.cost_stops ?? 0,
      }),
    );
  }
  const leading = mixed.zones.find(({ verdict }) => verdict === "lamps_lead");
  if (lampPlan === "lamps_off" && leading) {
    steps.push(step({ ...at, depth_m: leading.min_depth_m }, "lamps_from", { depth_m: leading.min_depth_m }));
  }
  if (lampPlan === "lamps_lead") steps.push(step(at, "lamps_lead", { green }));
  if (lampPlan === "daylight_leads") steps.push(step(at, "lamps_hardly_show", { green }));
  if (lampPlan === "lamps_only") {
    steps.push(
      step(at, "lamps_only", {
        red: middle.lamp_red_water_loss_stops?.likely ?? 0,
        green: middle.lamp_green_water_loss_stops?.likely ?? 0,
        blue: middle.lamp_blue_water_loss_stops?.likely ?? 0,
      }),
    );
  }
  const fight = mixed.zones.find(({ verdict }) => verdict === "lights_fight");
  if (fight && mixed.zones.length > 1 && lampPlan !== "lamps_off") {
    steps.push(step(at, "mixing_zone", { from_m: fight.min_depth_m, to_m: fight.max_depth_m }));
  }
  const haze = middle.lit_haze_percent?.likely ?? 0;
  if (haze > HAZE_SPOILS_FROM_PERCENT && lampPlan !== "lamps_off") {
    steps.push(step(at, "hold_lamps_wide", { percent: haze }));
  }
  return steps;
}

function comingUp(d: Decisions): DiveStep[] {
  const { balance } = d;
  const steps: DiveStep[] = [];
  const again = balance.balance_depths_ascending_m.slice(1);
  if (again.length > 0) {
    const tolerance = balance.balance_tolerance_delta_e00;
    steps.push(
      step({ phase: "coming_up", depth_m: again[0] }, "balance_again", {
        list: spokenDepths(again),
        tolerance,
      }),
    );
  }
  const { filterIn_m, filterOut_m } = d;
  if (filterOut_m !== undefined) {
    steps.unshift(step({ phase: "coming_up", depth_m: filterOut_m }, "filter_in", { depth_m: filterOut_m }));
  }
  if (filterIn_m !== undefined) {
    steps.push(step({ phase: "coming_up", depth_m: filterIn_m }, "filter_out", { depth_m: filterIn_m }));
  }
  if (d.scene.lamps.length > 0 && d.lampPlan !== "lamps_off") {
    steps.push(step({ phase: "coming_up", basis: "common_practice" }, "lamps_off_before_air"));
  }
  return steps;
}

function after({ red, filmed }: Decisions): DiveStep[] {
  const at = { phase: "after_dive" } as const;
  const steps: DiveStep[] = [];
  if (red && red.acceptable_m < filmed.max_depth_m) {
    steps.push(step(at, "grade_red", { acceptable_m: red.acceptable_m, gone_m: red.gone_m }));
  }
  steps.push(step({ ...at, basis: "common_practice" }, "rinse"));
  return steps;
}
