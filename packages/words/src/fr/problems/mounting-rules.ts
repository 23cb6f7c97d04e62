import type { MountingRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { missing, repeatedId } from "./rule-parts.js";

/** Ce qui ne va pas quand une règle entre champs d’une scène de montage n’est pas respectée. */
export const mountingRuleTexts: Texts<MountingRuleParameters, FieldText> = {
  lens_field_given: (p) =>
    text(
      p.case === "half" ? missing("sensor_diagonal_mm") : "Il manque l’angle de champ.",
      "field_of_view_deg, ou focal_length_mm avec sensor_diagonal_mm",
    ),
  dome_radius_with_dome: ({ port_kind }) =>
    text(
      `Vous avez indiqué le rayon d’un dôme, mais port_kind vaut ${port_kind}.`,
      "l’omettre, ou port_kind dome",
    ),
  rear_opening_whole: (p) => text(missing(p.missing), "rear_opening_width_mm avec rear_opening_height_mm"),
  ring_ids_unique: repeatedId,
  port_outer_beyond_thread: ({ thread_mm }) =>
    text(
      "Le hublot n’est pas plus large que son filetage.",
      `plus de ${thread_mm} mm, le filetage du hublot`,
    ),
};
