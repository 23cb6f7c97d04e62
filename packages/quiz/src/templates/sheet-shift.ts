import { focusShift_mm } from "@sunfathom/optics";
import type { Template } from "../item/template.js";

/** Distances near enough to be on a focus ring. */
const MOST_M = 12;
const WITHIN = 0.05;

/** What a sheet behind the lens does to the focus, and where the ring has to go. */
export const sheetShift: Template = {
  id: "sheet_shift",
  topic: "mounting",
  interaction: "numeric",
  levels: ["expert"],
  make({ draw, say, show }) {
    const focal_mm = draw.pick([10, 12, 14, 15, 16, 18, 20]);
    const thickness_mm = draw.pick([0.08, 0.1, 0.12, 0.15, 0.18, 0.2, 0.25]);
    const index = draw.pick([1.45, 1.5, 1.55, 1.6]);
    const shift = focusShift_mm(thickness_mm, index);
    // Newton's formula: the image of a thing at x beyond the front focus lies f²/x behind the rear one.
    const focusedAt_m = (shift_mm: number): number => (focal_mm ** 2 / shift_mm) * 1e-3;
    const value = focusedAt_m(shift);
    if (value > MOST_M) return undefined;
    // Half way between two decimals, rounding would decide.
    if (Math.abs(((10 * value) % 1) - 0.5) < 0.01) return undefined;
    const text = say.mounting.sheet_shift;
    const both = { thickness: show.mm(thickness_mm, 2), index: show.number(index, 2) };
    const [focal, moved] = [show.mm(focal_mm), show.mm(shift, 3)];
    return {
      given: { focal_mm, thickness_mm, index },
      stem: text.stem({ ...both, focal }),
      answer: {
        interaction: "numeric",
        value,
        unit: "m",
        decimals: 1,
        tolerance: Math.max(0.1, value * WITHIN),
        anticipated: [
          { misconception: "whole_sheet_counted", value: focusedAt_m(thickness_mm) },
          { misconception: "index_excess_used", value: focusedAt_m((index - 1) * thickness_mm) },
        ],
      },
      steps: [
        { operation: "multiply", text: text.shift({ ...both, shift: moved }) },
        { operation: "power", text: text.last({ focal, shift: moved, distance: show.m1(value) }) },
      ],
      sources: ["rear_sheet", "lens_formula"],
      basis: "definition",
    };
  },
};
