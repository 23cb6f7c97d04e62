import type { Estimate, Light } from "@sunfathom/planner";

/** Texts on a picture, and what it says to whoever does not see it. */
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

export interface PictureTexts {
  /** Below every picture. */
  caution: string;
  light_with_depth: LightWithDepthTexts;
}
