/** What is done with lamps where no light leads: whatever leaves the least colour error in the whole picture. */
import type { LampPlan } from "../codes/summary.js";
import type { Candidate, candidatesFor } from "../filter-choice/candidates.js";
import { searchFilters } from "../filter-choice/search.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { itemAt, type NonEmpty } from "../lists/non-empty.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, filterCausesOf } from "../uncertainty/causes.js";
import { normalCdf } from "../uncertainty/normal.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { propagate, sigmaOf } from "../uncertainty/propagate.js";
import { frameErrorAt } from "./frame-error.js";
import { withLampPlan } from "./lamp-plan.js";
import type { OwnedLampFilter } from "./owned-lamp-filter.js";

/** Plans that are there where the lights fight. */
type FightPlan = Extract<LampPlan, "lamps_off" | "lamps_with_filter" | "lamps_with_daylight">;

export interface LampOption {
  plan: FightPlan;
  conditions: Conditions;
  depth_m: number;
  /** What is best on the lens with it. */
  lens: Candidate;
  /** Colour error of the whole picture, CIEDE2000. */
  error_delta_e00: number;
}

/** What an owned filter leaves is too little to be seen at a glance. */
export const matches = (owned: OwnedLampFilter | undefined): owned is OwnedLampFilter =>
  owned !== undefined && owned.split_left_delta_e00 < VISIBLE_SPLIT_DELTA_E00;

/** What could be done with the lamps. */
export interface LampWays {
  /** The least error first. */
  ways: NonEmpty<LampOption>;
  /** With the lamps off, whether or not that is one of the ways. */
  off_error_delta_e00: number;
}

/**
 * The ways with the lamps at a depth. Where an owned filter matches them to daylight they are on behind it rather than off: the light
 * is then of one colour, and they fill shadows, of which no figure here knows.
 */
export function lampWaysAt(
  scene: Scene,
  candidates: typeof candidatesFor,
  depth_m: number,
  owned: OwnedLampFilter | undefined,
): LampWays {
  const optionOf = (plan: FightPlan): LampOption => {
    const lit = withLampPlan(scene, plan, owned);
    const conditions = conditionsOf(lit);
    const search = searchFilters(conditions, [depth_m], { changeable: false, candidates: candidates(lit) });
    const lens = search.decision.advised.candidate;
    const error_delta_e00 = frameErrorAt(conditions, NOMINAL, depth_m, lens);
    return { plan, conditions, depth_m, lens, error_delta_e00 };
  };
  const off = optionOf("lamps_off");
  const byDay = matches(owned) ? optionOf("lamps_with_filter") : off;
  const both = optionOf("lamps_with_daylight");
  const ways: NonEmpty<LampOption> =
    both.error_delta_e00 < byDay.error_delta_e00 ? [both, byDay] : [byDay, both];
  return { ways, off_error_delta_e00: off.error_delta_e00 };
}

/** How likely the second way is the better one. */
export function nextIsBetter(options: Readonly<NonEmpty<LampOption>>): number {
  const [chosen, other] = [options[0], itemAt(options, 1)];
  // Of the conditions with the lamps on, which have the causes of the others as well.
  const { conditions } = chosen.plan === "lamps_off" ? other : chosen;
  const propagated = propagate(
    (nuisance) => {
      const error = ({ conditions: lit, depth_m, lens }: LampOption) =>
        frameErrorAt(lit, nuisance, depth_m, lens);
      return { gain: error(other) - error(chosen) };
    },
    [...causesOf(conditions), ...filterCausesOf(conditions.scene)],
  );
  const sigma = sigmaOf(propagated, ({ gain }) => gain);
  return normalCdf(-propagated.nominal.gain / Math.max(1e-6, sigma));
}
