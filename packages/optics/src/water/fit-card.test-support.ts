// Cards photographed in waters that are known, for the tests of the fit.
import { ASTM_G173_03 } from "../data/astm-g173-03.js";
import { normalFrom } from "../random.test-support.js";
import { meanSensor } from "../sensor/mean-sensor.js";
import type { Spectrum } from "../spectrum/grid.js";
import type { CardSample, CardSeries, Rgb } from "./card-samples.js";
import { type CardConditions, type CardFit, fitCard } from "./fit-card.js";

export const conditions: CardConditions = {
  daylight: Float64Array.from(ASTM_G173_03.global_tilt37_W_m2_nm),
  sensor: meanSensor(),
};
export const CHANNELS = ["red", "green", "blue"] as const;

export const band = (kd: Spectrum, depth_m: number): number[] =>
  CHANNELS.map((name) =>
    conditions.sensor[name].reduce(
      (sum, s, i) => sum + s * conditions.daylight[i] * Math.exp(-kd[i] * depth_m),
      0,
    ),
  );

/** True mean attenuation of each channel between two depths, 1/m. */
export const trueKd = (kd: Spectrum, from_m: number, to_m: number): number[] =>
  band(kd, from_m).map((top, k) => Math.log(top / band(kd, to_m)[k]) / (to_m - from_m));

/** Cards as a camera on manual would record them: each exposed so that green stands at 0.4, gains moving from dive to dive. */
export function photograph(
  kd: Spectrum,
  depths: readonly number[],
  noise: number,
  normal = normalFrom(1),
): CardSample[] {
  return depths.map((depth_m, n) => {
    const light = band(kd, depth_m);
    const gains: Rgb = [1.9 + 0.1 * n, 1, 1.4];
    const seen = 0.4 / light[1] / 1.9;
    const exposure = { iso: 400, shutter_s: 1 / 60, f_number: Math.sqrt(400 / 60 / seen) };
    const shown = light.map((value, k) => ((value * seen * gains[k]) / 2) * Math.exp(noise * normal()));
    return { depth_m, rgb: [shown[0], shown[1], shown[2]], exposure, balance_gains: gains };
  });
}
export const series = (samples: CardSample[], more: Partial<CardSeries> = {}): CardSeries => ({
  samples,
  transfer_curve: "linear",
  ...more,
});
export const withoutExposure = (samples: CardSample[]): CardSample[] =>
  samples.map(({ exposure: _, ...rest }) => rest);
export const fitOf = (
  kd: Spectrum,
  depths: readonly number[],
  noise: number,
  normal = normalFrom(1),
): CardFit => fitCard(series(photograph(kd, depths, noise, normal)), conditions);
