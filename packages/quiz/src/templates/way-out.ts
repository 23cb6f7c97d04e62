import type { Template } from "../item/template.js";
import { mixAt } from "../light/remembered.js";
import { byDay, twoLamps } from "../light/scenes.js";

const SUN_DEG = 50;
/** The filter must leave at most this share of the split. */
const MOST_LEFT = 0.4;
/** So much more red than green the lamps must add at the least. */
const LEAST_RED_STOPS = 0.1;

/** The way out where lamps and daylight fight. */
export const wayOut: Template = {
  id: "way_out",
  topic: "lamps",
  interaction: "single_choice",
  levels: ["working", "expert"],
  advises: ["light", "balance"],
  make({ draw, say, show }) {
    const water = draw.pick(["II", "1C", "3C"] as const);
    const depth_m = draw.pick([10, 15]);
    const distance_m = draw.pick([0.8, 1, 1.2]);
    const mix = mixAt({ ...byDay(water, SUN_DEG, depth_m), lamps: [twoLamps(distance_m)] }).depths[0];
    const split = mix?.split_delta_e00?.likely;
    const way = mix?.ways_out.find((w) => w.way === "lamp_filter");
    const kind = way?.lamp_filter_kind;
    if (mix?.verdict !== "lights_fight" || mix.verdict_clarity !== "clear" || !split || !way || !kind)
      return undefined;
    // What shows must be red, and the filter must mend most of it.
    if ((mix.red_excess_stops?.low ?? 0) < LEAST_RED_STOPS || way.split_left_delta_e00 > MOST_LEFT * split)
      return undefined;
    const text = say.lamps.way_out;
    return {
      given: { water, sun_deg: SUN_DEG, depth_m, distance_m, kind },
      stem: text.stem({
        scene: say.common.scene({ water: say.common.water[water], sun: show.deg(SUN_DEG) }),
        depth: show.m(depth_m),
        distance: show.m(distance_m),
      }),
      answer: {
        interaction: "single_choice",
        options: [
          { value: "lamp_filter", text: text.option.lamp_filter({ kind }), right: true },
          {
            value: "red_on_lamp",
            text: draw.pick(text.option.red_on_lamp),
            right: false,
            misconception: "red_filter_on_lamp",
          },
          {
            value: "kelvin",
            text: draw.pick(text.option.kelvin),
            right: false,
            misconception: "balance_mends_split",
          },
          {
            value: "red_on_lens",
            text: draw.pick(text.option.red_on_lens),
            right: false,
            misconception: "balance_mends_split",
          },
        ],
      },
      steps: [
        {
          operation: "compare",
          text: text.split({
            split: show.fixed(split, 1),
            left: show.fixed(way.split_left_delta_e00, 1),
            kind,
            density: show.density(way.lamp_filter_density ?? 0),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["jerlov_1976", "light_field", "cie_led_illuminants", "filter_shapes", "ciede2000"],
      basis: "computed",
    };
  },
};
