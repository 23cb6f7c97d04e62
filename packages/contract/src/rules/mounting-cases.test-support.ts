import type { MountingScene } from "../scene/mounting/scene.js";
import type { MountingRuleParameters } from "./mounting.js";

const base: MountingScene = { port_kind: "dome", lens_kind: "wide", field_of_view_deg: 100 };
const bare: MountingScene = { port_kind: "flat", lens_kind: "wide" };
const ring = { id: "a", from_mm: 52, to_mm: 67, thickness_mm: 3 };

/** Scenes that a rule lets pass, and scenes that it refuses with the pointers of what it refuses. */
export const mountingCases: Record<
  keyof MountingRuleParameters,
  { passes: MountingScene[]; refuses: [MountingScene, string[]][] }
> = {
  lens_field_given: {
    passes: [
      { ...bare, field_of_view_deg: 100 },
      { ...bare, focal_length_mm: 16, sensor_diagonal_mm: 43.3 },
      { ...bare, field_of_view_deg: 107, focal_length_mm: 16 },
      { ...bare, field_of_view_deg: 107, focal_length_mm: 16, sensor_diagonal_mm: 43.3 },
    ],
    refuses: [
      [bare, [""]],
      [{ ...bare, sensor_diagonal_mm: 43.3 }, [""]],
      [{ ...bare, focal_length_mm: 16 }, ["/focal_length_mm"]],
    ],
  },
  dome_radius_with_dome: {
    passes: [{ ...base, dome_radius_mm: 100 }, base, bare],
    refuses: [
      [{ ...base, port_kind: "flat", dome_radius_mm: 100 }, ["/dome_radius_mm"]],
      [{ ...base, port_kind: "none", dome_radius_mm: 100 }, ["/dome_radius_mm"]],
    ],
  },
  rear_opening_whole: {
    passes: [base, { ...base, rear_opening_width_mm: 30, rear_opening_height_mm: 24 }],
    refuses: [
      [{ ...base, rear_opening_width_mm: 30 }, ["/rear_opening_width_mm"]],
      [{ ...base, rear_opening_height_mm: 24 }, ["/rear_opening_height_mm"]],
    ],
  },
  ring_ids_unique: {
    passes: [base, { ...base, rings: [] }, { ...base, rings: [ring, { ...ring, id: "b" }] }],
    refuses: [[{ ...base, rings: [ring, { ...ring, id: "b" }, ring] }, ["/rings/2/id"]]],
  },
  port_outer_beyond_thread: {
    passes: [
      { ...bare, port_outer_diameter_mm: 84 },
      { ...bare, port_thread_mm: 67 },
      { ...bare, port_outer_diameter_mm: 67.5, port_thread_mm: 67 },
    ],
    refuses: [
      [{ ...bare, port_outer_diameter_mm: 67, port_thread_mm: 67 }, ["/port_outer_diameter_mm"]],
      [{ ...bare, port_outer_diameter_mm: 50, port_thread_mm: 67 }, ["/port_outer_diameter_mm"]],
    ],
  },
};
