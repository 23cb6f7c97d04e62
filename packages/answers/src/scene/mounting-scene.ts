import {
  mountingRules,
  mountingSceneSchema,
  type MountingScene as WireMountingScene,
} from "@sunfathom/contract";
import type { FilterMountingScene } from "@sunfathom/planner";
import { mountingRuleTexts, outsideMounting } from "@sunfathom/words";
import { canonicalMounting } from "./canonical-mounting.js";
import type { SceneKind } from "./scene-kind.js";

/** Camera, port, filter and rings. */
export const mountingScene: SceneKind<WireMountingScene, FilterMountingScene> = {
  component: "MountingScene",
  schema: mountingSceneSchema,
  rules: mountingRules,
  ruleTexts: mountingRuleTexts,
  besideLists: [],
  canonical: canonicalMounting,
  outside: outsideMounting,
  asAsked: (field) => field,
};
