import type { Template } from "../item/template.js";

/** Log and linear recordings: how many code values a stop has. */
export const codesPerStop: Template = {
  id: "codes_per_stop",
  topic: "grading",
  interaction: "numeric",
  levels: ["working", "expert"],
  make({ draw, level, say, show }) {
    const text = say.camera.codes_per_stop;
    const linear = level === "expert" && draw.below(3) > 0;
    const bits = draw.pick(linear ? [8, 10, 12, 14] : [8, 10, 12]);
    const values = 2 ** bits;
    const first = { operation: "power" as const, text: text.values({ bits, values }) };
    if (linear) {
      const stop = draw.pick([2, 3, 4, 5, 6]);
      const each = values / 2 ** stop;
      return {
        given: { bits, stop, curve: "linear" },
        stem: text.linearStem({ bits, stop }),
        answer: {
          interaction: "numeric",
          value: each,
          unit: "",
          decimals: 0,
          tolerance: Math.max(1, Math.round(each * 0.02)),
          anticipated: [
            { misconception: "values_shared_evenly", value: values / bits },
            { misconception: "stops_counted_from_dark", value: 2 ** (stop - 1) },
            { misconception: "halving_started_late", value: (2 * values) / 2 ** stop },
          ],
        },
        steps: [first, { operation: "double", text: text.linear({ stop, each: show.fixed(each, 0) }) }],
        sources: ["code_values"],
        basis: "definition",
      };
    }
    const stops = draw.pick([8, 10, 12, 14]);
    const each = values / stops;
    return {
      given: { bits, stops, curve: "log" },
      stem: text.logStem({ bits, stops }),
      answer: {
        interaction: "numeric",
        value: each,
        unit: "",
        decimals: 0,
        tolerance: Math.max(1, Math.round(each * 0.02)),
        anticipated: [
          { misconception: "values_halved_each_stop", value: values / 2 },
          { misconception: "bits_taken_for_values", value: bits / stops },
        ],
      },
      steps: [first, { operation: "multiply", text: text.log({ values, stops, each: show.fixed(each, 0) }) }],
      sources: ["code_values"],
      basis: "definition",
    };
  },
};
