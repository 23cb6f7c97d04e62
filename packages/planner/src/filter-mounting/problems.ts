/** What makes a lens or a set of rings impossible to answer for. */
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { SceneProblem } from "../scene/scene-problem.js";

/** Lengths and angles are told to a tenth. */
const toTenth = (value: number): number => Number(value.toFixed(1));

export const lensUnknown = () =>
  new SceneProblem({ code: "lens_field_unknown", parameters: {} }, "focal_length_mm");

export const outsideImageCircle = (focal_mm: number, format_mm: number) =>
  new SceneProblem(
    {
      code: "corner_outside_image_circle",
      parameters: {
        focal_length_mm: toTenth(focal_mm),
        image_circle_mm: toTenth(4 * focal_mm),
        format_mm: toTenth(format_mm),
        min_focal_length_mm: toTenth(format_mm / 4),
      },
    },
    "focal_length_mm",
  );

export const fieldTooWide = (scene: FilterMountingScene, field_deg: number, widest_deg: number) =>
  new SceneProblem(
    {
      code: "field_too_wide",
      parameters: {
        field_of_view_deg: toTenth(field_deg),
        max_field_of_view_deg: widest_deg,
        lens_kind: scene.lens_kind,
        port_kind: scene.port_kind,
      },
    },
    scene.field_of_view_deg === undefined ? "focal_length_mm" : "field_of_view_deg",
  );

export const formatContradicts = (given_mm: number, follows_mm: number) =>
  new SceneProblem(
    {
      code: "lens_contradicts",
      parameters: { sensor_diagonal_mm: toTenth(given_mm), follows_mm: toTenth(follows_mm) },
    },
    "sensor_diagonal_mm",
  );

export const ringIdTwice = (id: string) =>
  new SceneProblem({ code: "ring_id_twice", parameters: { id } }, "rings");
