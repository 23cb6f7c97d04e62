import { codedOf } from "../../codes/coded.js";
import type { WaysOut } from "../../codes/ways-out.js";
import { handDepth } from "../../light/hand-depth.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../../mixed-light/lights.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { step } from "./step.js";

/** From this share of a lit grey on, haze lit by the lamps spoils the picture: a judgement. */
const HAZE_SPOILS_FROM_PERCENT = 15;
const at = { phase: "lamps" } as const;
/** Where lights fight is where a split is seen, which is a judgement. */
const seen = { ...at, basis: "judgement" } as const;

/** What is done with the lamps. */
export function lampSteps(d: Decisions): DiveStep[] {
  const { lampPlan, middle, mixed, scene } = d;
  if (lampPlan === "lamps_off") return lampsOff(d);
  const green = middle.green_lamp_over_daylight_stops?.likely ?? 0;
  const percent = middle.lit_haze_percent?.likely ?? 0;
  const haze = percent > HAZE_SPOILS_FROM_PERCENT ? { haze: { percent } } : {};
  const steps: DiveStep[] = [];
  if (lampPlan === "lamps_lead") steps.push(step(at, "lamps_lead", { green, ...haze }));
  if (lampPlan === "daylight_leads") steps.push(step(at, "lamps_hardly_show", { green, ...haze }));
  if (lampPlan === "lamps_only") {
    const red = middle.lamp_red_water_loss_stops?.likely ?? 0;
    const blue = middle.lamp_blue_water_loss_stops?.likely ?? 0;
    const ofGreen = middle.lamp_green_water_loss_stops?.likely ?? 0;
    steps.push(step(at, "lamps_only", { red, green: ofGreen, blue, ...haze }));
  }
  const fight = mixed.zones.find(({ verdict }) => verdict === "lights_fight");
  if (fight && mixed.zones.length > 1 && lampPlan !== "lamps_with_filter") {
    const [from_m, to_m] = [handDepth(fight.min_depth_m, scene), handDepth(fight.max_depth_m, scene)];
    if (to_m > from_m) steps.push(step(seen, "mixing_zone", { from_m, to_m }));
  }
  return steps;
}

/** Ways that ask for a lens without a colour filter. */
const BARE_LENS_WAYS = ["balance_to_lamps", "come_closer"];

/** Off, what else could be done with what is mounted, and where they may go on after all. */
function lampsOff({ scene, middle, mixed, fitted, filter }: Decisions): DiveStep[] {
  const isBare = filter.filter_kind === "none";
  const { ways_out } = middle;
  const off = ways_out.find(({ way }) => way === "lamps_off");
  const other = ways_out.find(
    ({ way, split_left_delta_e00 }) =>
      way !== "lamps_off" &&
      split_left_delta_e00 <= VISIBLE_SPLIT_DELTA_E00 &&
      (isBare || !BARE_LENS_WAYS.includes(way)),
  );
  const steps = [
    step(seen, "lamps_off", {
      split: middle.split_delta_e00?.likely ?? 0,
      red_excess: middle.red_excess_stops?.likely ?? 0,
      cost: off?.cost_stops ?? 0,
      ...(fitted ? { fitted: fitted.filter } : {}),
      ...(other ? { other: { way: codedOf<WaysOut>(other), left: other.split_left_delta_e00 } } : {}),
    }),
  ];
  const leading = mixed.zones.find(({ verdict }) => verdict === "lamps_lead");
  if (leading && isBare) {
    const depth_m = handDepth(leading.min_depth_m, scene);
    steps.push(step({ ...at, depth_m }, "lamps_from", { depth_m }));
  }
  return steps;
}
