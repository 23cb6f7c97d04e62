import type { Band } from "@sunfathom/words";
import type { Template } from "../item/template.js";
import { kdSpreadAt } from "../light/daylight-left.js";
import { WATERS, type Water } from "../light/scenes.js";

const BANDS: Band[] = ["650", "600", "575", "525", "475", "425"];
const WATERS_AT: Record<string, readonly Water[]> = {
  beginner: ["IB", "II"],
  working: ["IB", "II", "1C"],
  expert: ["1C", "3C", "5C", "7C"],
};
const SUN_DEG = 50;
/** One colour must fade this much faster than the next, at either end of what the water type leaves open. */
const CLEARLY = 1.15;

/** Attenuation at the low end, in the middle and at the high end. */
const spread = (water: Water, band: Band): number[] => kdSpreadAt(water, SUN_DEG, Number(band));
const middle = (water: Water, band: Band): number => spread(water, band)[1] ?? 0;

/** In which order colours fade. */
export const colourOrder: Template = {
  id: "colour_order",
  topic: "light",
  interaction: "ordering",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const water = draw.pick(WATERS_AT[level] ?? WATERS);
    const count = level === "beginner" ? 3 : 4;
    const bands = draw.sample(BANDS, count);
    const right = [...bands].sort((a, b) => middle(water, b) - middle(water, a));
    const clear = right.every((band, i) => {
      const next = right[i + 1];
      if (next === undefined) return true;
      return spread(water, band).every((kd, k) => kd > CLEARLY * (spread(water, next)[k] ?? 0));
    });
    if (!clear) return undefined;
    // Experts meet orders that the rainbow does not tell.
    if (level === "expert" && right.join() === bands.join()) return undefined;
    const name = (band: Band): string => say.light.band[band];
    const text = say.light.colour_order;
    return {
      given: { water, bands },
      stem: text.stem({ water: say.common.water[water] }),
      answer: {
        interaction: "ordering",
        entries: right.map((band) => ({ key: band, text: name(band) })),
        anticipated: [
          { misconception: "order_by_wavelength", keys: bands },
          { misconception: "order_reversed", keys: [...right].reverse() },
        ],
      },
      steps: [
        {
          operation: "compare",
          text: text.losses({
            losses: right.map((band) => ({
              band: name(band),
              stops: show.stops(middle(water, band) * Math.LOG2E, 2),
            })),
          }),
        },
        { operation: level === "expert" ? "judge" : "recall", text: text.last({ order: right.map(name) }) },
      ],
      sources: ["jerlov_1976", "pope_fry_1997", "kirk_1984"],
      basis: "computed",
    };
  },
};
