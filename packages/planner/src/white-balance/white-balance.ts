import type { WhiteBalanceAnswer } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { cardNotesOf } from "./card-notes.js";
import { decideBalance } from "./decide.js";
import { procedureOf } from "./procedure.js";

/**
 * How to balance white over the range: on a card, at which depths, with which gains, and whether the camera reaches them.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function whiteBalance(scene: Scene): WhiteBalanceAnswer {
  const decision = decideBalance(scene);
  return { ...decision, procedure: procedureOf(scene, decision), card_notes: cardNotesOf(decision) };
}
