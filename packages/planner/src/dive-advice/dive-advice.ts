import { cautionsIn } from "../cautions/cautions-for.js";
import type { Reason } from "../codes/coded.js";
import type { AnswerParts } from "../result/common.js";
import type { DiveAdviceAnswer, PlanReasons } from "../result/dive-advice.js";
import type { Scene } from "../scene/scene.js";
import { type Decisions, decisionsFor } from "./decisions.js";
import { balancesDown, balancesUp, startOf } from "./legs.js";
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

/**
 * Reasons that say nothing in a plan: that there is nothing to mix and, where legs change the filter, that a leg needs one
 * balance. Too much light is said once, as metered, and not again for a white card that just fills the scale.
 */
const idleReasons = ({ legs }: Decisions): string[] => [
  "daylight_only",
  ...(legs.length > 1 ? ["one_balance_serves"] : []),
  ...(startOf(legs).verdict === "too_bright" ? ["light_is_too_much"] : []),
];

/**
 * The whole job for one dive: filter, exposure, balance and lamps, as one plan in order of action, each line with its number and
 * its reason. On light and colour only: this plans no dive.
 * @throws SceneProblem without any light, or for a sun or water outside the model's domain.
 */
export function diveAdvice(scene: Scene): DiveAdviceAnswer {
  const d = decisionsFor(scene);
  const { filter } = d;
  const answers: AnswerParts<PlanReasons>[] = [
    filter,
    d.mixed,
    ...d.legs.flatMap((leg) => [leg.balance, leg.exposure]),
  ];
  const reasons = firstOfEach(answers.flatMap((answer) => answer.reasons));
  return {
    summary: summaryOf(d),
    filter_kind: filter.filter_kind,
    ...(filter.filter_density === undefined ? {} : { filter_density: filter.filter_density }),
    ...(filter.filter_id === undefined ? {} : { filter_id: filter.filter_id }),
    filter_verdict: filter.verdict,
    lamp_plan: d.lampPlan,
    mixed_light_verdict: d.middle.verdict,
    balance_to: d.legs[0].balance.method === "card_at_lamp_distance" ? "lamps" : "daylight",
    balance_depths_descending_m: balancesDown(d.legs),
    balance_depths_ascending_m: balancesUp(d.legs),
    steps: stepsOf(d),
    take: takeFrom(d),
    reasons: reasons.filter(({ code }) => !idleReasons(d).includes(code)),
    cautions: cautionsIn(answers.flatMap(({ cautions }) => cautions.map(({ code }) => code))),
    // Where lamps make the light no filter is in question: what is unsure is how bright they are.
    uncertainty: d.lampPlan === "lamps_only" ? d.legs[0].exposure.uncertainty : filter.uncertainty,
    sources: [...new Set(answers.flatMap(({ sources }) => sources))],
  };
}
