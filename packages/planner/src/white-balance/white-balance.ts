import { conditionsOf } from "../light/conditions.js";
import type { WhiteBalanceAnswer } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { cardNotesOf } from "./card-notes.js";
import { decideBalance } from "./decide.js";
import { onCard } from "./on-card.js";
import { procedureOf } from "./procedure.js";

/**
 * How to balance white over the range: on a card, at which depths, with which gains, and whether the camera reaches them.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function whiteBalance(scene: Scene): WhiteBalanceAnswer {
  const conditions = conditionsOf(scene);
  const decision = decideBalance(scene, conditions);
  const card = onCard(conditions, decision.method);
  return {
    ...decision,
    ...card,
    procedure: procedureOf(scene, decision),
    card_notes: cardNotesOf(decision, card),
  };
}
