import type { Draft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay, WATERS } from "../light/scenes.js";

const CHANNELS = ["red", "green", "blue"] as const;
const SUN_DEG = 50;
/** Red must be clearly behind green. */
const LEAST_BEHIND_STOPS = 0.7;
const SOURCES = ["density", "jerlov_1976", "mean_sensor"];

/** Shares of light as stops. The shares are stated, so their uncertainty does not matter. */
export const percentToStops: Template = {
  id: "percent_to_stops",
  topic: "light",
  interaction: "numeric",
  levels: ["working", "expert"],
  make: (maker) => (maker.level === "expert" ? redBehindGreen(maker) : ofOneChannel(maker)),
};

function ofOneChannel({ draw, say, show }: Maker): Draft | undefined {
  const water = draw.pick(WATERS);
  const depth_m = draw.pick([4, 6, 8, 10, 12, 15]);
  const channel = draw.pick(CHANNELS);
  const light = lightAt(byDay(water, SUN_DEG, depth_m)).depths[0];
  const left_percent = Math.round(light[`${channel}_left_percent`].likely);
  if (left_percent < 6 || left_percent > 80) return undefined;
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
        { misconception: "ratio_for_stops", value: factor },
        { misconception: "share_lost_counted", value: -Math.log2(1 - left_percent / 100) },
      ],
    },
    steps: [
      { operation: "multiply", text: text.factor({ percent, factor: show.number(factor, 2) }) },
      { operation: "power", text: text.last({ factor: show.number(factor, 2), stops: show.stops(stops) }) },
    ],
    sources: SOURCES,
    basis: "definition",
  };
}

/** How far red has fallen behind green: what a white balance has to make up. */
function redBehindGreen({ draw, say, show }: Maker): Draft | undefined {
  const water = draw.pick(["IB", "II", "1C", "3C"] as const);
  const depth_m = draw.pick([5, 6, 8, 10, 12, 15]);
  const light = lightAt(byDay(water, SUN_DEG, depth_m)).depths[0];
  const red_percent = Math.round(light.red_left_percent.likely);
  const green_percent = Math.round(light.green_left_percent.likely);
  if (red_percent < 2) return undefined;
  const ratio = green_percent / red_percent;
  const stops = Math.log2(ratio);
  if (stops < LEAST_BEHIND_STOPS) return undefined;
  const text = say.light.percent_to_stops;
  const told = {
    red: show.percent(red_percent),
    green: show.percent(green_percent),
    ratio: show.number(ratio, 2),
  };
  return {
    given: { water, depth_m, red_percent, green_percent },
    stem: text.behindStem({ water: say.common.water[water], depth: show.m(depth_m), ...told }),
    answer: {
      interaction: "numeric",
      value: stops,
      unit: "stops",
      decimals: 1,
      tolerance: 0.1,
      anticipated: [
        { misconception: "logarithm_to_ten", value: Math.log10(ratio) },
        { misconception: "ratio_for_stops", value: ratio },
        { misconception: "red_loss_alone", value: -Math.log2(red_percent / 100) },
      ],
    },
    steps: [
      { operation: "multiply", text: text.ratio(told) },
      {
        operation: "power",
        text: text.behindLast({ factor: show.number(ratio, 2), stops: show.stops(stops) }),
      },
    ],
    sources: SOURCES,
    basis: "definition",
  };
}
