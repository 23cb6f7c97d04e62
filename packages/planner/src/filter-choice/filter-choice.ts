import { cautionsFor, filterAdvice } from "../cautions/cautions-for.js";
import { depthsOf } from "../light/depths.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { Scene } from "../scene/scene.js";
import { candidatesFor } from "./candidates.js";
import { chooseAmong } from "./choose.js";
import { finishOf } from "./merits.js";
import { wantedWithMoreLight } from "./more-light.js";
import { underOtherFinishes } from "./other-finishes.js";
import { askAll, rankingOf } from "./ranking.js";
import { filterReasons } from "./reasons.js";

/**
 * Which filter to mount for a range of depths: none, red or magenta, and how dense, by the colour error that is left (see
 * `meritOf`), searched on a stated grid of kinds and densities, or among the filters of the scene's kit, over seven depths.
 * @throws SceneProblem without any light, or for a sun or water outside the model's domain.
 */
export function filterChoice(scene: Scene): FilterChoiceAnswer {
  const choice = chooseAmong(scene, candidatesFor(scene), scene.kit && askAll);
  const { answer, conditions, search, uncertainty, sources } = choice;
  const depths = depthsOf(scene);
  const { decision, redIsGone, changeable } = search;
  const [advised, runnerUp] = [decision.advised.candidate, decision.runnerUp.candidate];
  const otherwise = underOtherFinishes(conditions, depths, { advised, runnerUp, redIsGone, changeable });
  const moreLight = wantedWithMoreLight(conditions, depths, search);
  const reasons = [...filterReasons({ ...choice, moreLight, otherwise }), ...sunReasons(conditions)];
  const advises = answer.filter_kind === "none" ? [] : [filterAdvice(scene)];
  return {
    ...answer,
    finish: finishOf(scene),
    ...(scene.kit ? { ranking: rankingOf(choice, depths) } : {}),
    other_finishes: otherwise.map(({ answer }) => answer),
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty, advises }),
    uncertainty,
    sources,
  };
}
