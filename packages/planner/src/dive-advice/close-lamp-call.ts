import { add, type Spectrum } from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { codesOf } from "../codes/coded.js";
import type { CloseCalls, LampPlan } from "../codes/summary.js";
import { type candidatesFor, named } from "../filter-choice/candidates.js";
import { chooseAmong } from "../filter-choice/choose.js";
import { conditionsOf } from "../light/conditions.js";
import { lampLightAt, underwater } from "../light/underwater.js";
import { itemAt, type NonEmpty } from "../lists/non-empty.js";
import { lightsAt, VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { causesOf } from "../uncertainty/causes.js";
import { normalCdf } from "../uncertainty/normal.js";
import { propagate, sigmaOf } from "../uncertainty/propagate.js";
import { CLOSE_FROM, type CloseCall } from "./close-calls.js";
import { type LampOption, nextIsBetter } from "./lamp-choice.js";
import { withLampPlan } from "./lamp-plan.js";
import { type OwnedLampFilter, transmittanceOf } from "./owned-lamp-filter.js";

/** Lamps that daylight is there with. */
interface LampsToPlan {
  scene: Scene;
  candidates: typeof candidatesFor;
  /** What could be done with them where no light led, the best first. */
  ways: () => Readonly<NonEmpty<LampOption>>;
}

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
  { ways, owned }: { ways: () => Readonly<NonEmpty<LampOption>>; owned: OwnedLampFilter | undefined },
): LampPlan | undefined {
  if (split === "leading") return plan === "lamps_lead" ? ways()[0].plan : "lamps_lead";
  if (plan === "lamps_lead") return undefined;
  if (split === "hardly") return plan === "daylight_leads" ? ways()[0].plan : "daylight_leads";
  if (plan === "daylight_leads" || !owned) return undefined;
  if (plan === "lamps_with_filter") return "lamps_off";
  return plan === "lamps_off" ? "lamps_with_filter" : undefined;
}

/** What else could be done with the lamps, where the light may as well ask for it: they are not the only light. */
export function closeLampCall(
  { scene, candidates, ways }: LampsToPlan,
  { depth_m, verdict }: MixedLightAtDepth,
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
  const consider = (probability: number, otherOf: () => LampPlan | undefined): void => {
    if (probability < Math.max(CLOSE_FROM, closest?.probability ?? 0)) return;
    const other = otherOf();
    if (other && other !== plan) closest = { other, probability };
  };
  for (const split of ["leading", "hardly", "filtered"] as const) {
    const sigma = sigmaOf(propagated, (splits) => splits[split]);
    const short = Math.abs(propagated.nominal[split] - VISIBLE_SPLIT_DELTA_E00);
    consider(normalCdf(-short / Math.max(1e-6, sigma)), () => otherPlan(plan, split, { ways, owned }));
  }
  if (verdict === "lights_fight") consider(nextIsBetter(ways()), () => itemAt(ways(), 1).plan);
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
