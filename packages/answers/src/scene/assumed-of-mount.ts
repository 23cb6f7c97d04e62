import type { FilterMountingScene } from "@sunfathom/planner";

/** Names of the fields of a mount of which the answer says what it takes them to be, and how unsure that is: no value of theirs would give the same answer. */
export function assumedOfMount(scene: Partial<FilterMountingScene>): string[] {
  const { sensor_diagonal_mm, focal_length_mm, field_of_view_deg, filter_thread_mm } = scene;
  const isFormatKnown = sensor_diagonal_mm ?? (focal_length_mm && field_of_view_deg);
  // Of a thread as the mount has it, and a clear part as its thread leaves it.
  const isThreaded = (scene.lens_thread_mm ?? scene.port_thread_mm) !== undefined;
  const isSizeTaken = isThreaded || filter_thread_mm !== undefined;
  return [
    ...(isFormatKnown === undefined ? ["sensor_diagonal_mm"] : []),
    ...(scene.entrance_pupil_distance_mm === undefined ? ["entrance_pupil_distance_mm"] : []),
    ...(isThreaded && filter_thread_mm === undefined ? ["filter_thread_mm"] : []),
    ...(isSizeTaken && scene.filter_clear_diameter_mm === undefined ? ["filter_clear_diameter_mm"] : []),
  ];
}
