import { mountingDefaults, type MountingScene as WireMountingScene } from "@sunfathom/contract";
import type { FilterMountingScene, StepRing } from "@sunfathom/planner";
import { filled, given, inOrder, joined } from "./fields.js";
import type { Canonical } from "./scene-kind.js";

const ringFields = ["id", "from_mm", "to_mm", "thickness_mm"] as const;

type Filled = Pick<FilterMountingScene, keyof typeof mountingDefaults>;

const defaults: Filled = mountingDefaults;

/**
 * The one form of a valid mounting scene.
 * @param wire a scene that has passed its schema and the rules between its fields
 */
export function canonicalMounting(wire: WireMountingScene): Canonical<FilterMountingScene> {
  const assumed: string[] = [];
  const stated: { [K in keyof Filled]?: Filled[K] | undefined } = wire;
  const fill = <K extends keyof Filled>(name: K): Filled[K] =>
    filled<Filled[K]>(stated[name], defaults[name], name, assumed);
  const scene: FilterMountingScene = joined(
    { port_kind: wire.port_kind, lens_kind: wire.lens_kind },
    given(wire, ["dome_radius_mm", "focal_length_mm", "sensor_diagonal_mm", "field_of_view_deg"]),
    { f_number: fill("f_number"), lens_interchangeable: fill("lens_interchangeable") },
    given(wire, [
      "lens_thread_mm",
      "port_thread_mm",
      "entrance_pupil_distance_mm",
      "holder",
      "filter_thread_mm",
      "filter_clear_diameter_mm",
    ]),
    {
      filter_thickness_mm: fill("filter_thickness_mm"),
      filter_change_underwater: fill("filter_change_underwater"),
    },
    given(wire, ["rear_opening_width_mm", "rear_opening_height_mm"]),
    {
      rear_fixing: fill("rear_fixing"),
      sheet_thickness_mm: fill("sheet_thickness_mm"),
      sheet_refractive_index: fill("sheet_refractive_index"),
      rings: inOrder<StepRing>(wire.rings ?? [], ringFields),
    },
  );
  return { scene, assumed };
}
