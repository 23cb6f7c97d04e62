import { multiply } from "@sunfathom/optics";
import { cardLevelPercent, GREY_CARD, WHITE_CARD } from "../camera/card-level.js";
import type { Conditions } from "../light/conditions.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { lampLightAt, towardsCamera, underwater } from "../light/underwater.js";
import type { BalanceMethod, OnCard } from "../result/white-balance.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { cardLight } from "./avoidable-cast.js";
import { standInsIn } from "./stand-ins.js";

/**
 * What a balance on a card comes with: what stands in for one where the first is made, and where it lies on a histogram. A plan
 * has no use for it.
 */
export function onCard(conditions: Conditions, method: BalanceMethod): OnCard {
  if (method !== "card" && method !== "card_at_lamp_distance") return {};
  const { scene } = conditions;
  const world = underwater(conditions, NOMINAL);
  const filter = lensFilterOf(scene, NOMINAL);
  const light =
    method === "card_at_lamp_distance"
      ? multiply(multiply(lampLightAt(world), towardsCamera(world)), filter)
      : cardLight(world, filter, scene.min_depth_m);
  const [white, grey] = [cardLevelPercent(scene, WHITE_CARD), cardLevelPercent(scene, GREY_CARD)];
  return {
    stand_ins: standInsIn(scene, light),
    ...(white === undefined || grey === undefined
      ? {}
      : { white_card_level_percent: white, grey_card_level_percent: grey }),
  };
}
