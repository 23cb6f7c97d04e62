import {
  mountingRules,
  mountingSceneSchema,
  type MountingScene as WireMountingScene,
} from "@sunfathom/contract";
import type { FilterMountingScene } from "@sunfathom/planner";
import { canonicalMounting } from "./canonical-mounting.js";
import type { SceneKind } from "./scene-kind.js";

/** Camera, port, filter and rings. */
export const mountingScene: SceneKind<WireMountingScene, FilterMountingScene> = {
  component: "MountingScene",
  schema: mountingSceneSchema,
  rules: mountingRules,
  besideLists: [],
  canonical: canonicalMounting,
  asAsked: (field) => field,
};
