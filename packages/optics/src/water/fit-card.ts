/**
 * The water that a grey card saw: a member of the water family fitted to the card's light at two or more depths.
 *
 * Fitted are turbidity and hue mix, one constant per channel (sensor, card, distance, gains) and, where exposures are
 * unknown, one per picture. Only how fast the light fades is used, so neither the card's grey nor the sensor's absolute
 * sensitivity matters as long as they stay. The card must keep its pose and distance, out of shadow and lamp light.
 * Without exposures the picture's level says nothing: only differences between channels are then claimed, and what the
 * family makes of the level is as sure as its shape.
 * Standard errors rest on the scatter of the readings and on 2.5 % expected beforehand: with two or three cards noisier than
 * that they are up to a third too small.
 * Domain: waters of the family; daylight through one homogeneous water. Errors: OpticsDomainError, see below.
 */
import { OpticsDomainError } from "../domain-error.js";
import type { Sensor } from "../sensor/mean-sensor.js";
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";
import { type CardSeries, comparableCards, type Rgb } from "./card-samples.js";
import { coastalShareOfMix, familyKd } from "./hue-family.js";
import {
  type Bounds,
  type Fit,
  fitRobustly,
  HUBER_VARIANCE,
  jacobian,
  type Problem,
} from "./least-squares.js";
import { SCATTERING_SIGMA_LN, type WaterDescription } from "./water-description.js";
import { kdUnderSun, REFERENCE_MU0, waterFromKd } from "./water-optics.js";

export interface CardConditions {
  /** Daylight just below the surface, any scale. */
  daylight: Spectrum;
  /** The camera, with whatever filter is on it. */
  sensor: Sensor;
  /** Cosine of the sun's path in the water; the reference sun when left out. */
  mu0?: number;
}

export interface Estimate {
  value_per_m: number;
  standard_error_per_m: number;
}

export interface CardFit {
  description: WaterDescription;
  turbidity_per_m: number;
  /** 0 oceanic, 1 green coastal, 2 brown. */
  hue_mix: number;
  /** Mean attenuation of each channel's light between the shallowest and the deepest card; absent without exposures. */
  channel_kd?: { red: Estimate; green: Estimate; blue: Estimate };
  /** The same as differences between channels, which need no exposures. */
  channel_kd_difference: { red_minus_green: Estimate; blue_minus_green: Estimate };
  /** ln of measured over fitted light, per sample. */
  residuals_ln: Rgb[];
  rms_residual_ln: number;
  /** What is left of each reading's weight, 0 to 1, in the order of the residuals: readings far off count less. */
  weights: number[];
  /** Standard deviation of ln of a reading on which the standard errors rest. */
  noise_ln: number;
  /** What a card at these depths would have shown, as ln of light per channel, with the covariance of all of them, row by row. */
  shownAt: (depths_m: readonly number[]) => { ln: number[]; covariance: number[][] };
  /**
   * How the fit would move with its readings, to first order: attenuations of the channels, 1/m, and what a card at these depths would
   * have shown. @param lnLight by how much each reading moves, channel by channel, card by card
   */
  movedBy: (lnLight: readonly number[], depths_m: readonly number[]) => { channel_kd: Rgb; ln: number[] };
}

/** Noise of a card reading before any is seen, in ln, with the weight of so many readings. From memory. */
export const CARD_NOISE_LN = 0.025;
const EXPECTED_NOISE_WEIGHT = 3;
/** Any mix is plausible; this keeps a series that cannot tell from running away. */
const MIX_PRIOR = { mean: 1, sigma: 2 };
/** Noise and fit are found in turn, until the noise moves by less than a hundredth or so many rounds are done. */
const NOISE_ROUNDS = 10;
const MIX = { least: 0, most: 2 };
/** Bound of the constants in ln light: none in practice. */
const ANY_LEVEL = 100;
/** Turbidity and mix from which the fit sets out: one clear, one coastal; the better end is kept. */
const STARTS = [
  [0.02, 0.25],
  [0.3, 1.25],
] as const;
const LN_TURBIDITY = { least: Math.log(5e-4), most: Math.log(5) };
/** Readings that the best water misses by more than this on average contradict each other: about a quarter of a stop. */
const MOST_RMS_LN = 0.18;
/**
 * What three channels leave open of the spectral shape: root mean square over 440 to 600 nm of ln(Kd - Kw) between fit
 * and truth, where the truth is a water of Morel & Maritorena 2001 or Austin & Petzold 1986 (computed in the test).
 */
export const CARD_SHAPE_SIGMA_LN = 0.12;

const CHANNELS = ["red", "green", "blue"] as const;

/**
 * What a standard error from few readings must be widened by, so that 1.28 of it still reach the 10th and 90th percentile:
 * Student's t over the normal one, to 0.2 % from 4 degrees of freedom on (t = 1.533, 1.372, 1.337 for 4, 10, 16).
 */
