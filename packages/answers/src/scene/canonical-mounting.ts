import {
  mountingDefaults,
  type ResolvedMountingScene,
  resolvedMountingSceneForm,
  type MountingScene as WireMountingScene,
} from "@sunfathom/contract";
import type { FilterMountingScene } from "@sunfathom/planner";
import { assumedOfMount } from "./assumed-of-mount.js";
import { assuming, oneForm } from "./one-form.js";
import type { Canonical, Echo } from "./scene-kind.js";

const inOneForm = oneForm<WireMountingScene>({
  form: resolvedMountingSceneForm,
  defaults: mountingDefaults,
  own: { assumed: () => ({}) },
});

/**
 * The one form of a valid mounting scene.
 * @param wire a scene that has passed its schema and the rules between its fields
 */
export function canonicalMounting(wire: WireMountingScene): Canonical<FilterMountingScene> {
  const assumed: string[] = [];
  // That none are on hand is no assumption.
  const rings = wire.rings ?? [];
  const scene: FilterMountingScene = inOneForm(
    { ...wire, rings },
    assuming(assumed),
  ) as Echo<ResolvedMountingScene>;
  return { scene, assumed: [...assumed, ...assumedOfMount(scene)] };
}
