import { cautionsFor, cautionsIn } from "../cautions/cautions-for.js";
import type { Reason } from "../codes/coded.js";
import type { AnswerParts } from "../result/common.js";
import type { DiveAdviceAnswer, PlanReasons, Remember } from "../result/dive-advice.js";
import type { Scene } from "../scene/scene.js";
import { type Decisions, decisionsFor } from "./decisions.js";
import { startOfPlan } from "./exposure-plan.js";
import { balancesDown, balancesUp } from "./legs.js";
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

/** Where legs change the filter, that one of them needs one balance says nothing. */
const isIdle = ({ legs }: Decisions, code: string): boolean =>
  legs.length > 1 && code === "one_balance_serves";

/** What to remember before all else. */
const remembered = ({ filter, legs, exposure }: Decisions): Remember => ({
  ...(filter.filter_density === undefined ? {} : { filter_density: filter.filter_density }),
  first_balance_depth_m: legs[0].top_m,
  starting_iso: startOfPlan(exposure).setting.iso,
});

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
  const reasons = firstOfEach(answers.flatMap((answer) => answer.reasons)).filter(
    ({ code }) => !isIdle(d, code),
  );
  const steps = stepsOf(d);
  // Where lamps make the light no filter is in question: what is unsure is how bright they are.
  const { uncertainty } = d.lampPlan === "lamps_only" ? legs[0].exposure : filter;
  const advised = cautionsFor(scene, { reasons: steps, uncertainty });
  return {
    summary: summaryOf(d),
    filter_kind: filter.filter_kind,
    ...(filter.filter_density === undefined ? {} : { filter_density: filter.filter_density }),
    ...(filter.filter_id === undefined ? {} : { filter_id: filter.filter_id }),
    filter_verdict: filter.verdict,
    lamp_plan: d.lampPlan,
    mixed_light_verdict: d.middle.verdict,
    balance_to: legs[0].balance.method === "card_at_lamp_distance" ? "lamps" : "daylight",
    balance_depths_descending_m: balancesDown(legs),
    balance_depths_ascending_m: balancesUp(legs),
    remember: remembered(d),
    close_calls: d.closeCalls,
    steps,
    take: takeFrom(d),
    reasons,
    cautions: cautionsIn(
      [...advised, ...answers.flatMap(({ cautions }) => cautions)].map(({ code }) => code),
    ),
    uncertainty,
    sources: [
      ...new Set(
        [...answers, mixed, ...legs.map(({ exposure }) => exposure)].flatMap(({ sources }) => sources),
      ),
    ],
  };
}
