import { add, type Spectrum } from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { codesOf } from "../codes/coded.js";
import type { CloseCalls, LampPlan } from "../codes/summary.js";
import { type candidatesFor, named } from "../filter-choice/candidates.js";
import { chooseAmong } from "../filter-choice/choose.js";
import { conditionsOf } from "../light/conditions.js";
import { lampLightAt, underwater } from "../light/underwater.js";
import { lightsAt, VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { causesOf } from "../uncertainty/causes.js";
import { normalCdf } from "../uncertainty/normal.js";
import { propagate, sigmaOf } from "../uncertainty/propagate.js";
import { CLOSE_FROM, type CloseCall } from "./close-calls.js";
import { planLamps, withLampPlan } from "./lamp-plan.js";
import { type OwnedLampFilter, transmittanceOf } from "./owned-lamp-filter.js";

const say = codesOf<CloseCalls>();

/** Splits that decide what is done with the lamps, each against what is visible. */
interface Splits {
  /** What daylight adds to lamps that are balanced to. */
  leading: number;
  /** What lamps add to daylight that is balanced to. */
  hardly: number;
  /** The same with the owned filter on each lamp. */
  filtered: number;
}

/** What would be done with the lamps were one split on the other side of what is visible. */
function otherPlan(
  plan: LampPlan,
  split: keyof Splits,
  owned: OwnedLampFilter | undefined,
): LampPlan | undefined {
  const fight = planLamps({ verdict: "lights_fight" }, owned);
  if (split === "leading") return plan === "lamps_lead" ? fight : "lamps_lead";
  if (plan === "lamps_lead") return undefined;
  if (split === "hardly") return plan === "daylight_leads" ? fight : "daylight_leads";
  if (plan === "daylight_leads" || !owned) return undefined;
  return plan === "lamps_off" ? "lamps_with_filter" : "lamps_off";
}

/** What else could be done with the lamps, where the light may as well ask for it: they are not the only light. */
export function closeLampCall(
  { scene, candidates }: { scene: Scene; candidates: typeof candidatesFor },
  { depth_m }: MixedLightAtDepth,
  plan: LampPlan,
  owned: OwnedLampFilter | undefined,
): CloseCall[] {
  const conditions = conditionsOf(scene);
  const filter = owned && transmittanceOf(owned.item);
  const propagated = propagate((nuisance): Splits => {
    const world = underwater(conditions, nuisance);
    const { daylight, lamps, profile } = lightsAt(world, depth_m);
    const split = (to: Spectrum, light: Spectrum) => castBetween(profile, to, add(daylight, light));
    return {
      leading: split(lamps, lamps),
      hardly: split(daylight, lamps),
      filtered: filter ? split(daylight, lampLightAt(world, { filter })) : 0,
    };
  }, causesOf(conditions));
  let closest: { other: LampPlan; probability: number } | undefined;
  for (const split of ["leading", "hardly", "filtered"] as const) {
    const other = otherPlan(plan, split, owned);
    if (!other) continue;
    const sigma = Math.max(
      1e-6,
      sigmaOf(propagated, (splits) => splits[split]),
    );
    const probability = normalCdf(-Math.abs(propagated.nominal[split] - VISIBLE_SPLIT_DELTA_E00) / sigma);
    if (probability >= Math.max(CLOSE_FROM, closest?.probability ?? 0)) closest = { other, probability };
  }
  if (!closest) return [];
  const lit = withLampPlan(scene, closest.other, owned);
  const { filter_kind: kind, filter_density } = chooseAmong(lit, candidates(lit)).answer;
  const density = filter_density === undefined ? {} : { density: filter_density };
  return [
    say("close_lamps", {
      plan: closest.other,
      filter: named({ kind, ...density }),
      probability: closest.probability,
    }),
  ];
}
