import type { Template } from "../item/template.js";

const KELVINS = [2700, 3000, 3500, 4000, 4500, 5000, 5600, 6500, 7500];
/** Of the light that presets are tried on. */
const LIGHT_K = 5600;
/** Neighbours differ by at least this, in mired, or nobody could see it. */
const LEAST_MIRED = 20;

/** Colour temperature and colour, of lights and of presets. */
export const kelvinOrder: Template = {
  id: "kelvin_order",
  topic: "balance",
  interaction: "ordering",
  levels: ["beginner", "working"],
  advises: ["light"],
  make({ draw, level, say, show }) {
    const kelvins = draw.sample(KELVINS, level === "beginner" ? 3 : 4);
    const near = kelvins.some((k, i) => i > 0 && 1e6 / (kelvins[i - 1] ?? k) - 1e6 / k < LEAST_MIRED);
    if (near) return undefined;
    const text = say.balance.kelvin_order;
    const keys = kelvins.map(String);
    // A preset is the light that the camera takes for white: setting a higher one warms the picture.
    const presets = level === "working";
    const named = kelvins.map((k) => (presets ? text.preset : text.entry)({ kelvin: show.kelvin(k) }));
    return {
      given: presets ? { kelvins, light_K: LIGHT_K } : { kelvins },
      stem: presets ? text.presetStem({ light: show.kelvin(LIGHT_K) }) : text.stem,
      answer: {
        interaction: "ordering",
        entries: keys.map((key, i) => ({ key, text: named[i] ?? key })),
        anticipated: [
          {
            misconception: presets ? "preset_taken_for_light" : "warmer_for_higher_kelvin",
            keys: [...keys].reverse(),
          },
        ],
      },
      steps: presets
        ? [
            { operation: "judge", text: text.presetRule },
            { operation: "compare", text: text.presetLast({ order: kelvins.map(show.kelvin) }) },
          ]
        : [{ operation: "compare", text: text.last({ order: kelvins.map(show.kelvin) }) }],
      sources: ["cie_led_illuminants"],
      basis: "computed",
    };
  },
};
