import { estimate } from "../field/estimate.js";

export const LossEstimate = estimate({
  what: "Light lost, in stops",
  unit: "stop",
  decimals: 2,
  min: 0,
  max: 10000,
  example: [2.61, 3.04, 3.52],
});

export const LossOrGainEstimate = estimate({
  what: "Light lost, in stops, negative where it is gained",
  unit: "stop",
  decimals: 2,
  min: -10000,
  max: 10000,
  example: [-0.12, 0.4, 0.97],
});

export const RatioEstimate = estimate({
  what: "One light over another, in stops, negative where it is the weaker one",
  unit: "stop",
  decimals: 2,
  min: -10000,
  max: 10000,
  example: [0.85, 1.62, 2.4],
});

export const PercentEstimate = estimate({
  what: "Share in percent",
  unit: "%",
  decimals: 3,
  min: 0,
  max: 100,
  example: [8.7, 12.2, 16.4],
});

export const RelativePercentEstimate = estimate({
  what: "One luminance in percent of another",
  unit: "%",
  decimals: 1,
  min: 0,
  max: 1e12,
  example: [4, 9.5, 21],
});

export const DepthEstimate = estimate({
  what: "Depth",
  unit: "m",
  decimals: 1,
  min: 0,
  max: 1000,
  example: [5.8, 6.6, 7.5],
});

export const IlluminanceEstimate = estimate({
  what: "Illuminance",
  unit: "lx",
  decimals: 3,
  min: 0,
  max: 1e14,
  example: [2900, 4100, 5600],
});

export const LumensEstimate = estimate({
  what: "Luminous flux",
  unit: "lm",
  decimals: 0,
  min: 0,
  max: 1e9,
  example: [16000, 29000, 53000],
});

export const ExposureValueEstimate = estimate({
  what: "Exposure value at ISO 100",
  unit: "EV",
  decimals: 2,
  min: -10000,
  max: 40,
  example: [6.9, 7.6, 8.2],
});

export const GainEstimate = estimate({
  what: "Gain of a channel",
  unit: "1",
  decimals: 3,
  min: 0,
  max: 1e12,
  example: [3.6, 4.1, 4.8],
});

export const SignalToNoiseEstimate = estimate({
  what: "Signal over noise",
  unit: "1",
  decimals: 2,
  min: 0,
  max: 1e6,
  example: [3.9, 4.8, 5.9],
});

export const ColourErrorEstimate = estimate({
  what: "Colour difference (CIEDE2000)",
  unit: "1",
  decimals: 2,
  min: 0,
  max: 1000,
  example: [7.1, 8.4, 9.9],
});

export const ColourErrorDifferenceEstimate = estimate({
  what: "Difference between two colour differences (CIEDE2000), negative where the first is the smaller one",
  unit: "1",
  decimals: 2,
  min: -1000,
  max: 1000,
  example: [-0.4, 1.3, 2.8],
});

export const LengthEstimate = estimate({
  what: "Length",
  unit: "mm",
  decimals: 1,
  min: 0,
  max: 1000000,
  example: [19.2, 24, 28.8],
});

export const WeightEstimate = estimate({
  what: "Weight",
  unit: "g",
  decimals: 0,
  min: 0,
  max: 10000,
  example: [10, 15, 20],
});

export const ClearanceEstimate = estimate({
  what: "Gap, negative where two things would overlap",
  unit: "mm",
  decimals: 1,
  min: -10000,
  max: 500,
  example: [52.3, 57.1, 61.8],
});

export const AngleEstimate = estimate({
  what: "Angle",
  unit: "deg",
  decimals: 1,
  min: 0,
  max: 180,
  example: [49.1, 54.6, 60.2],
});

export const WholePercentEstimate = estimate({
  what: "Share in percent",
  unit: "%",
  decimals: 0,
  min: 0,
  max: 100,
  example: [88, 97, 100],
});
