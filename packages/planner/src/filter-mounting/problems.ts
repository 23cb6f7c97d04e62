/** What makes a lens or a set of rings impossible to answer for. */
import { shown } from "../messages/format.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { SceneProblem } from "../scene/scene-problem.js";

export const lensUnknown = () =>
  new SceneProblem(
    "lens_field_unknown",
    "Without a focal length or a field of view nothing can be said about corners.",
    [
      {
        field: "focal_length_mm",
        message: "neither a focal length nor a field of view is given",
        allowed: "focal_length_mm with sensor_diagonal_mm, or field_of_view_deg",
      },
    ],
  );

export const outsideImageCircle = (focal_mm: number, format_mm: number) =>
  new SceneProblem(
    "corner_outside_image_circle",
    `A fisheye of ${shown(focal_mm, 1)} mm does not reach the corners of a format of ${shown(format_mm, 1)} mm.`,
    [
      {
        field: "focal_length_mm",
        message: `the image circle of such a fisheye is ${shown(4 * focal_mm, 1)} mm wide, the format's diagonal ${shown(format_mm, 1)} mm`,
        allowed: `at least ${shown(format_mm / 4, 1)} mm for this format, or the field given as field_of_view_deg`,
      },
    ],
  );

export function fieldTooWide(scene: FilterMountingScene, field_deg: number, widest: number) {
  const { lens_kind, port_kind, field_of_view_deg } = scene;
  const why =
    lens_kind === "fisheye"
      ? port_kind === "dome"
        ? "no lens sees that far behind itself"
        : "at such angles a flat window reflects the light instead of letting it in"
      : "a lens that draws straight lines straight cannot see that wide";
  const instead =
    lens_kind !== "fisheye" ? ", or lens_kind fisheye" : port_kind === "dome" ? "" : ", or a dome";
  return new SceneProblem(
    "field_too_wide",
    `A field of ${shown(field_deg, 1)} degrees is not possible here.`,
    [
      {
        field: field_of_view_deg === undefined ? "focal_length_mm" : "field_of_view_deg",
        message: `${shown(field_deg, 1)} degrees of field in air: ${why}`,
        allowed: `a field of at most ${widest} degrees in air${instead}`,
      },
    ],
  );
}

export const formatContradicts = (given_mm: number, follows_mm: number) =>
  new SceneProblem("lens_contradicts", "Focal length, format and field of view do not belong together.", [
    {
      field: "sensor_diagonal_mm",
      message: `${shown(given_mm, 1)} mm, where focal length and field of view ask for ${shown(follows_mm, 1)} mm`,
      allowed: "leave out one of focal_length_mm, sensor_diagonal_mm and field_of_view_deg, or correct it",
    },
  ]);

export const ringIdTwice = (id: string) =>
  new SceneProblem("ring_id_twice", "Two rings have the same id.", [
    { field: "rings", message: `the id ${id} is used twice`, allowed: "a different id for each ring" },
  ]);
