import {
  fieldsBesideLists,
  flatLampNames,
  type JsonSchema,
  plainResolvedSceneForm,
  plainSceneSchema,
  type Rule,
  sceneRules,
  type Scene as WireScene,
} from "@sunfathom/contract";
import type { Scene } from "@sunfathom/planner";
import { canonicalScene, canonicalWith, type Further } from "./canonical.js";
import type { SceneKind } from "./scene-kind.js";

/** Water, daylight, dive, camera, filter and lamps: all but what a filter is mounted on. */
export const lightScene: SceneKind<WireScene, Scene> = {
  component: "Scene",
  schema: plainSceneSchema,
  rules: sceneRules,
  besideLists: fieldsBesideLists,
  canonical: canonicalScene,
  asAsked: (field, asked) => {
    if (field === "max_depth_m" && asked.depth_m !== undefined) return "depth_m";
    if (field !== "lamps" || asked.lamps !== undefined) return field;
    return flatLampNames.find((name) => asked[name] !== undefined) ?? field;
  },
};

/** What scenes say beyond the plain ones, and what is asked of that. */
export interface FurtherScene extends Further {
  properties: Readonly<Record<string, JsonSchema>>;
  rules: readonly Rule[];
}

/** Scenes that say more than the plain ones. */
export const lightSceneWith = (further: FurtherScene): SceneKind<WireScene, Scene> => ({
  ...lightScene,
  schema: { ...plainSceneSchema, properties: { ...plainSceneSchema.properties, ...further.properties } },
  rules: [...sceneRules, ...further.rules],
  canonical: canonicalWith(further),
  resolved: { ...plainResolvedSceneForm, ...further.form },
});
