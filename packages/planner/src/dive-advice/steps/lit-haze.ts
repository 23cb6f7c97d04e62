import type { MixedLightAtDepth } from "../../result/mixed-light.js";

/** From this share of a lit grey on, haze lit by the lamps spoils the picture: a judgement. */
const HAZE_SPOILS_FROM_PERCENT = 15;

export const isHazeLit = ({ lit_haze_percent }: MixedLightAtDepth): boolean =>
  (lit_haze_percent?.likely ?? 0) > HAZE_SPOILS_FROM_PERCENT;
