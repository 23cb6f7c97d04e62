import type { Template } from "../item/template.js";

const KELVINS = [2700, 3000, 3500, 4000, 4500, 5000, 5600, 6500, 7500];
/** Neighbours differ by at least this, in mired, or nobody could see it. */
const LEAST_MIRED = 20;

/** Colour temperature and colour. */
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
    const named = kelvins.map((k) => text.entry({ kelvin: show.kelvin(k) }));
    return {
      given: { kelvins },
      stem: text.stem,
      answer: {
        interaction: "ordering",
        entries: keys.map((key, i) => ({ key, text: named[i] ?? key })),
        anticipated: [{ misconception: "warmer_for_higher_kelvin", keys: [...keys].reverse() }],
      },
      steps: [{ operation: "compare", text: text.last({ order: kelvins.map(show.kelvin) }) }],
      sources: ["cie_led_illuminants"],
      basis: "computed",
    };
  },
};
