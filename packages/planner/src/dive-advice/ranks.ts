import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";

/** From this mean colour error on pictures look wrong whatever red is in them: a judgement. */
export const STRONG_DELTA_E00 = 12;

/** Ranks in which texts tell colour errors: slight, noticeable, strong. Judgements; `format.test.ts` of the words holds theirs to these. */
export const rankOf = (delta_e00: number): 0 | 1 | 2 =>
  delta_e00 < VISIBLE_SPLIT_DELTA_E00 ? 0 : delta_e00 < STRONG_DELTA_E00 ? 1 : 2;
