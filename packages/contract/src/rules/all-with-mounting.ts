import { sceneRules } from "./all.js";
import { mountedOnRules, mountingKinds } from "./mounting-in-scene.js";
import type { Rule } from "./rule.js";

/** The rules that are a scene's own. */
export const ownSceneRules = [...sceneRules, mountingKinds] as const;

/** Every rule between fields of a scene, also where it says what a filter is mounted on. They hold on every path, after its schema. */
export const allSceneRules: readonly Rule[] = [...sceneRules, ...mountedOnRules];
