import type { Template } from "../item/template.js";

/** From the water to the sensor. */
const PARTS = ["swing_in", "port", "screwed", "ring", "lens", "sheet", "sensor"] as const;
const COUNT = { beginner: 4, working: 5, expert: 6 };

/** What light meets on its way to the sensor: common practice. */
export const mountOrder: Template = {
  id: "mount_order",
  topic: "mounting",
  interaction: "ordering",
  levels: ["beginner", "working", "expert"],
  advises: ["filter_on_land", "filter_under_water"],
  make({ draw, level, say }) {
    const parts = draw.sample(PARTS, COUNT[level]);
    // Without two places for filters there is little to tell apart.
    const filters = parts.filter((part) => part === "swing_in" || part === "screwed" || part === "sheet");
    if (filters.length < 2) return undefined;
    const { stem, part, last } = say.practice.mount_order;
    const inside = parts.includes("screwed") && parts.includes("port");
    return {
      given: { parts },
      stem,
      answer: {
        interaction: "ordering",
        entries: parts.map((key) => ({ key, text: part[key] })),
        anticipated: [
          ...(inside
            ? [
                {
                  misconception: "screwed_filter_outside" as const,
                  keys: swapped(parts, "port", "screwed"),
                },
              ]
            : []),
          { misconception: "light_goes_outwards", keys: [...parts].reverse() },
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "recall" : "compare",
          text: last({ order: parts.map((key) => part[key]) }),
        },
      ],
      sources: ["common_practice"],
      basis: "common_practice",
    };
  },
};

const swapped = (keys: readonly string[], a: string, b: string): string[] =>
  keys.map((key) => (key === a ? b : key === b ? a : key));
