import type { Reason } from "../codes/coded.js";
import { lastOf } from "../lists/non-empty.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { AnswerParts } from "../result/common.js";
import type { DiveAdviceAnswer, DiveStep, PlanReasons, Remember } from "../result/dive-advice.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { circumstancesOf, isBlueMissing } from "./circumstances.js";
import { type Decisions, decisionsFor } from "./decisions.js";
import { startOfPlan } from "./exposure-plan.js";
import { whyLeftAshore } from "./left-ashore.js";
import { balancesDown, balancesUp } from "./legs.js";
import { errorWith } from "./mounted.js";
import { planCautions } from "./plan-cautions.js";
import { stepsOf } from "./steps/steps.js";
import { summaryOf } from "./summary.js";
import { takeFrom } from "./take.js";

/** A reason with its numbers as answers round them: legs of a dive say the same where nobody could tell them apart. */
const asTold = (reason: Reason<PlanReasons>): string =>
  JSON.stringify(reason, (_, value) => (typeof value === "number" ? value.toFixed(4) : value));

/** The first of each, in order. */
function firstOfEach(all: readonly Reason<PlanReasons>[]): Reason<PlanReasons>[] {
  const told = all.map(asTold);
  return all.filter((_, i) => told.indexOf(told[i] ?? "") === i);
}

/** From here on a cast is seen at a glance: a judgement. */
const SEEN_DELTA_E00 = VISIBLE_SPLIT_DELTA_E00;
/** That a filter serves all but so little of the range changes nothing that is done. */
const WORTH_TELLING_M = 1;

/** Where legs change the filter, that one of them needs one balance says nothing. */
function isIdle({ legs, scene }: Decisions, { code, parameters }: Reason<PlanReasons>): boolean {
  const { method } = legs[0].balance;
  // The plan's own steps say when, with the hands that a diver has.
  if (code === "balance_again") return true;
  if (code === "only_lamps_would_help") return scene.lamps.length > 0;
  // Nobody who has a card asks for kelvin.
  if (code === "cct_without_meaning" || code === "cct_beyond_locus") return method !== "kelvin";
  if (code === "balance_falls_short") {
    // Where the filter is changed, or above, the next leg has a balance of its own.
    const isElsewhere = legs.length > 1 && parameters.depth_m <= lastOf(legs).scene.min_depth_m;
    // In lamp light it is the same at any depth: what is slight needs no word.
    return isElsewhere || (method === "card_at_lamp_distance" && parameters.cast < SEEN_DELTA_E00);
  }
  if (code === "serves_part_of_range") {
    const left_m = [parameters.from_m - scene.min_depth_m, scene.max_depth_m - parameters.to_m];
    return left_m.every((m) => m < WORTH_TELLING_M);
  }
  return legs.length > 1 && code === "one_balance_serves";
}

/** Reasons that a step gives as its own. */
const SAID_BY: Readonly<Record<string, readonly string[]>> = {
  change_at_depth: ["filter_in", "filter_out"],
  only_lamps_would_help: ["lamps_would_help"],
  filter_earns: ["mount_filter", "keep_filter", "carry_filter"],
  densities_as_good: ["mount_filter", "carry_filter"],
  balance_again: ["balance_again"],
  lamps_are_the_only_light: ["no_filter_for_lamps"],
  no_filter_earns: ["no_filter", "no_filter_for_lamps"],
  kelvin_leaves_the_water: ["balance_on_card_in_lamp_light"],
};

/** Whether a step, or a close call, says the same. */
function isSaid(code: string, steps: readonly DiveStep[], d: Decisions): boolean {
  const { closeCalls, scene } = d;
  // Where video lights bring red, or blue is what is missing, that is not what a filter is asked for.
  if (code === "filter_adds_no_red") return d.filmed.lamps.length > 0 || isBlueMissing(d);
  if (code === "near_tie") return closeCalls.some((call) => call.code === "close_filter");
  // A card at the only depth says that the edit takes out the rest.
  const isOneDepth = scene.min_depth_m === scene.max_depth_m;
  // A card is set there, and the step says how it comes out.
  if (code === "balance_in_reach" && isOneDepth) return true;
  if (code === "balance_falls_short" && isOneDepth && steps.some((step) => step.code === "balance_on_card"))
    return true;
  // A step that says how far down a balance serves says that it does.
  if (code === "one_balance_serves" && steps.some(({ parameters }) => "holds" in parameters)) return true;
  return steps.some((step) => SAID_BY[code]?.includes(step.code));
}

