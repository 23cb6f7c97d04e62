import type { MountingRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { missing, repeatedId } from "./rule-parts.js";

/** Qué está mal cuando no se cumple una regla entre campos de una escena de montaje. */
export const mountingRuleTexts: Texts<MountingRuleParameters, FieldText> = {
  lens_field_given: (p) =>
    text(
      p.case === "half" ? missing("sensor_diagonal_mm") : "Falta el ángulo de visión.",
      "field_of_view_deg, o focal_length_mm junto con sensor_diagonal_mm",
    ),
  dome_radius_with_dome: ({ port_kind }) =>
    text(`Se indica el radio de un domo, pero port_kind es ${port_kind}.`, "omitirlo, o port_kind dome"),
  rear_opening_whole: (p) =>
    text(missing(p.missing), "rear_opening_width_mm junto con rear_opening_height_mm"),
  ring_ids_unique: repeatedId,
  port_outer_beyond_thread: ({ thread_mm }) =>
    text("El puerto no es más ancho que su rosca.", `más de ${thread_mm} mm, la rosca del puerto`),
};
