import type { OutsideCode } from "@sunfathom/contract";
import type { MountingRefusals } from "@sunfathom/planner";
import type { OutsideText, Texts } from "../../problems/texts.js";
import { shown, unit } from "../format.js";

/** Por qué el modelo no tiene respuesta para un objetivo o sus anillos. */
export const outsideMounting: Texts<
  Pick<MountingRefusals, OutsideCode & keyof MountingRefusals>,
  OutsideText
> = {
  corner_outside_image_circle: (p) => ({
    detail: `Un ojo de pez de ${mm(p.focal_length_mm)} no llega a las esquinas de un formato de ${mm(p.format_mm)}.`,
    message: `el círculo de imagen de un ojo de pez así mide ${mm(p.image_circle_mm)}, y la diagonal del formato ${mm(p.format_mm)}`,
    allowed: `al menos ${mm(p.min_focal_length_mm)} para este formato, o el ángulo de visión indicado como field_of_view_deg`,
  }),
  field_too_wide: (p) => ({
    detail: `Un ángulo de visión de ${shown(p.field_of_view_deg, 1)} grados no es posible aquí.`,
    message: `${shown(p.field_of_view_deg, 1)} grados de ángulo de visión en el aire: ${whyTooWide(p)}`,
    allowed: `un ángulo de visión de ${p.max_field_of_view_deg} grados en el aire como máximo${insteadOf(p)}`,
  }),
  lens_contradicts: ({ sensor_diagonal_mm, follows_mm }) => ({
    detail: "La distancia focal, el formato y el ángulo de visión se contradicen.",
    message: `la diagonal del formato es de ${mm(sensor_diagonal_mm)}, pero por la distancia focal y el ángulo de visión sería de ${mm(follows_mm)}`,
    allowed: "omitir uno de focal_length_mm, sensor_diagonal_mm y field_of_view_deg, o corregirlo",
  }),
};

const mm = (value: number): string => unit(shown(value, 1), "mm");

type TooWide = MountingRefusals["field_too_wide"];

function whyTooWide({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return "un objetivo que mantiene rectas las líneas rectas no puede ver tanto";
  return port_kind === "dome"
    ? "ningún objetivo ve tanto hacia atrás"
    : "con ángulos así, una ventana plana refleja la luz en vez de dejarla entrar";
}

function insteadOf({ lens_kind, port_kind }: TooWide): string {
  if (lens_kind !== "fisheye") return ", o lens_kind fisheye";
  return port_kind === "dome" ? "" : ", o un domo";
}
