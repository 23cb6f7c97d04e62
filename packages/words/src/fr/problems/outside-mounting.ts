import type { OutsideCode } from "@sunfathom/contract";
import type { MountingRefusals } from "@sunfathom/planner";
import type { OutsideText, Texts } from "../../problems/texts.js";
import { shown, unit } from "../format.js";

const mm = (value: number): string => unit(shown(value, 1), "mm");

/** Pourquoi le modèle n’a pas de réponse pour un objectif ou ses bagues. */
export const outsideMounting: Texts<
  Pick<MountingRefusals, OutsideCode & keyof MountingRefusals>,
  OutsideText
> = {
  corner_outside_image_circle: (p) => ({
    detail: `Un fisheye de ${mm(p.focal_length_mm)} n’atteint pas les coins d’un format de ${mm(p.format_mm)}.`,
    message: `le cercle image d’un tel fisheye fait ${mm(p.image_circle_mm)}, la diagonale du format ${mm(p.format_mm)}`,
    allowed: `au moins ${mm(p.min_focal_length_mm)} pour ce format, ou l’angle de champ indiqué par field_of_view_deg`,
  }),
  field_too_wide: (p) => ({
    detail: `Un angle de champ de ${shown(p.field_of_view_deg, 1)} degrés n’est pas possible ici.`,
    message: `${shown(p.field_of_view_deg, 1)} degrés de champ dans l’air : ${whyTooWide(p)}`,
    allowed: `un angle de champ de ${p.max_field_of_view_deg} degrés au plus dans l’air${insteadOf(p)}`,
  }),
  lens_contradicts: ({ sensor_diagonal_mm, follows_mm }) => ({
    detail: "La focale, le format et l’angle de champ se contredisent.",
    message: `la diagonale du capteur est de ${mm(sensor_diagonal_mm)}, mais la focale et l’angle de champ donnent ${mm(follows_mm)}`,
    allowed:
      "omettre l’un des champs focal_length_mm, sensor_diagonal_mm et field_of_view_deg, ou le corriger",
  }),
};

type TooWide = MountingRefusals["field_too_wide"];

function whyTooWide({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return "un objectif qui garde droites les lignes droites ne voit pas si large";
  return port_kind === "dome"
    ? "aucun objectif ne voit aussi loin derrière lui"
    : "à de tels angles, une vitre plane réfléchit la lumière au lieu de la laisser entrer";
}

function insteadOf({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return ", ou lens_kind fisheye";
  return port_kind === "dome" ? "" : ", ou un dôme";
}
