import type { MountingScene } from "../scene/mounting/scene.js";
import { repeatedIds } from "./repeated-ids.js";
import type { Rule } from "./rule.js";

const lensFieldGiven: Rule<MountingScene> = {
  code: "lens_field_given",
  fields: ["field_of_view_deg", "focal_length_mm", "sensor_diagonal_mm"],
  violations: ({ field_of_view_deg, focal_length_mm, sensor_diagonal_mm }) => {
    if (field_of_view_deg !== undefined) return [];
    if (focal_length_mm !== undefined && sensor_diagonal_mm !== undefined) return [];
    const allowed = "field_of_view_deg, or focal_length_mm together with sensor_diagonal_mm";
    if (focal_length_mm === undefined) {
      return [{ pointer: "", message: "What the lens sees is not given.", allowed }];
    }
    return [{ pointer: "/focal_length_mm", message: "sensor_diagonal_mm is missing.", allowed }];
  },
};

const domeRadiusWithDome: Rule<MountingScene> = {
  code: "dome_radius_with_dome",
  fields: ["port_kind", "dome_radius_mm"],
  violations: ({ port_kind, dome_radius_mm }) => {
    if (dome_radius_mm === undefined || port_kind === "dome") return [];
    return [
      {
        pointer: "/dome_radius_mm",
        message: `The radius of a dome is given, but port_kind is ${port_kind}.`,
        allowed: "leave it out, or port_kind dome",
      },
    ];
  },
};

const rearOpeningWhole: Rule<MountingScene> = {
  code: "rear_opening_whole",
  fields: ["rear_opening_width_mm", "rear_opening_height_mm"],
  violations: ({ rear_opening_width_mm: width, rear_opening_height_mm: height }) => {
    if ((width === undefined) === (height === undefined)) return [];
    const [there, missing] = width === undefined ? ["height", "width"] : ["width", "height"];
    return [
      {
        pointer: `/rear_opening_${there}_mm`,
        message: `rear_opening_${missing}_mm is missing.`,
        allowed: "rear_opening_width_mm together with rear_opening_height_mm",
      },
    ];
  },
};

const ringIdsUnique: Rule<MountingScene> = {
  code: "ring_ids_unique",
  fields: ["rings"],
  violations: ({ rings = [] }) => repeatedIds(rings, "/rings"),
};

/** Every rule between fields of a mounting scene. */
export const mountingRules: readonly Rule<MountingScene>[] = [
  lensFieldGiven,
  domeRadiusWithDome,
  rearOpeningWhole,
  ringIdsUnique,
];
