import { codedOf } from "../../codes/coded.js";
import type { WaysOut } from "../../codes/ways-out.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { step } from "./step.js";

/** From this share of a lit grey on, haze lit by the lamps spoils the picture: a judgement. */
const HAZE_SPOILS_FROM_PERCENT = 15;
const at = { phase: "lamps" } as const;

/** What is done with the lamps. */
export function lampSteps(d: Decisions): DiveStep[] {
  const { lampPlan, middle, mixed } = d;
  const green = middle.green_lamp_over_daylight_stops?.likely ?? 0;
  const steps = lampPlan === "lamps_off" ? lampsOff(d) : [];
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
  if (lampPlan === "lamps_off") return steps;
  const fight = mixed.zones.find(({ verdict }) => verdict === "lights_fight");
  if (fight && mixed.zones.length > 1) {
    steps.push(step(at, "mixing_zone", { from_m: fight.min_depth_m, to_m: fight.max_depth_m }));
  }
  const percent = middle.lit_haze_percent?.likely ?? 0;
  if (percent > HAZE_SPOILS_FROM_PERCENT) steps.push(step(at, "hold_lamps_wide", { percent }));
  return steps;
}

/** Off, what else could be done, and where they may go on after all. */
function lampsOff({ middle, mixed }: Decisions): DiveStep[] {
  const off = middle.ways_out.find(({ way }) => way === "lamps_off");
  const steps = [
    step(at, "lamps_off", {
      split: middle.split_delta_e00?.likely ?? 0,
      red_excess: middle.red_excess_stops?.likely ?? 0,
      cost: off?.cost_stops ?? 0,
    }),
  ];
  const other = middle.ways_out.find(({ way }) => way !== "lamps_off");
  if (other)
    steps.push(
      step(at, "lamps_other_way", { way: codedOf<WaysOut>(other), left: other.split_left_delta_e00 }),
    );
  const leading = mixed.zones.find(({ verdict }) => verdict === "lamps_lead");
  if (leading) {
    const { min_depth_m: depth_m } = leading;
    steps.push(step({ ...at, depth_m }, "lamps_from", { depth_m }));
  }
  return steps;
}
