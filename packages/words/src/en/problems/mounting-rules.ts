import type { MountingRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { missing, repeatedId } from "./rule-parts.js";

/** What is wrong where a rule between fields of a mounting scene is broken. */
export const mountingRuleTexts: Texts<MountingRuleParameters, FieldText> = {
  lens_field_given: (p) =>
    text(
      p.case === "half" ? missing("sensor_diagonal_mm") : "The field of view is missing.",
      "field_of_view_deg, or focal_length_mm together with sensor_diagonal_mm",
    ),
  dome_radius_with_dome: ({ port_kind }) =>
    text(`You gave the radius of a dome, but port_kind is ${port_kind}.`, "leave it out, or port_kind dome"),
  rear_opening_whole: (p) =>
    text(missing(p.missing), "rear_opening_width_mm together with rear_opening_height_mm"),
  ring_ids_unique: repeatedId,
  port_outer_beyond_thread: ({ thread_mm }) =>
    text("The port is no wider than its thread.", `more than ${thread_mm} mm, the port's thread`),
};

/** What each of them says, made when asked for. */
export const mountingRuleMeanings = (): Readonly<Record<keyof MountingRuleParameters, string>> => ({
  lens_field_given:
    "Give what the lens sees as `field_of_view_deg`, or as `focal_length_mm` with `sensor_diagonal_mm`.",
  dome_radius_with_dome: "`dome_radius_mm` goes only with `port_kind` `dome`.",
  rear_opening_whole: "`rear_opening_width_mm` and `rear_opening_height_mm` go together.",
  ring_ids_unique: "No two rings have the same `id`.",
  port_outer_beyond_thread: "`port_outer_diameter_mm` is more than `port_thread_mm`.",
});
