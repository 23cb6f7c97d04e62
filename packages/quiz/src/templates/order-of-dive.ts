import type { Template } from "../item/template.js";

const STEPS = ["mount", "close", "manual", "card", "again", "rinse", "open"] as const;

/** What is done dry, at depth and afterwards. */
export const orderOfDive: Template = {
  id: "order_of_dive",
  topic: "safety",
  interaction: "ordering",
  levels: ["beginner", "working"],
  advises: ["balance", "filter_on_land"],
  make({ draw, level, say }) {
    const steps = draw.sample(STEPS, level === "beginner" ? 4 : 5);
    const { stem, step, last } = say.safety.order_of_dive;
    return {
      given: { steps },
      stem,
      answer: {
        interaction: "ordering",
        entries: steps.map((key) => ({ key, text: step[key] })),
        anticipated: [{ misconception: "order_of_dive_mixed", keys: [...steps].reverse() }],
      },
      steps: [{ operation: "recall", text: last({ order: steps.map((key) => step[key]) }) }],
      sources: ["common_practice"],
      basis: "common_practice",
    };
  },
};
