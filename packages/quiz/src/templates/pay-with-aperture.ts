import { numberOptions } from "../item/options.js";
import type { Template } from "../item/template.js";

/** Full stops as engraved; the exact series is powers of the root of two. */
const ENGRAVED = [1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32];
const at = (step: number): number => ENGRAVED[step] ?? Number.NaN;

/** The f-number that pays for a filter. */
export const payWithAperture: Template = {
  id: "pay_with_aperture",
  topic: "exposure",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  make({ draw, aim, level, say, show }) {
    const stops = draw.pick(level === "beginner" ? [1, 2, 3] : [1, 2, 3, 4]);
    // Filters are named by stops, or by the factor that they cost: ND2, ND4, ND8, ND16.
    const byFactor = level === "working";
    const step = 3 + stops + draw.below(8 - stops - 2);
    const from = at(step);
    const key = at(step - stops);
    const options = numberOptions(
      { draw, aim },
      {
        key,
        wrong: [
          ["f_number_halved_per_stop", at(step - 2 * stops)],
          ["f_number_raised_for_light", at(step + stops)],
          ["f_number_raised_for_light", at(step + 2 * stops)],
          ["stop_counted_too_many", at(step - stops - 1)],
          ["light_factors_added", Number((from / (2 * stops)).toFixed(1))],
          ["thirds_taken_for_stops", Number((from / 2 ** (stops / 6)).toFixed(1))],
          ["f_number_less_stops", Number((from - stops).toFixed(1))],
          ...(byFactor ? ([["f_number_by_factor", Number((from / 2 ** stops).toFixed(1))]] as const) : []),
        ],
        text: (f_number) => show.f(f_number, 1),
      },
    );
    if (!options) return undefined;
    const text = say.exposure.pay_with_aperture;
    return {
      given: byFactor ? { f_number: from, factor: 2 ** stops } : { f_number: from, stops },
      stem: byFactor
        ? text.factorStem({ f: show.f(from), factor: 2 ** stops })
        : text.stem({ f: show.f(from), stops: show.stops(stops) }),
      answer: { interaction: "single_choice", options },
      steps: [
        ...(byFactor
          ? [
              {
                operation: "double" as const,
                text: text.factor({ factor: 2 ** stops, stops: show.stops(stops) }),
              },
            ]
          : []),
        {
          operation: stops === 1 ? "multiply" : "power",
          text: text.last({ f: show.f(from), stops: show.stops(stops), result: show.f(key) }),
        },
      ],
      sources: ["f_number"],
      basis: "definition",
    };
  },
};
