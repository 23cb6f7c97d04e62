import {
  fieldsBesideLists,
  flatLampNames,
  sceneRules,
  sceneSchema,
  type Scene as WireScene,
} from "@sunfathom/contract";
import type { Scene } from "@sunfathom/planner";
import { canonicalScene } from "./canonical.js";
import type { SceneKind } from "./scene-kind.js";

/** Water, daylight, dive, camera, filter and lamps. */
export const lightScene: SceneKind<WireScene, Scene> = {
  component: "Scene",
  schema: sceneSchema,
  rules: sceneRules,
  besideLists: fieldsBesideLists,
  canonical: canonicalScene,
  asAsked: (field, asked) => {
    if (field === "max_depth_m" && asked.depth_m !== undefined) return "depth_m";
    if (field !== "lamps" || asked.lamps !== undefined) return field;
    return flatLampNames.find((name) => asked[name] !== undefined) ?? field;
  },
};
