import type {
  ChartUnderWater,
  Estimate,
  Light,
  NamedFilter,
  RedInPost,
  RedQuality,
  RedVerdict,
  RedWay,
} from "@sunfathom/planner";

/** Texts on a picture, and what it says to anyone who cannot see it. */
export interface LightWithDepthTexts {
  /** What the picture comes down to. */
  headline: (p: { red_to_tenth_depth_m: number }) => string;
  /** What goes to the right. */
  left: string;
  /** At the marks of the axes. */
  at_depth: (p: { depth_m: number }) => string;
  at_percent: (p: { percent: number }) => string;
  /** How light comes to be counted where there is none from the sky. */
  no_daylight: string;
  names: Readonly<Record<Light, string>>;
  /** Over the shares that are left at the deepest depth. */
  left_at: (p: { depth_m: number }) => string;
  percent: (p: { percent: number }) => string;
  tenth: (p: Estimate) => string;
  hundredth: (p: Estimate) => string;
  dive: (p: { min_depth_m: number; max_depth_m: number }) => string;
  /** What the shading means, and what the names do. */
  shaded: string;
  bands: string;
  description: (p: {
    max_depth_m: number;
    left_at_max_percent: Readonly<Record<Light, Estimate>>;
    red_to_tenth_depth_m: Estimate;
    red_to_hundredth_depth_m: Estimate;
    end_m: number;
  }) => string;
}

export interface ChartUnderWaterTexts {
  headline: (p: Pick<ChartUnderWater, "filter" | "is_advised" | "depth_m">) => string;
  truth: string;
  /** How to read the wheels. */
  reading: string;
  /** Over the columns. */
  daylight: string;
  balanced: string;
  finished: (p: Pick<ChartUnderWater, "finish">) => string;
  /** Over the rows. */
  without: string;
  filtered: (p: { filter: NamedFilter; is_advised: boolean }) => string;
  /** Under a wheel: how far its colours are off. */
  off: (p: { delta_e00: number }) => string;
  /** What becomes of colours that a screen cannot show. */
  screen: string;
  description: (p: ChartUnderWater) => string;
}

export interface RedInPostTexts {
  headline: (p: Pick<RedInPost, "verdict" | "cleaner_by" | "depth_m">) => string;
  /** Why it is so. */
  why: Readonly<Record<RedVerdict, string>>;
  truth: string;
  /** How to read the pictures. */
  reading: string;
  /** Over the columns: whose settings they are. */
  settings_for: (p: Pick<RedWay, "settings_for" | "settings" | "neutral_density">) => string;
  /** Over the rows. */
  without: string;
  filtered: (p: { filter: NamedFilter; is_advised: boolean }) => string;
  /** Under a picture: what it is like; how it is exposed, its noise and its steps. */
  quality: Readonly<Record<RedQuality, string>>;
  clipped: string;
  caption: (p: RedWay) => string;
  /** What the squares are. */
  squares: (p: Pick<RedInPost, "bits">) => string;
  description: (p: RedInPost) => string;
}

export interface PictureTexts {
  /** Below every picture. */
  caution: string;
  chart_under_water: ChartUnderWaterTexts;
  light_with_depth: LightWithDepthTexts;
  red_in_post: RedInPostTexts;
}
