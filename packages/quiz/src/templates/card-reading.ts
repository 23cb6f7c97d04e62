import type { Draft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { balanceFor } from "../light/remembered.js";
import { anyBalance, byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
/** The brightest channel of the card, as a code value of 255. */
const BRIGHTEST = 200;
const LEAST_CODE = 6;
const FULL = 255;
const LEAST_VIDEO_CODE = 30;
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
  make({ draw, aim, level, say, show }) {
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
    if (level === "expert") return asVideo({ draw, aim, level, say, show }, { water, depth_m, red, green });
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

/** Of 255, as BT.709 stores light (ITU-R BT.709, item 1.2), and back. */
const stored = (light: number): number =>
  Math.round(FULL * (light < 0.018 ? 4.5 * light : 1.099 * light ** 0.45 - 0.099));
const lightOf = (code: number): number => ((code / FULL + 0.099) / 1.099) ** (1 / 0.45);

interface Card {
  water: Water;
  depth_m: number;
  /** Linear, of 255. */
  red: number;
  green: number;
}

/** The same card in an ordinary clip, where code values are no light. */
function asVideo({ say, show }: Maker, { water, depth_m, ...linear }: Card): Draft | undefined {
  const red = stored(linear.red / FULL);
  const green = stored(linear.green / FULL);
  // Below, the curve is a straight line and the question another one.
  if (red < LEAST_VIDEO_CODE) return undefined;
  const ratio = lightOf(green) / lightOf(red);
  const stops = Math.log2(ratio);
  const text = say.camera.card_reading;
  const told = { red: String(red), green: String(green), ratio: show.number(ratio, 2) };
  return {
    given: { water, depth_m, red, green, curve: "rec709" },
    stem: text.videoStem({ ...told, water: say.common.water[water], depth: show.m(depth_m) }),
    answer: {
      interaction: "numeric",
      value: stops,
      unit: "stops",
      decimals: 1,
      tolerance: 0.1,
      anticipated: [
        { misconception: "code_is_linear", value: Math.log2(green / red) },
        { misconception: "ratio_for_stops", value: ratio },
        { misconception: "difference_for_ratio", value: green - red },
      ],
    },
    steps: [
      {
        operation: "power",
        text: text.light({
          red: show.percent(100 * lightOf(red)),
          green: show.percent(100 * lightOf(green)),
        }),
      },
      {
        operation: "power",
        text: text.last({ ratio: told.ratio, stops: show.stops(stops) }),
      },
    ],
    sources: ["jerlov_1976", "mean_sensor", "rec_709"],
    basis: "computed",
  };
}
