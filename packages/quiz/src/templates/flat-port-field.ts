import { flatPortField_deg, WATER_INDEX } from "@sunfathom/optics";
import { numberOptions } from "../item/options.js";
import type { Template } from "../item/template.js";
import { plain } from "../messages/show.js";

const RADIAN = Math.PI / 180;

/** What a flat port leaves of the field of view. */
export const flatPortField: Template = {
  id: "flat_port_field",
  topic: "mounting",
  interaction: "single_choice",
  levels: ["working", "expert"],
  make({ draw, say, show }) {
    // Below 100 degrees, dividing the angle itself comes too near to the right answer to be told apart.
    const field_deg = 100 + 2 * draw.below(16);
    const key = flatPortField_deg(field_deg);
    const options = numberOptions(draw, {
      key,
      wrong: [
        ["field_divided_by_index", field_deg / WATER_INDEX],
        ["field_kept", field_deg],
        ["field_widened", field_deg * WATER_INDEX],
      ],
      text: show.deg,
    });
    if (!options) return undefined;
    const text = say.mounting.flat_port_field;
    const sine = Math.sin((field_deg / 2) * RADIAN);
    const divided = plain(sine / WATER_INDEX, 3);
    const half = `${plain(key / 2, 1)}°`;
    return {
      given: { field_deg },
      stem: text.stem({ field: show.deg(field_deg) }),
      answer: { interaction: "single_choice", options },
      steps: [
        {
          operation: "power",
          text: text.half({
            half: show.deg(field_deg / 2),
            sine: plain(sine, 3),
            divided,
          }),
        },
        { operation: "multiply", text: text.last({ divided, half, field: show.deg(key) }) },
      ],
      sources: ["snell"],
      basis: "definition",
    };
  },
};
