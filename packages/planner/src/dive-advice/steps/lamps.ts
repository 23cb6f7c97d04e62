import { handDepth } from "../../light/hand-depth.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { MixedLightAtDepth } from "../../result/mixed-light.js";
import type { Decisions } from "../decisions.js";
import type { LampWays } from "../lamp-choice.js";
import { lampReach } from "../lamp-reach.js";
import { ownedName } from "../owned-name.js";
import { isHazeLit } from "./lit-haze.js";
import { step } from "./step.js";

const at = { phase: "lamps" } as const;
/** Where lights fight is where a split is seen, which is a judgement. */
const seen = { ...at, basis: "judgement" } as const;

/** What is done with the lamps. */
export function lampSteps(d: Decisions): DiveStep[] {
  const { lampPlan, middle } = d;
  if (lampPlan === "lamps_off") return lampsFrom(d);
  if (lampPlan === "lamps_with_daylight" && d.lampWays) return withDaylight(d, d.lampWays);
  const green = middle.green_lamp_over_daylight_stops?.likely ?? 0;
  const haze = spoiling(middle);
  const steps: DiveStep[] = [];
  if (lampPlan === "lamps_lead") steps.push(step(at, "lamps_lead", { green, ...haze }));
  const fight = fightIn(d);
  if (lampPlan === "daylight_leads")
    steps.push(step(at, "lamps_hardly_show", { green, ...haze, ...(fight ? { fight } : {}) }));
  if (lampPlan === "lamps_only") {
    const red = middle.lamp_red_water_loss_stops?.likely ?? 0;
    const blue = middle.lamp_blue_water_loss_stops?.likely ?? 0;
    const ofGreen = middle.lamp_green_water_loss_stops?.likely ?? 0;
    steps.push(step(at, "lamps_only", { red, green: ofGreen, blue, ...haze }));
  }
  // From where on nothing is seen is a judgement.
  if (lampPlan === "lamps_lead" || lampPlan === "lamps_only")
    steps.push(step(seen, "lamps_reach", lampReach(d.filmed, middle.depth_m)));
  if (fight && lampPlan !== "daylight_leads") steps.push(step(seen, "mixing_zone", fight));
  return steps;
}

/** Where neither light leads, in a dive in which one does elsewhere. */
function fightIn({ lampPlan, mixed, scene }: Decisions): { from_m: number; to_m: number } | undefined {
  const fight = mixed.zones.find(({ verdict }) => verdict === "lights_fight");
  if (!fight || mixed.zones.length < 2 || lampPlan === "lamps_with_filter") return undefined;
  const [from_m, to_m] = [handDepth(fight.min_depth_m, scene), handDepth(fight.max_depth_m, scene)];
  return to_m > from_m ? { from_m, to_m } : undefined;
}

const spoiling = (middle: MixedLightAtDepth): { haze?: { percent: number } } =>
  isHazeLit(middle) ? { haze: { percent: middle.lit_haze_percent?.likely ?? 0 } } : {};

/** On among daylight, and what that is worth. */
function withDaylight({ middle, lampFilter }: Decisions, lampWays: LampWays): DiveStep[] {
  const both = middle.ways_out.find(({ way }) => way === "balance_to_both");
  return [
    step(seen, "lamps_with_daylight", {
      with_e: lampWays.ways[0].error_delta_e00,
      without_e: lampWays.off_error_delta_e00,
      unlit: both?.split_left_delta_e00 ?? 0,
      ...(lampFilter ? { unused: ownedName(lampFilter.item) } : {}),
      ...spoiling(middle),
    }),
  ];
}

/** Where lamps that stay off may go on after all: where they lead, with nothing on the lens. */
function lampsFrom({ scene, mixed, filter }: Decisions): DiveStep[] {
  const leading = mixed.zones.find(({ verdict }) => verdict === "lamps_lead");
  if (!leading || filter.filter_kind !== "none") return [];
  const depth_m = handDepth(leading.min_depth_m, scene);
  return [step({ ...at, depth_m }, "lamps_from", { depth_m })];
}
