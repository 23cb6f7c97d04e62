import type { OutsideCode } from "@sunfathom/contract";
import type { MountingRefusals } from "@sunfathom/planner";
import type { OutsideText, Texts } from "../../problems/texts.js";

/** Why the model has no answer to a lens or to its rings. */
export const outsideMounting: Texts<
  Pick<MountingRefusals, OutsideCode & keyof MountingRefusals>,
  OutsideText
> = {
  corner_outside_image_circle: (p) => ({
    detail: `A fisheye of ${p.focal_length_mm.toFixed(1)} mm does not reach the corners of a format of ${p.format_mm.toFixed(1)} mm.`,
    message: `the image circle of such a fisheye is ${p.image_circle_mm.toFixed(1)} mm wide, the format's diagonal ${p.format_mm.toFixed(1)} mm`,
    allowed: `at least ${p.min_focal_length_mm.toFixed(1)} mm for this format, or the field given as field_of_view_deg`,
  }),
  field_too_wide: (p) => ({
    detail: `A field of ${p.field_of_view_deg.toFixed(1)} degrees is not possible here.`,
    message: `${p.field_of_view_deg.toFixed(1)} degrees of field in air: ${whyTooWide(p)}`,
    allowed: `a field of at most ${p.max_field_of_view_deg} degrees in air${insteadOf(p)}`,
  }),
  lens_contradicts: ({ sensor_diagonal_mm, follows_mm }) => ({
    detail: "Focal length, format and field of view contradict each other.",
    message: `it is ${sensor_diagonal_mm.toFixed(1)} mm, but focal length and field of view make it ${follows_mm.toFixed(1)} mm`,
    allowed: "leave out one of focal_length_mm, sensor_diagonal_mm and field_of_view_deg, or correct it",
  }),
};

type TooWide = MountingRefusals["field_too_wide"];

function whyTooWide({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return "a lens that keeps straight lines straight cannot see that wide";
  return port_kind === "dome"
    ? "no lens sees that far behind itself"
    : "at such angles a flat window reflects the light instead of letting it in";
}

function insteadOf({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return ", or lens_kind fisheye";
  return port_kind === "dome" ? "" : ", or a dome";
}
