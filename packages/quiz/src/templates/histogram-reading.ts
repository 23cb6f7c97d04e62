import { chartUnderWater } from "@sunfathom/planner";
import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Level } from "../item/item.js";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { anyBalance, byDay, type Water } from "../light/scenes.js";
import { type Channels, histogramOf, histogramPicture } from "../picture/histogram.js";

const SUN_DEG = 50;
const STATES = ["cast", "under", "over", "good"] as const;
type State = (typeof STATES)[number];
/** Beginners read exposure alone. */
const ASKED: Partial<Record<Level, readonly State[]>> = {
  beginner: ["under", "over", "good"],
  working: STATES,
};
const OFF_STOPS = { cast: 0, good: 0, under: -2.5, over: 2 } as const;
/** What each answer takes the histogram for, where it is none of it. */
const MISTAKE: Record<State, MisconceptionId> = {
  cast: "channels_always_apart",
  under: "histogram_belongs_right",
  over: "histogram_belongs_left",
  good: "any_histogram_will_do",
};

/** The grey and coloured patches of a chart as they are stored, channel by channel. */
const chart = remembered(
  (water: Water, depth_m: number) => chartUnderWater(anyBalance(byDay(water, SUN_DEG, depth_m))).without,
);

/** Reading a histogram: too dark, too bright, unbalanced, or right. */
export const histogramReading: Template = {
  id: "histogram_reading",
  topic: "exposure",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  advises: ["balance"],
  make({ draw, level, say, show }) {
    const states = ASKED[level] ?? STATES;
    const state = draw.pick(states);
    const water = draw.pick(["IB", "II", "1C"] as const);
    const depth_m = draw.pick([2, 3, 4]);
    const { daylight, balanced } = chart(water, depth_m);
    const { patches } = state === "cast" ? daylight : balanced;
    const channels = histogramOf(patches, OFF_STOPS[state]);
    if (!isPlain(state, channels)) return undefined;
    const text = say.practice.histogram_reading;
    const options: OptionDraft[] = states.map((value) => ({
      value,
      text: draw.pick(text.option[value]),
      right: value === state,
      ...(value === state ? {} : { misconception: MISTAKE[value] }),
    }));
    return {
      given: {
        water,
        depth_m,
        medians: channels.map(({ median }) => Math.round(median)),
        full_percent: channels.map(({ full_percent }) => Math.round(full_percent)),
      },
      stem: text.stem({ depth: show.m(depth_m), water: say.common.water[water] }),
      picture: () => histogramPicture(channels, say),
      answer: { interaction: "single_choice", options },
      steps: [
        {
          operation: "compare",
          text: text.read({
            channels: channels.map(({ median, full_percent }, i) => ({
              name: say.light.channel[(["red", "green", "blue"] as const)[i] ?? "red"],
              middle: show.fixed(median, 0),
              full: show.percent(Math.round(full_percent)),
            })),
          }),
        },
        { operation: level === "beginner" ? "recall" : "judge", text: text.last[state] },
      ],
      sources: ["rec_709", "mean_sensor", "jerlov_1976"],
      basis: "computed",
    };
  },
};

/** Limits within which the picture tells its state to everybody. */
const APART = { cast: 55, balanced: 30 };
const MIDDLE = { dark: 75, low: 85, high: 175 };
const FULL_PERCENT = { over: 25, good: 10 };

function isPlain(state: State, channels: Channels): boolean {
  const medians = channels.map(({ median }) => median);
  const apart = Math.max(...medians) - Math.min(...medians);
  const full = Math.max(...channels.map(({ full_percent }) => full_percent));
  const [low, high] = [Math.min(...medians), Math.max(...medians)];
  switch (state) {
    case "cast":
      return apart >= APART.cast && full <= FULL_PERCENT.good;
    case "under":
      return apart <= APART.balanced && high <= MIDDLE.dark;
    case "over":
      return full >= FULL_PERCENT.over;
    case "good":
      return apart <= APART.balanced && low >= MIDDLE.low && high <= MIDDLE.high && full <= FULL_PERCENT.good;
  }
}
