/** Below this share of contrast, haze and not colour limits the picture, and coming closer goes before everything else: a judgement. */
export const HAZE_LIMITS_BELOW_PERCENT = 30;
