import { focusShift_mm } from "@sunfathom/optics";
import type { Template } from "../item/template.js";

/** Focus shift of a sheet behind the lens. */
export const sheetShift: Template = {
  id: "sheet_shift",
  topic: "mounting",
  interaction: "numeric",
  levels: ["expert"],
  make({ draw, say, show }) {
    const thickness_mm = draw.pick([0.08, 0.1, 0.12, 0.15, 0.18, 0.2, 0.25]);
    const index = draw.pick([1.45, 1.5, 1.55, 1.6]);
    const shift = focusShift_mm(thickness_mm, index);
    const text = say.mounting.sheet_shift;
    const both = { thickness: show.mm(thickness_mm, 2), index: show.number(index, 2) };
    return {
      given: { thickness_mm, index },
      stem: text.stem(both),
      answer: {
        interaction: "numeric",
        value: shift,
        unit: "mm",
        decimals: 3,
        tolerance: 0.001,
        anticipated: [
          { misconception: "whole_sheet_counted", value: thickness_mm },
          { misconception: "index_excess_used", value: (index - 1) * thickness_mm },
        ],
      },
      steps: [{ operation: "multiply", text: text.last({ ...both, shift: show.mm(shift, 3) }) }],
      sources: ["rear_sheet"],
      basis: "definition",
    };
  },
};
