/** Texts of questions on what grading can still do. */
export const GRADING_EN = {
  red_in_post: {
    stem: (p: { scene: string; depth: string }) =>
      `${p.scene} You filmed a grey subject at ${p.depth} in daylight alone, without a filter, in 8 bits. What can grading do for its red?`,
    option: {
      restore: "Raise red until white is white: enough red light was recorded",
      none: "Nothing: almost no red light was recorded",
      bits: "Bring red back, if the same clip is converted to 10 bits first",
      filter: "Bring red back, if a red filter is applied in the grade",
    },
    signal: (p: { snr: string; low: string; high: string }) =>
      `On an 18 % grey, red light above 600 nm is ${p.snr} times the noise (uncertain from ${p.low} to ${p.high}). From 5.3 on it is acceptable, below 1 it is gone.`,
    last: {
      good: "Red stands well above the noise, so grading can raise it.",
      gone: "What the sensor did not record cannot be brought back afterwards.",
    },
  },
};
