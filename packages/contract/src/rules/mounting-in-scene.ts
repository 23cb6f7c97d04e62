import { mountingInSceneNames } from "../scene/mounting/names-in-scene.js";
import type { MountingScene } from "../scene/mounting/scene.js";
import type { Scene } from "../scene/scene.js";
import { mountingRules } from "./mounting.js";
import { broken, type Rule, type RuleOf } from "./rule.js";

const kinds = ["port_kind", "lens_kind"] as const;

/** What a filter is mounted on begins with the kinds of port and lens. */
export const mountingKinds: RuleOf<"mounting_kinds", { missing: string }> = {
  code: "mounting_kinds",
  violations: (scene) => {
    const field = mountingInSceneNames.find((name) => scene[name] !== undefined);
    if (field === undefined) return [];
    return kinds.flatMap((missing) =>
      scene[missing] === undefined ? [broken(`/${field}`, { missing })] : [],
    );
  },
};

/** The rules of a mounting scene, in a scene that says what a filter is mounted on. */
const mountingRulesInScene: readonly Rule[] = mountingRules.map((rule) => ({
  code: rule.code,
  violations: (scene: Scene) =>
    kinds.every((kind) => scene[kind] !== undefined) ? rule.violations(scene as MountingScene) : [],
}));

/** All that is asked of a scene that says what a filter is mounted on. */
export const mountedOnRules: readonly Rule[] = [mountingKinds, ...mountingRulesInScene];
