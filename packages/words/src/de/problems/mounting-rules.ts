import type { MountingRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { missing, repeatedId } from "./rule-parts.js";

/** Was falsch ist, wo eine Regel zwischen Feldern einer Mounting-Szene verletzt ist. */
export const mountingRuleTexts: Texts<MountingRuleParameters, FieldText> = {
  lens_field_given: (p) =>
    text(
      p.case === "half" ? missing("sensor_diagonal_mm") : "Was das Objektiv sieht, ist nicht angegeben.",
      "field_of_view_deg, oder focal_length_mm zusammen mit sensor_diagonal_mm",
    ),
  dome_radius_with_dome: ({ port_kind }) =>
    text(
      `Der Radius eines Domes ist angegeben, aber port_kind ist ${port_kind}.`,
      "weglassen, oder port_kind dome",
    ),
  rear_opening_whole: (p) =>
    text(missing(p.missing), "rear_opening_width_mm zusammen mit rear_opening_height_mm"),
  ring_ids_unique: repeatedId,
  port_outer_beyond_thread: ({ thread_mm }) =>
    text("Der Port ist nicht breiter als sein Gewinde.", `mehr als ${thread_mm} mm, das Gewinde des Ports`),
};
