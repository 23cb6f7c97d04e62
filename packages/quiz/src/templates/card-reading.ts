import type { Template } from "../item/template.js";
import { balanceFor } from "../light/remembered.js";
import { anyBalance, byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
/** The brightest channel of the card, as a code value of 255. */
const BRIGHTEST = 200;
const LEAST_CODE = 6;
const WATERS_AT: Record<string, readonly Water[]> = {
  beginner: ["IB", "II"],
  working: ["IB", "II", "1C"],
  expert: ["II", "1C", "3C", "5C"],
};

/** Reading a card in a check of the footage. What it reads is stated, so its uncertainty does not matter. */
export const cardReading: Template = {
  id: "card_reading",
  topic: "grading",
  interaction: "numeric",
  levels: ["beginner", "working", "expert"],
  advises: ["balance"],
  make({ draw, level, say, show }) {
    const water = draw.pick(WATERS_AT[level] ?? (["II"] as const));
    const depth_m = draw.pick([4, 5, 6, 8, 10, 12, 15]);
    const gains = balanceFor(anyBalance(byDay(water, SUN_DEG, depth_m))).depths[0];
    if (!gains) return undefined;
    const [r, g, b] = [gains.red_gain.likely, gains.green_gain.likely, gains.blue_gain.likely];
    const least = Math.min(r, g, b);
    const whole = level === "beginner";
    const green = Math.round((BRIGHTEST * least) / g);
    // Beginners read a whole number of halvings, as near as this light comes to it.
    const red = whole
      ? Math.round(green / 2 ** Math.round(Math.log2(r / g)))
      : Math.round((BRIGHTEST * least) / r);
    if (red < LEAST_CODE || red >= green) return undefined;
    const ratio = green / red;
    const stops = Math.log2(ratio);
    const text = say.camera.card_reading;
    const told = { red: String(red), green: String(green), ratio: show.number(ratio, 2) };
    return {
      given: { water, depth_m, red, green },
      stem: text.stem({ ...told, water: say.common.water[water], depth: show.m(depth_m) }),
      answer: {
        interaction: "numeric",
        value: stops,
        unit: "stops",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "ratio_for_stops", value: ratio },
          { misconception: "logarithm_to_ten", value: Math.log10(ratio) },
          { misconception: "difference_for_ratio", value: green - red },
        ],
      },
      steps: [
        { operation: "multiply", text: text.ratio(told) },
        {
          operation: whole ? "double" : "power",
          text: text.last({ ratio: told.ratio, stops: show.stops(stops) }),
        },
      ],
      sources: ["jerlov_1976", "mean_sensor", "density"],
      basis: "computed",
    };
  },
};
