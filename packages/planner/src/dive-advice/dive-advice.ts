import type { AnswerParts, Caution, Reason } from "../result/common.js";
import type { DiveAdviceAnswer } from "../result/dive-advice.js";
import type { Scene } from "../scene/scene.js";
import { decisionsFor } from "./decisions.js";
import { stepsOf } from "./steps.js";
import { summaryOf } from "./summary.js";
import { takeFrom } from "./take.js";

/** The first of each code, in order. */
const firstOfEach = <T extends { code: string }>(all: readonly T[]): T[] =>
  all.filter(({ code }, i) => all.findIndex((other) => other.code === code) === i);

/**
 * The whole job for one dive: filter, exposure, balance and lamps, as one plan in order of action, each line with its number and
 * its reason. On light and colour only: this plans no dive.
 * @throws SceneProblem without any light, or for a sun or water outside the model's domain.
 */
export function diveAdvice(scene: Scene): DiveAdviceAnswer {
  const d = decisionsFor(scene);
  const answers: AnswerParts[] = [d.filter, d.mixed, d.balance, d.exposure];
  return {
    summary: summaryOf(d),
    filter_kind: d.filter.filter_kind,
    ...(d.filter.filter_density === undefined ? {} : { filter_density: d.filter.filter_density }),
    ...(d.filter.filter_id === undefined ? {} : { filter_id: d.filter.filter_id }),
    filter_verdict: d.filter.verdict,
    lamp_plan: d.lampPlan,
    mixed_light_verdict: d.middle.verdict,
    balance_to: d.balance.method === "card_at_lamp_distance" ? "lamps" : "daylight",
    balance_depths_descending_m: d.balance.balance_depths_descending_m,
    balance_depths_ascending_m: d.balance.balance_depths_ascending_m,
    steps: stepsOf(d),
    take: takeFrom(d),
    reasons: firstOfEach<Reason>(answers.flatMap(({ reasons }) => reasons)),
    cautions: firstOfEach<Caution>(answers.flatMap(({ cautions }) => cautions)),
    // Where lamps make the light no filter is in question: what is unsure is how bright they are.
    uncertainty: d.lampPlan === "lamps_only" ? d.exposure.uncertainty : d.filter.uncertainty,
    sources: [...new Set(answers.flatMap(({ sources }) => sources))],
  };
}
