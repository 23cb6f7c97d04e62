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
import type { CuttingTemplateTexts } from "./cutting-template-texts.js";
import type { GradeTexts } from "./grade-texts.js";
import type { TextUnits } from "./problems/texts.js";
import type { SlateTexts } from "./slate-texts.js";

type Said<P> = (p: P, units?: TextUnits) => string;

/** Texts on a picture, and what it says to anyone who cannot see it. */
export interface LightWithDepthTexts {
  /** What the picture comes down to. */
  headline: Said<{ red_to_tenth_depth_m: number }>;
  /** What goes to the right. */
  left: string;
  /** At the marks of the axes. */
  at_depth: Said<{ depth_m: number }>;
  at_percent: Said<{ percent: number }>;
  /** How light comes to be counted where there is none from the sky. */
  no_daylight: string;
  names: Readonly<Record<Light, string>>;
  /** Over the shares that are left at the deepest depth. */
  left_at: Said<{ depth_m: number }>;
  percent: Said<{ percent: number }>;
  tenth: Said<Estimate>;
  hundredth: Said<Estimate>;
  dive: Said<{ min_depth_m: number; max_depth_m: number }>;
  /** What the shading means, and what the names do. */
  shaded: string;
  bands: string;
  description: Said<{
    max_depth_m: number;
    left_at_max_percent: Readonly<Record<Light, Estimate>>;
    red_to_tenth_depth_m: Estimate;
    red_to_hundredth_depth_m: Estimate;
    end_m: number;
  }>;
}

export interface ChartUnderWaterTexts {
  headline: Said<Pick<ChartUnderWater, "filter" | "is_advised" | "depth_m">>;
  truth: string;
  /** How to read the wheels. */
  reading: string;
  /** Over the columns. */
  daylight: string;
  balanced: string;
  finished: Said<Pick<ChartUnderWater, "finish">>;
  /** Over the rows. */
  without: string;
  filtered: Said<{ filter: NamedFilter; is_advised: boolean }>;
  /** Under a wheel: how far its colours are off. */
  off: Said<{ delta_e00: number }>;
  /** What becomes of colours that a screen cannot show. */
  screen: string;
  description: Said<ChartUnderWater>;
}

export interface RedInPostTexts {
  headline: Said<Pick<RedInPost, "verdict" | "cleaner_by" | "depth_m">>;
  /** Why it is so. */
  why: Readonly<Record<RedVerdict, string>>;
  truth: string;
  /** How to read the pictures. */
  reading: string;
  /** Over the columns: whose settings they are. */
  settings_for: Said<Pick<RedWay, "settings_for" | "settings" | "neutral_density">>;
  /** Over the rows. */
  without: string;
  filtered: Said<{ filter: NamedFilter; is_advised: boolean }>;
  /** Under a picture: what it is like; how it is exposed, its noise and its steps. */
  quality: Readonly<Record<RedQuality, string>>;
  clipped: string;
  caption: Said<RedWay>;
  /** What the squares are. */
  squares: Said<Pick<RedInPost, "bits">>;
  description: Said<RedInPost>;
}

export interface PictureTexts {
  /** Below every picture. */
  caution: string;
  chart_under_water: ChartUnderWaterTexts;
  light_with_depth: LightWithDepthTexts;
  red_in_post: RedInPostTexts;
  slate: SlateTexts;
  cutting_template: CuttingTemplateTexts;
  grade: GradeTexts;
}