export const studentWidening = (freedom: number): number => 1 + (0.68 + 0.42 / freedom) / freedom;

/** ln of the light of each channel at a depth, relative to the surface. */
function lnFaded(kd: Spectrum, depth_m: number, light: readonly Spectrum[]): Rgb {
  const ln = (channel: Spectrum): number => {
    let top = 0;
    let below = 0;
    for (let i = 0; i < GRID_SIZE; i++) {
      top += channel[i];
      below += channel[i] * Math.exp(-kd[i] * depth_m);
    }
    return Math.log(below / top);
  };
  return [ln(light[0]), ln(light[1]), ln(light[2])];
}

/** Mean attenuation between two depths, per channel. */
function channelKd(kd: Spectrum, from_m: number, to_m: number, light: readonly Spectrum[]): number[] {
  const top = lnFaded(kd, from_m, light);
  const below = lnFaded(kd, to_m, light);
  return top.map((value, k) => (value - below[k]) / (to_m - from_m));
}

/**
 * Fits a water to card samples.
 * @throws OpticsDomainError `card_samples_contradict` when no water fits them (the parameters name the worst sample),
 * `card_samples_outside_family` when the best water lies at an end of the family, and what `comparableCards` refuses.
 */
export function fitCard(series: CardSeries, conditions: CardConditions): CardFit {
  const { depths_m, lnLight, exposuresKnown } = comparableCards(series);
  const { daylight, sensor, mu0 = REFERENCE_MU0 } = conditions;
  const light = CHANNELS.map((name) => sensor[name].map((s, i) => s * daylight[i]));
  const kdOf = (lnTurbidity: number, mix: number): Spectrum =>
    kdUnderSun(
      waterFromKd(familyKd(Math.exp(lnTurbidity), mix), { coastalShare: coastalShareOfMix(mix) }),
      mu0,
    );

  // Parameters: ln turbidity, mix, a constant per channel, and a level per picture after the first where unknown.
  const levels = exposuresKnown ? 0 : depths_m.length - 1;
  // Only the first two parameters move the water: what they give is kept while the others are varied.
  let kept = { lnTurbidity: Number.NaN, mix: Number.NaN, faded: [] as Rgb[] };
  const faded = (lnTurbidity: number, mix: number): Rgb[] => {
    if (kept.lnTurbidity !== lnTurbidity || kept.mix !== mix) {
      const kd = kdOf(lnTurbidity, mix);
      kept = { lnTurbidity, mix, faded: depths_m.map((depth) => lnFaded(kd, depth, light)) };
    }
    return kept.faded;
  };
  const predicted = (p: readonly number[]): number[][] =>
    faded(p[0], p[1]).map((row, n) => {
      const level = levels > 0 && n > 0 ? p[4 + n] : 0;
      return row.map((ln, k) => ln + p[2 + k] + level);
    });
  const misses = (p: readonly number[]): number[] =>
    predicted(p).flatMap((row, n) => row.map((value, k) => lnLight[n][k] - value));
  const bounds: Bounds = {
    least: [LN_TURBIDITY.least, MIX.least, ...new Array<number>(3 + levels).fill(-ANY_LEVEL)],
    most: [LN_TURBIDITY.most, MIX.most, ...new Array<number>(3 + levels).fill(ANY_LEVEL)],
  };
  const problemAt = (noise: number, start: number[]): Problem => ({
    ...bounds,
    start,
    residuals: (p) => [...misses(p).map((miss) => miss / noise), (p[1] - MIX_PRIOR.mean) / MIX_PRIOR.sigma],
  });
  const fitFrom = ([turbidity, mix]: readonly [number, number]): Fit => {
    const blank = [Math.log(turbidity), mix, 0, 0, 0, ...new Array<number>(levels).fill(0)];
    const first = predicted(blank)[0];
    const start = blank.map((value, j) => (j >= 2 && j <= 4 ? lnLight[0][j - 2] - first[j - 2] : value));
    return fitRobustly(problemAt(CARD_NOISE_LN, start));
  };
  const rough = STARTS.map(fitFrom).reduce((a, b) => (b.loss < a.loss ? b : a));

  // Noise and fit in turn: the weights depend on the noise, and the noise on what the weights leave.
  const spent = rough.parameters.length - 1;
  const free = Math.max(0, 3 * depths_m.length - spent);
  let noise = CARD_NOISE_LN;
  let fit = rough;
  for (let round = 0; round < NOISE_ROUNDS; round++) {
    const squares = misses(fit.parameters).reduce((sum, miss, i) => sum + (fit.weights[i] * miss) ** 2, 0);
    const before = noise;
    noise = Math.sqrt(
      (EXPECTED_NOISE_WEIGHT * CARD_NOISE_LN ** 2 + squares / HUBER_VARIANCE) /
        (EXPECTED_NOISE_WEIGHT + free),
    );
    fit = fitRobustly(problemAt(noise, fit.parameters));
    if (Math.abs(noise / before - 1) < 0.01) break;
  }
  const all = misses(fit.parameters);
  const residuals_ln = depths_m.map((_, n): Rgb => [all[3 * n], all[3 * n + 1], all[3 * n + 2]]);
  const rms = Math.sqrt(all.reduce((sum, miss) => sum + miss * miss, 0) / all.length);
  if (rms > MOST_RMS_LN) {
    const size = residuals_ln.map((row) => Math.hypot(...row));
    const worst = size.indexOf(Math.max(...size));
    throw new OpticsDomainError({
      code: "card_samples_contradict",
      parameters: { rms_ln: Number(rms.toFixed(2)), worst_depth_m: depths_m[worst] },
    });
  }
  const [lnTurbidity, mix] = fit.parameters;
  if (lnTurbidity <= LN_TURBIDITY.least + 1e-6 || lnTurbidity >= LN_TURBIDITY.most - 1e-6) {
    throw new OpticsDomainError({
      code: "card_samples_outside_family",
      parameters: { case: lnTurbidity < 0 ? "clearer" : "murkier" },
    });
  }

  const from_m = Math.min(...depths_m);
  const to_m = Math.max(...depths_m);
  const kds = (p: readonly number[]): number[] => {
    const [red, green, blue] = channelKd(kdOf(p[0], p[1]), from_m, to_m, light);
    return [red, green, blue, red - green, blue - green];
  };
  const value = kds(fit.parameters);
  const slopes = jacobian(kds, fit.parameters, bounds);
  const cov = fit.unscaledCovariance;
  const widening = studentWidening(EXPECTED_NOISE_WEIGHT + free);
  const estimate = (i: number): Estimate => {
    const [s, t] = slopes[i];
    const variance = s * s * cov[0][0] + 2 * s * t * cov[0][1] + t * t * cov[1][1];
    return { value_per_m: value[i], standard_error_per_m: widening * Math.sqrt(variance) };
  };
  const shownIn =
    (asked_m: readonly number[]) =>
    (p: readonly number[]): number[] => {
      const water = kdOf(p[0], p[1]);
      return asked_m.flatMap((depth_m) => lnFaded(water, depth_m, light).map((ln, k) => ln + p[2 + k]));
    };
  const channels = { red: estimate(0), green: estimate(1), blue: estimate(2) };
  return {
    description: {
      kd_reference_per_m: familyKd(Math.exp(lnTurbidity), mix),
      coastalShare: coastalShareOfMix(mix),
      remainder_sigmas: [
        { cause: "card_noise", sigma_ln: widening * Math.sqrt(cov[0][0]) },
        { cause: "spectral_shape", sigma_ln: CARD_SHAPE_SIGMA_LN },
      ],
      scattering_sigmas: [{ cause: "scattering_per_water", sigma_ln: SCATTERING_SIGMA_LN }],
    },
    turbidity_per_m: Math.exp(lnTurbidity),
    hue_mix: mix,
    ...(exposuresKnown ? { channel_kd: channels } : {}),
    channel_kd_difference: { red_minus_green: estimate(3), blue_minus_green: estimate(4) },
    residuals_ln,
    rms_residual_ln: rms,
    weights: fit.weights.slice(0, all.length),
    noise_ln: noise,
    movedBy: (lnLight, asked_m) => {
      const rows = jacobian((p) => predicted(p).flat(), fit.parameters, bounds);
      const pull = cov.map((_, j) =>
        rows.reduce((sum, row, i) => sum + (fit.weights[i] * row[j] * lnLight[i]) / noise ** 2, 0),
      );
      const moved = cov.map((row) => row.reduce((sum, value, j) => sum + value * pull[j], 0));
      const along = (row: readonly number[]) => row.reduce((sum, slope, j) => sum + slope * moved[j], 0);
      const [red, green, blue] = slopes.map(along);
      return {
        channel_kd: [red, green, blue],
        ln: jacobian(shownIn(asked_m), fit.parameters, bounds).map(along),
      };
    },
    shownAt: (asked_m) => {
      const shown = shownIn(asked_m);
      const at = jacobian(shown, fit.parameters, bounds);
      const times = at.map((row) =>
        row.map((_, j) => row.reduce((sum, slope, i) => sum + slope * cov[i][j], 0)),
      );
      const covariance = times.map((row) =>
        at.map((other) => widening ** 2 * row.reduce((sum, value, j) => sum + value * other[j], 0)),
      );
      return { ln: shown(fit.parameters), covariance };
    },
  };
}
