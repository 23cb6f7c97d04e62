import {
  type MountingExampleName,
  mountingExamples,
  mountingRules,
  type MountingScene as WireMountingScene,
} from "@sunfathom/contract";
import type { FilterMountingScene } from "@sunfathom/planner";
import { canonicalMounting } from "./canonical-mounting.js";
import type { SceneKind } from "./scene-kind.js";

/** Camera, port, filter and rings. */
export const mountingScene: SceneKind<WireMountingScene, FilterMountingScene, MountingExampleName> = {
  component: "MountingScene",
  rules: mountingRules,
  besideLists: [],
  examples: mountingExamples,
  canonical: canonicalMounting,
  asAsked: (field) => field,
};
