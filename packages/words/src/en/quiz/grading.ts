/** Texts of questions on what grading can still do. */
export const GRADING_EN = {
  red_in_post: {
    stem: (p: { scene: string; depth: string }) =>
      `${p.scene} You filmed a grey subject at ${p.depth} in daylight alone, without a filter, in 8 bits. What can grading do for its red?`,
    option: {
      restore: "Raise red until white is white: enough red light was recorded",
      none: "Nothing: almost no red light was recorded",
      /** Where it is wrong: several ways to say each, so that the length of a text tells nothing. */
      wrongly: {
        restore: [
          "Raise red until white is white: enough red light was recorded",
          "Raise it until white is white",
        ],
        none: [
          "Nothing: almost no red light was recorded",
          "Nothing: the water had taken all red light before it reached the sensor",
        ],
        bits: [
          "Bring red back, if the same clip is converted to 10 bits first",
          "Bring it back in 10 bits",
          "Bring red back, if the same clip is converted to 10 bits before it is graded",
        ],
        tint: [
          "Bring red back, if a red tint is laid over the picture",
          "Bring it back with a red tint",
          "Bring red back, if a red tint is laid over the picture from first to last frame",
        ],
      },
    },
    signal: (p: { snr: string; low: string; high: string }) =>
      `On an 18 % grey, red light above 600 nm is ${p.snr} times the noise (somewhere from ${p.low} to ${p.high} times). From 5.3 times the noise it is acceptable, below 1 it is gone.`,
    last: {
      good: "Red light stands well above the noise, so grading can raise it.",
      gone: "Red light is lost in the noise, and what was not recorded cannot be brought back.",
    },
  },
};
