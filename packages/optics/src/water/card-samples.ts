/** What a diver brings of a grey card, and how it is made comparable: logarithms of light per channel, or a refusal. */
import { type MalformedCard, OpticsDomainError } from "../domain-error.js";
import { linearLight, type TransferCurve } from "../sensor/transfer-curve.js";

export type Rgb = readonly [red: number, green: number, blue: number];

export interface CardSample {
  depth_m: number;
  /** Mean of the card in the picture, red, green, blue, as stored, above 0 and below 1. */
  rgb: Rgb;
  /** How long and how open; leave out when locked or unknown. */
  exposure?: { iso: number; shutter_s: number; f_number: number };
  /** What the white balance multiplied each channel by, when it was not the same in all pictures. */
  balance_gains?: Rgb;
}

export interface CardSeries {
  samples: readonly CardSample[];
  transfer_curve: TransferCurve;
  /** One exposure for all pictures: the same as giving it with each. */
  locked_exposure?: boolean;
  /** Raw pictures, or one balance for all: the same as giving the gains with each. */
  locked_balance?: boolean;
}

export interface ComparableCards {
  depths_m: number[];
  /** ln of light per channel, up to one constant per channel; and one per picture where exposures are unknown. */
  lnLight: Rgb[];
  exposuresKnown: boolean;
}

const LEAST_SPAN_M = 2;
/** From here up a channel may have been clipped. */
const CLIPPED_FROM = 0.995;
/** Below this a channel is noise and black level. */
const LOST_BELOW = 1e-4;
const MOST_DEPTH_M = 60;

const malformed = (parameters: MalformedCard): OpticsDomainError =>
  new OpticsDomainError({ code: "card_samples_malformed", parameters });
const positive = (values: readonly number[]): boolean => values.every((v) => v > 0 && Number.isFinite(v));

/** All or none of the samples may carry a field. */
function givenByAll(samples: readonly CardSample[], field: "exposure" | "balance_gains"): boolean {
  const count = samples.filter((sample) => sample[field] !== undefined).length;
  if (count > 0 && count < samples.length) {
    throw malformed({ case: "not_with_all", field, given: count, samples: samples.length });
  }
  return count > 0;
}

function requireReadable({ depth_m, rgb, exposure, balance_gains }: CardSample, curve: TransferCurve): void {
  if (!(depth_m >= 0 && depth_m <= MOST_DEPTH_M)) {
    throw malformed({ case: "depth", depth_m, max_depth_m: MOST_DEPTH_M });
  }
  for (const stored of rgb) {
    if (stored >= CLIPPED_FROM) throw malformed({ case: "clipped", depth_m, value: stored });
    if (!(linearLight(stored, curve) >= LOST_BELOW))
      throw malformed({ case: "dark", depth_m, value: stored });
  }
  if (exposure && !positive([exposure.iso, exposure.shutter_s, exposure.f_number])) {
    throw malformed({ case: "exposure_not_positive", depth_m });
  }
  if (balance_gains && !positive(balance_gains)) {
    throw malformed({ case: "gains_not_positive", depth_m });
  }
}

/**
 * @throws OpticsDomainError `card_samples_too_few` for fewer than two depths or less than 2 m between them;
 * `card_samples_malformed` for clipped, dark or unreadable values, for a balance that may have moved between pictures, or
 * for exposures and gains that only some samples carry.
 */
export function comparableCards(series: CardSeries): ComparableCards {
  const { samples, transfer_curve } = series;
  const depths = samples.map(({ depth_m }) => depth_m);
  for (const sample of samples) requireReadable(sample, transfer_curve);
  const span = Math.max(...depths) - Math.min(...depths);
  if (!(span >= LEAST_SPAN_M)) {
    throw new OpticsDomainError({
      code: "card_samples_too_few",
      parameters: { span_m: Number(Math.max(0, span).toFixed(1)), least_span_m: LEAST_SPAN_M },
    });
  }
  const withExposure = givenByAll(samples, "exposure");
  const withGains = givenByAll(samples, "balance_gains");
  if (!withGains && series.locked_balance !== true) {
    throw malformed({ case: "balance_unlocked" });
  }
  const lnLight = samples.map(({ rgb, exposure, balance_gains }): Rgb => {
    const seen = exposure ? (exposure.iso * exposure.shutter_s) / exposure.f_number ** 2 : 1;
    const ln = (channel: 0 | 1 | 2): number =>
      Math.log(linearLight(rgb[channel], transfer_curve) / (seen * (balance_gains?.[channel] ?? 1)));
    return [ln(0), ln(1), ln(2)];
  });
  return { depths_m: depths, lnLight, exposuresKnown: withExposure || series.locked_exposure === true };
}
