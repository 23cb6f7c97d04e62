import type { OutsideCode } from "@sunfathom/contract";
import type { MountingRefusals } from "@sunfathom/planner";
import type { OutsideText, Texts } from "../../problems/texts.js";
import { shown } from "../format.js";

/** Warum das Modell zu einem Objektiv oder seinen Ringen keine Antwort hat. */
export const outsideMounting: Texts<
  Pick<MountingRefusals, OutsideCode & keyof MountingRefusals>,
  OutsideText
> = {
  corner_outside_image_circle: (p) => ({
    detail: `Ein Fisheye mit ${shown(p.focal_length_mm, 1)} mm reicht nicht bis in die Ecken eines Formats von ${shown(p.format_mm, 1)} mm.`,
    message: `der Bildkreis eines solchen Fisheyes ist ${shown(p.image_circle_mm, 1)} mm groß, die Diagonale des Formats ${shown(p.format_mm, 1)} mm`,
    allowed: `mindestens ${shown(p.min_focal_length_mm, 1)} mm für dieses Format, oder der Bildwinkel als field_of_view_deg`,
  }),
  field_too_wide: (p) => ({
    detail: `Ein Bildwinkel von ${shown(p.field_of_view_deg, 1)} Grad ist hier nicht möglich.`,
    message: `${shown(p.field_of_view_deg, 1)} Grad Bildwinkel in Luft: ${whyTooWide(p)}`,
    allowed: `ein Bildwinkel von höchstens ${p.max_field_of_view_deg} Grad in Luft${insteadOf(p)}`,
  }),
  lens_contradicts: ({ sensor_diagonal_mm, follows_mm }) => ({
    detail: "Brennweite, Format und Bildwinkel gehören nicht zusammen.",
    message: `angegeben sind ${shown(sensor_diagonal_mm, 1)} mm, zu Brennweite und Bildwinkel passen aber ${shown(follows_mm, 1)} mm`,
    allowed: "eines von focal_length_mm, sensor_diagonal_mm und field_of_view_deg weglassen oder berichtigen",
  }),
};

type TooWide = MountingRefusals["field_too_wide"];

function whyTooWide({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return "ein Objektiv, das gerade Linien gerade abbildet, sieht nicht so weit";
  return port_kind === "dome"
    ? "so weit hinter sich sieht kein Objektiv"
    : "bei solchen Winkeln spiegelt eine plane Scheibe das Licht, statt es hereinzulassen";
}

function insteadOf({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return ", oder lens_kind fisheye";
  return port_kind === "dome" ? "" : ", oder ein Dome";
}
