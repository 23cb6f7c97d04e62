/** A picture of a histogram: how many places of a picture have each code value, channel by channel. */
import type { LinearRgb } from "@sunfathom/planner";
import type { Picture } from "../item/item.js";
import type { Catalogue } from "../messages/catalogue.js";
import { chartSvg } from "./chart.js";

const FULL = 255;
/** Each patch of the chart as a hill of this width: texture and noise spread it. */
const SPREAD_CODES = 9;
const STEP = 3;
const CODE_TICKS = [0, 32, 64, 96, 128, 160, 192, 224, 255];
const SHARE_TICKS = [0, 20, 40, 60, 80, 100];
const CHANNELS = ["red", "green", "blue"] as const;

interface Channel {
  /** Code values of the patches, rising. */
  codes: readonly number[];
  median: number;
  /** Share of the patches that the highest code value holds. */
  full_percent: number;
}
export type Channels = readonly [red: Channel, green: Channel, blue: Channel];

/** ITU-R BT.709, item 1.2: light 0 to 1 to a code value of 255. */
const stored = (light: number): number => {
  const within = Math.min(1, Math.max(0, light));
  return FULL * (within < 0.018 ? 4.5 * within : 1.099 * within ** 0.45 - 0.099);
};

function channelOf(lights: readonly number[]): Channel {
  const codes = lights.map(stored).sort((a, b) => a - b);
  const [below = 0, above = 0] = [
    codes[Math.ceil(codes.length / 2) - 1],
    codes[Math.floor(codes.length / 2)],
  ];
  const full = codes.filter((code) => code >= FULL - 0.5).length;
  return { codes, median: (below + above) / 2, full_percent: (100 * full) / codes.length };
}

/** @param stops by which the exposure is off, above 0 too bright. */
export function histogramOf(patches: readonly LinearRgb[], stops: number): Channels {
  const of = (i: 0 | 1 | 2): Channel => channelOf(patches.map((patch) => patch[i] * 2 ** stops));
  return [of(0), of(1), of(2)];
}

export function histogramPicture(channels: Channels, say: Catalogue): Picture {
  const words = say.practice.histogram;
  const hills = channels.map(({ codes }) =>
    Array.from({ length: Math.floor(FULL / STEP) + 1 }, (_, i) => {
      const at = i * STEP;
      const height = codes.reduce((sum, code) => sum + Math.exp(-0.5 * ((at - code) / SPREAD_CODES) ** 2), 0);
      return [at, height] as const;
    }),
  );
  const highest = Math.max(...hills.flat().map(([, height]) => height));
  const alt = words.alt({
    channels: channels.map(({ codes }, i) => ({
      name: say.light.channel[CHANNELS[i] ?? "red"],
      from: Math.round(codes[0] ?? 0),
      to: Math.round(codes[codes.length - 1] ?? 0),
      quarters: [1, 2, 3].map((quarter) => Math.round(codes[Math.floor((quarter * codes.length) / 4)] ?? 0)),
    })),
  });
  const svg = chartSvg(
    {
      title: words.title,
      alt,
      x: { from: 0, to: FULL, ticks: CODE_TICKS, label: words.xAxis },
      y: { from: 0, to: 100, ticks: SHARE_TICKS, label: words.yAxis },
      curves: hills.map((points, i) => ({
        name: say.light.channel[CHANNELS[i] ?? "red"],
        points: points.map(([at, height]) => [at, (100 * height) / highest] as const),
      })),
    },
    say,
  );
  return { svg, alt };
}
