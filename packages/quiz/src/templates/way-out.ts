import { mixedLight } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { mixAt } from "../light/remembered.js";
import { byDay, twoLamps, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
/** The filter must leave at most this share of the split. */
const MOST_LEFT = 0.4;
/** So much more red than green the lamps must add at the least. */
const LEAST_RED_STOPS = 0.1;

const KINDS = ["blue", "green"] as const;
type Kind = (typeof KINDS)[number];
/** A filter of the other colour must leave this many times as much. */
const OTHER_LEAVES_MORE = 1.8;

interface Place {
  water: Water;
  depth_m: number;
  distance_m: number;
}

/** What is left of the difference behind a filter on the lights, as a colour error. */
const leftBehind = remembered(
  ({ water, depth_m, distance_m }: Place, filter_kind: Kind, filter_density: number): number => {
    const lamp = { ...twoLamps(distance_m), filter_kind, filter_density };
    const mix = mixedLight({ ...byDay(water, SUN_DEG, depth_m), lamps: [lamp] }).depths[0];
    return mix.split_delta_e00?.likely ?? Number.NaN;
  },
);

/** The way out where lamps and daylight fight. */
export const wayOut: Template = {
  id: "way_out",
  topic: "lamps",
  interaction: "single_choice",
  levels: ["working"],
  advises: ["light", "balance"],
  make({ draw, say, show }) {
    const wanted = draw.pick(KINDS);
    const water = draw.pick(["IB", "II", "1C", "3C"] as const);
    const depth_m = draw.pick([10, 12, 15]);
    const distance_m = draw.pick([0.8, 1, 1.2]);
    const mix = mixAt({ ...byDay(water, SUN_DEG, depth_m), lamps: [twoLamps(distance_m)] }).depths[0];
    const split = mix?.split_delta_e00?.likely;
    const way = mix?.ways_out.find((w) => w.way === "lamp_filter");
    const kind = way?.lamp_filter_kind;
    if (mix?.verdict !== "lights_fight" || mix.verdict_clarity !== "clear" || !split || !way)
      return undefined;
    // Either colour is asked for as often.
    if (kind !== wanted || way.lamp_filter_density === undefined) return undefined;
    const other = KINDS.find((one) => one !== kind) ?? "green";
    const left = leftBehind({ water, depth_m, distance_m }, other, way.lamp_filter_density);
    if (left < OTHER_LEAVES_MORE * way.split_left_delta_e00) return undefined;
    // What shows must be red, and the filter must mend most of it.
    if ((mix.red_excess_stops?.low ?? 0) < LEAST_RED_STOPS || way.split_left_delta_e00 > MOST_LEFT * split)
      return undefined;
    const text = say.lamps.way_out;
    const whole = draw.pick(["kelvin", "red_on_lens"] as const);
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
          { value: `${kind}_on_lamp`, text: text.option.lamp_filter({ kind }), right: true },
          {
            value: `${other}_on_lamp`,
            text: text.option.lamp_filter({ kind: other }),
            right: false,
            misconception: other === "blue" ? "blue_filter_everywhere" : "green_filter_everywhere",
          },
          {
            value: "red_on_lamp",
            text: draw.pick(text.option.red_on_lamp),
            right: false,
            misconception: "red_filter_on_lamp",
          },
          {
            value: whole,
            text: draw.pick(text.option[whole]),
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
            density: show.density(way.lamp_filter_density),
          }),
        },
        { operation: "compare", text: text.other({ kind: other, left: show.fixed(left, 1) }) },
        { operation: "recall", text: text.last[kind] },
      ],
      sources: ["jerlov_1976", "light_field", "cie_led_illuminants", "filter_shapes", "ciede2000"],
      basis: "computed",
    };
  },
};
