import type { Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay, WATERS } from "../light/scenes.js";

const CHANNELS = ["red", "green", "blue"] as const;
const SUN_DEG = 50;

/** A share of light as stops. The share is stated, so its uncertainty does not matter. */
export const percentToStops: Template = {
  id: "percent_to_stops",
  topic: "light",
  interaction: "numeric",
  levels: ["working", "expert"],
  make({ draw, level, say, show }) {
    const water = draw.pick(WATERS);
    const depth_m = draw.pick([4, 6, 8, 10, 12, 15]);
    const channel = draw.pick(CHANNELS);
    const light = lightAt(byDay(water, SUN_DEG, depth_m)).depths[0];
    const left_percent = Math.round(light?.[`${channel}_left_percent`].likely ?? 0);
    // An expert's loss is no short run of halvings.
    if (left_percent < (level === "expert" ? 2 : 6) || left_percent > (level === "expert" ? 30 : 80))
      return undefined;
    const factor = 100 / left_percent;
    const stops = Math.log2(factor);
    const text = say.light.percent_to_stops;
    const percent = show.percent(left_percent);
    return {
      given: { water, depth_m, channel, left_percent },
      stem: text.stem({
        water: say.common.water[water],
        depth: show.m(depth_m),
        percent,
        channel: say.light.channel[channel],
      }),
      answer: {
        interaction: "numeric",
        value: stops,
        unit: "stops",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "logarithm_to_ten", value: Math.log10(factor) },
          { misconception: "stops_as_divisor", value: factor },
        ],
      },
      steps: [
        { operation: "multiply", text: text.factor({ percent, factor: show.number(factor, 2) }) },
        { operation: "power", text: text.last({ factor: show.number(factor, 2), stops: show.stops(stops) }) },
      ],
      sources: ["density", "jerlov_1976", "mean_sensor"],
      basis: "definition",
    };
  },
};
