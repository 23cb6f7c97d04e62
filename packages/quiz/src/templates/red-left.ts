import { numberOptions } from "../item/options.js";
import type { Template } from "../item/template.js";
import { longestRedLeft } from "../light/daylight-left.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS } from "../light/scenes.js";

const DEPTHS_M = [4, 5, 6, 8, 10, 12, 15, 18];

/** How much of the red channel's light is left. */
export const redLeft: Template = {
  id: "red_left",
  topic: "light",
  interaction: "single_choice",
  levels: ["working", "expert"],
  make({ draw, aim, say, show }) {
    const water = draw.pick(WATERS);
    const sun_deg = draw.pick(SUNS_DEG);
    const depth_m = draw.pick(DEPTHS_M);
    const light = lightAt(byDay(water, sun_deg, depth_m)).depths[0];
    const first = lightAt(byDay(water, sun_deg, 1)).depths[0];
    if (!light || !first) return undefined;
    const { red_left_percent: left, red_loss_stops: loss } = light;
    const options = numberOptions(
      { draw, aim },
      {
        key: left.likely,
        interval: left,
        wrong: [
          ["all_colours_fade_alike", light.photopic_left_percent.likely],
          ["channel_confused", light.green_left_percent.likely],
          ["channel_confused", light.blue_left_percent.likely],
          ["loss_per_metre_subtracted", 100 - depth_m * (100 - first.red_left_percent.likely)],
          ["stops_as_divisor", 100 / loss.likely],
          ["logarithm_to_ten", 100 * 10 ** -loss.likely],
          ["first_metre_everywhere", 100 * (first.red_left_percent.likely / 100) ** depth_m],
          ["longest_red_for_all", 100 * longestRedLeft(water, sun_deg, depth_m)],
          ["way_counted_twice", left.likely ** 2 / 100],
        ],
        text: show.percent,
      },
    );
    if (!options) return undefined;
    const text = say.light.red_left;
    const scene = say.common.scene({ water: say.common.water[water], sun: show.deg(sun_deg) });
    return {
      given: { water, sun_deg, depth_m },
      stem: text.stem({ scene, depth: show.m(depth_m) }),
      answer: { interaction: "single_choice", options, interval: left },
      steps: [
        {
          operation: "recall",
          text: text.loss({
            depth: show.m(depth_m),
            stops: show.stops(loss.likely),
            low: show.fixed(loss.low, 1),
            high: show.fixed(loss.high, 1),
          }),
        },
        {
          operation: "power",
          text: text.last({ stops: show.stops(loss.likely), percent: show.percent(left.likely) }),
        },
      ],
      sources: ["jerlov_1976", "kirk_1984", "bird_riordan_1986", "mean_sensor"],
      basis: "computed",
    };
  },
};