/** Filters of the kit that no step speaks of. */
function unusedIn({ scene, filter, exposure, lampPlan, lampFilter }: Decisions): KitItem[] {
  const onLamps = lampPlan === "lamps_with_filter" || lampPlan === "lamps_with_daylight";
  const used = [filter.filter_id, exposure.neutral?.id, onLamps ? lampFilter?.item.id : undefined];
  return (scene.kit ?? []).filter(({ item, id }) => item !== "lamp" && !used.includes(id));
}

/** What to remember before all else. */
const remembered = ({ filter, legs, exposure }: Decisions): Remember => ({
  ...(filter.filter_density === undefined ? {} : { filter_density: filter.filter_density }),
  first_balance_depth_m: legs[0].first_m,
  starting_iso: startOfPlan(exposure).setting.iso,
});

function balanceTo({ legs, lampPlan }: Decisions): DiveAdviceAnswer["balance_to"] {
  if (lampPlan === "lamps_with_daylight") return "daylight_and_lamps";
  return legs[0].balance.method === "card_at_lamp_distance" ? "lamps" : "daylight";
}

/**
 * The whole job for one dive: filter, exposure, balance and lamps, as one plan in order of action, each line with its number and
 * its reason. On light and colour only: this plans no dive.
 * @param mountable how many filters the lens can carry, one behind the other
 * @throws SceneProblem without any light, or for a sun or water outside the model's domain.
 */
export function diveAdvice(scene: Scene, mountable = Infinity): DiveAdviceAnswer {
  const d = decisionsFor(scene, mountable);
  const { filter, mixed, legs } = d;
  const answers: AnswerParts<PlanReasons>[] = [filter, ...legs.map(({ balance }) => balance)];
  const steps = stepsOf(d);
  const unused = unusedIn(d);
  const reasons = [
    ...firstOfEach(answers.flatMap((answer) => answer.reasons)).filter(
      (reason) => !isIdle(d, reason) && !isSaid(reason.code, steps, d),
    ),
    ...circumstancesOf(d),
    ...(unused.length > 0 ? whyLeftAshore(d, unused, (item) => errorWith(d.filmed, item)) : []),
  ];
  // Where lamps make the light no filter is in question: what is unsure is how bright they are.
  const { uncertainty: doubts } = d.lampPlan === "lamps_only" ? legs[0].exposure : filter;
  // Of a filter that stays ashore, a diver has no doubt.
  const uncertainty = filter.filter_kind === "none" ? doubts.filter(({ code }) => !isOfFilter(code)) : doubts;
  return {
    summary: summaryOf(d),
    filter_kind: filter.filter_kind,
    ...(filter.filter_density === undefined ? {} : { filter_density: filter.filter_density }),
    ...(filter.filter_id === undefined ? {} : { filter_id: filter.filter_id }),
    filter_verdict: filter.verdict,
    lamp_plan: d.lampPlan,
    mixed_light_verdict: d.middle.verdict,
    balance_to: balanceTo(d),
    balance_depths_descending_m: balancesDown(legs),
    balance_depths_ascending_m: balancesUp(legs),
    remember: remembered(d),
    close_calls: d.closeCalls,
    steps,
    take: takeFrom(d),
    reasons,
    cautions: planCautions(d, { steps, reasons, uncertainty }),
    uncertainty,
    sources: [
      ...new Set(
        [...answers, mixed, ...legs.map(({ exposure }) => exposure)].flatMap(({ sources }) => sources),
      ),
    ],
  };
}

const isOfFilter = (code: string): boolean => code === "filter_edge" || code === "filter_width";
