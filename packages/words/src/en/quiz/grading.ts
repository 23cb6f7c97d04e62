/** Texts of questions on what grading can still do. */
export const GRADING_EN = {
  red_in_post: {
    stem: (p: { scene: string; depth: string; snr: string }) =>
      `${p.scene} You filmed a grey subject at ${p.depth} in daylight alone, without a filter, in 8 bits. A check of the footage shows that its red light (above 600 nm) is ${p.snr} times the noise. What can grading do for its red?`,
    filterStem: (p: { scene: string; depth: string; density: string; snr: string }) =>
      `${p.scene} Without a filter, the red light (above 600 nm) of a grey subject at ${p.depth} was ${p.snr} times the noise. Now you filmed it behind a red filter of density ${p.density}, in daylight alone and exposed as well as the camera could. What can grading do for its red?`,
    /** Several ways to say each, so that the length of a text tells nothing. */
    option: {
      restore: [
        "Raise it until white is white",
        "Raise red until white is white: enough red light was recorded to stay clean",
      ],
      part: [
        "Bring back some of it, with noise",
        "Bring back a part of the red, with visible noise: a little red light was recorded",
      ],
      none: [
        "Nothing: no red to raise",
        "Nothing: almost no red light was recorded, so there is none to raise",
      ],
    },
    signal: (p: { snr: string; low: string; high: string }) =>
      `On an 18 % grey, red light above 600 nm is ${p.snr} times the noise (somewhere from ${p.low} to ${p.high} times). Above 5 times the noise it can be raised cleanly, below 1 it is gone.`,
    last: {
      restore: "Red light stands well above the noise, so grading can raise it.",
      part: "Red light stands a little above the noise: raised to white, it comes back with noise.",
      none: "Red light is lost in the noise, and what was not recorded cannot be brought back.",
    },
  },
};
