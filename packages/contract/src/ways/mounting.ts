import { portKinds } from "../scene/values.js";
import type { Ways } from "./way.js";

/** What a mounting scene gives in one of several ways. */
export const mountingWays: readonly Ways[] = [
  {
    says: "Say how much the lens sees: field_of_view_deg, or focal_length_mm with sensor_diagonal_mm.",
    ways: [
      { name: "LensByFocalLength", needs: ["focal_length_mm", "sensor_diagonal_mm"], takes: [] },
      {
        name: "LensByView",
        needs: ["field_of_view_deg"],
        takes: ["focal_length_mm", "sensor_diagonal_mm"],
      },
    ],
  },
  {
    says: "dome_radius_mm goes with port_kind dome.",
    ways: [
      {
        name: "DomePort",
        needs: ["port_kind"],
        takes: ["dome_radius_mm"],
        values: { port_kind: ["dome"] },
      },
      {
        name: "OtherPort",
        needs: ["port_kind"],
        takes: [],
        values: { port_kind: portKinds.filter((kind) => kind !== "dome") },
      },
    ],
  },
  {
    says: "rear_opening_width_mm and rear_opening_height_mm go together.",
    ways: [
      { name: "MeasuredRearOpening", needs: ["rear_opening_width_mm", "rear_opening_height_mm"], takes: [] },
      { name: "NoRearOpening", needs: [], takes: [] },
    ],
  },
];
