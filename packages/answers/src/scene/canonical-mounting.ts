import {
  mountingDefaults,
  type ResolvedMountingScene,
  resolvedMountingSceneForm,
  type MountingScene as WireMountingScene,
} from "@sunfathom/contract";
import type { FilterMountingScene } from "@sunfathom/planner";
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
  // The answer says what it takes these to be, and how unsure that is: no value of theirs would give the same answer.
  const { sensor_diagonal_mm, entrance_pupil_distance_mm, focal_length_mm, field_of_view_deg } = scene;
  const isFormatKnown = sensor_diagonal_mm ?? (focal_length_mm && field_of_view_deg);
  if (isFormatKnown === undefined) assumed.push("sensor_diagonal_mm");
  if (entrance_pupil_distance_mm === undefined) assumed.push("entrance_pupil_distance_mm");
  // Of a thread as the mount has it, and a clear part as its thread leaves it.
  const isThreaded = (scene.lens_thread_mm ?? scene.port_thread_mm) !== undefined;
  if (isThreaded && scene.filter_thread_mm === undefined) assumed.push("filter_thread_mm");
  const isSizeTaken = isThreaded || scene.filter_thread_mm !== undefined;
  if (isSizeTaken && scene.filter_clear_diameter_mm === undefined) assumed.push("filter_clear_diameter_mm");
  return { scene, assumed };
}
