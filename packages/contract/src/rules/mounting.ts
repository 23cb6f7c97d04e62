import type { MountingScene } from "../scene/mounting/scene.js";
import { type RepeatedId, repeatedIds } from "./repeated-ids.js";
import { broken, type ParametersOf, type RuleOf } from "./rule.js";

const lensFieldGiven: RuleOf<"lens_field_given", { case: "not_given" | "half" }, MountingScene> = {
  code: "lens_field_given",
  violations: ({ field_of_view_deg, focal_length_mm, sensor_diagonal_mm }) => {
    if (field_of_view_deg !== undefined) return [];
    if (focal_length_mm !== undefined && sensor_diagonal_mm !== undefined) return [];
    if (focal_length_mm === undefined) return [broken("", { case: "not_given" })];
    return [broken("/focal_length_mm", { case: "half" })];
  },
};

const domeRadiusWithDome: RuleOf<"dome_radius_with_dome", { port_kind: string }, MountingScene> = {
  code: "dome_radius_with_dome",
  violations: ({ port_kind, dome_radius_mm }) => {
    if (dome_radius_mm === undefined || port_kind === "dome") return [];
    return [broken("/dome_radius_mm", { port_kind })];
  },
};

const rearOpeningWhole: RuleOf<"rear_opening_whole", { missing: string }, MountingScene> = {
  code: "rear_opening_whole",
  violations: ({ rear_opening_width_mm: width, rear_opening_height_mm: height }) => {
    if ((width === undefined) === (height === undefined)) return [];
    const [there, missing] = width === undefined ? ["height", "width"] : ["width", "height"];
    const parameters = { missing: `rear_opening_${missing}_mm` };
    return [broken(`/rear_opening_${there}_mm`, parameters)];
  },
};

const ringIdsUnique: RuleOf<"ring_ids_unique", RepeatedId, MountingScene> = {
  code: "ring_ids_unique",
  violations: ({ rings = [] }) => repeatedIds(rings, "/rings"),
};

/** A thread inside the rim cannot be as wide as the rim. */
const portOuterBeyondThread: RuleOf<"port_outer_beyond_thread", { thread_mm: number }, MountingScene> = {
  code: "port_outer_beyond_thread",
  violations: ({ port_outer_diameter_mm: outer, port_thread_mm: thread_mm }) =>
    outer === undefined || thread_mm === undefined || outer > thread_mm
      ? []
      : [broken("/port_outer_diameter_mm", { thread_mm })],
};

/** Every rule between fields of a mounting scene. */
export const mountingRules = [
  lensFieldGiven,
  domeRadiusWithDome,
  rearOpeningWhole,
  ringIdsUnique,
  portOuterBeyondThread,
] as const;

export type MountingRuleParameters = ParametersOf<typeof mountingRules>;
