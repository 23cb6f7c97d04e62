import { stopsToDensity } from "@sunfathom/optics";
import type { Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay } from "../light/scenes.js";

const SUN_DEG = 50;
const tenth = (value: number): number => Number(value.toFixed(1));

/** Density against depth: the deeper, the more there is to hold back. Losses are stated, so their uncertainty does not matter. */
export const densityToEvenOut: Template = {
  id: "density_to_even_out",
  topic: "filter",
  interaction: "numeric",
  levels: ["working", "expert"],
  make({ draw, level, say, show }) {
    const water = draw.pick(
      level === "working" ? (["IB", "II"] as const) : (["IB", "II", "1C", "3C"] as const),
    );
    const depth_m = draw.pick([6, 7, 8, 9, 10, 12, 14, 15]);
    const light = lightAt(byDay(water, SUN_DEG, depth_m)).depths[0];
    if (!light) return undefined;
    const red_stops = tenth(light.red_loss_stops.likely);
    const green_stops = tenth(light.green_loss_stops.likely);
    const difference = tenth(red_stops - green_stops);
    if (difference < 0.5) return undefined;
    const density = stopsToDensity(difference);
    const text = say.filter.density_to_even_out;
    return {
      given: { water, depth_m, red_stops, green_stops },
      stem: text.stem({
        depth: show.m(depth_m),
        water: say.common.water[water],
        red: show.stops(red_stops),
        green: show.stops(green_stops),
      }),
      answer: {
        interaction: "numeric",
        value: density,
        unit: "",
        decimals: 2,
        tolerance: 0.02,
        anticipated: [
          { misconception: "density_is_stops", value: difference },
          { misconception: "red_loss_alone", value: stopsToDensity(red_stops) },
          { misconception: "losses_added_for_difference", value: stopsToDensity(red_stops + green_stops) },
        ],
      },
      steps: [
        {
          operation: "add",
          text: text.difference({
            red: show.number(red_stops, 1),
            green: show.number(green_stops, 1),
            difference: show.number(difference, 1),
          }),
        },
        {
          operation: "multiply",
          text: text.last({ difference: show.number(difference, 1), density: show.density(density) }),
        },
      ],
      sources: ["density", "jerlov_1976", "mean_sensor"],
      basis: "definition",
    };
  },
};
