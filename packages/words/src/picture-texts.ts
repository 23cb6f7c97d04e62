import type {
  BudgetAtDepth,
  ChartUnderWater,
  Coded,
  ColourStrip,
  Estimate,
  ExposureBudget,
  FilterMap,
  Light,
  LossAt,
  MixedLightMap,
  MixedLightVerdict,
  NamedFilter,
  RedInPost,
  RedQuality,
  RedVerdict,
  RedWay,
  StripPatch,
  WaysOut,
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

/** Of the filmed depths, beside the mark that stands for them. */
type OfDive = Said<{ min_depth_m: number; max_depth_m: number }>;

export interface ColourStripTexts {
  headline: Said<Pick<ColourStrip, "max_depth_m">>;
  names: Readonly<Record<StripPatch, string>>;
  /** How to read the strips. */
  reading: string;
  /** Over the strips, and at their upper end. */
  daylight: string;
  balanced: string;
  filtered: Said<{ filter: NamedFilter; is_advised: boolean }>;
  truth: string;
  at_depth: Said<{ depth_m: number }>;
  /** Under a strip: how far its colours are off. */
  off: Said<{ delta_e00: number }>;
  dive: OfDive;
  screen: string;
  description: Said<ColourStrip>;
}

export interface ExposureBudgetTexts {
  headline: Said<ExposureBudget>;
  /** How to read the bars. */
  reading: string;
  losses: Readonly<Record<LossAt, string>>;
  total: string;
  /** What is not counted where there is no light from the sky. */
  no_daylight: string;
  at_depth: Said<{ depth_m: number }>;
  /** Beside a bar; a gain where it is below zero. */
  stops: Said<Estimate>;
  /** What to set, and whether that is enough. */
  set: Said<BudgetAtDepth>;
  description: Said<ExposureBudget>;
}

export interface FilterMapTexts {
  headline: Said<FilterMap>;
  /** How to read the fields. */
  reading: string;
  /** What goes to the right, and its mark for no filter. */
  across: Said<Pick<FilterMap, "kind">>;
  none: string;
  at_density: Said<{ density: number }>;
  at_depth: Said<{ depth_m: number }>;
  error: Said<{ delta_e00: number }>;
  /** What is framed. */
  band: Said<{ from: number; to: number }>;
  no_band: string;
  dive: OfDive;
  description: Said<FilterMap>;
}

export interface MixedLightMapTexts {
  headline: Said<Pick<MixedLightMap, "verdict" | "depth_m" | "own_distance_m">>;
  /** That the scene has no video lights, and which were taken. */
  assumed: Said<Pick<MixedLightMap, "flux_lm" | "own_distance_m">>;
  /** What goes to the right. */
  across: string;
  at_distance: Said<{ distance_m: number }>;
  at_depth: Said<{ depth_m: number }>;
  /** What each field means. */
  verdicts: Readonly<Record<MixedLightVerdict, string>>;
  own: Said<Pick<MixedLightMap, "own_distance_m" | "min_depth_m" | "max_depth_m">>;
  ways: Said<{ depth_m: number }>;
  way: Said<Coded<WaysOut>>;
  /** Of video lights, those of the ways out included. */
  cautions: string;
  description: Said<MixedLightMap>;
}

export interface PictureTexts {
  /** Below every picture. */
  caution: string;
  chart_under_water: ChartUnderWaterTexts;
  colour_strip: ColourStripTexts;
  exposure_budget: ExposureBudgetTexts;
  filter_map: FilterMapTexts;
  light_with_depth: LightWithDepthTexts;
  mixed_light_map: MixedLightMapTexts;
  red_in_post: RedInPostTexts;
  slate: SlateTexts;
  cutting_template: CuttingTemplateTexts;
  grade: GradeTexts;
}
