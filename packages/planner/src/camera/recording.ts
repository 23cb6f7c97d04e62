/**
 * What a camera records of a light level, and how sure each value is: photons, read noise, gain, clipping and code values.
 * Values are counted with 1 at the top of the recording.
 */
import { focalPlaneExposure_lx_s, saturationExposure_lx_s, twoTo } from "@sunfathom/optics";
import type { Settings } from "./exposure-settings.js";
import type { Vector3 } from "./matrix.js";
import type { Pixels } from "./pixels.js";
import { type Transfer, transferSlope } from "./transfer.js";

/** The highest code value of a recording of so many bits, at most 30. */
export const highestCode = (bits: number): number => (1 << bits) - 1;

/** Share of full scale that a raw exposure of `lux` (through a lens on a surface of that luminous exitance / pi) reaches. */
export function shareOfFullScale(
  lux: number,
  { iso, f_number, shutter_s }: Pick<Settings, "iso" | "f_number" | "shutter_s">,
): number {
  return focalPlaneExposure_lx_s(lux / Math.PI, f_number, shutter_s) / saturationExposure_lx_s(iso);
}

/** Product of ISO, shutter time and 1/N^2 at which a raw exposure of `lux` just fills the scale. */
export function fillingSensitivity(lux: number): number {
  return 1 / shareOfFullScale(lux, { iso: 1, f_number: 1, shutter_s: 1 });
}

export interface RecordedChannel {
  /** Linear value after balance, clipped at 1. */
  value: number;
  /** Variance of it. */
  variance: number;
}

export interface Recorder {
  settings: Settings;
  /** What neutral density in front of the lens takes, in stops. */
  neutral_stops: number;
  gains: Vector3;
  bits: number;
  curve: Transfer;
  pixels: Pixels;
  fullWellScale: number;
}

export const capacityOf = ({ settings, pixels, fullWellScale }: Recorder): number =>
  (pixels.full_well_iso_100_e * fullWellScale * 100) / settings.iso;

/** Electrons that a raw exposure in lux frees, as far as the sensor holds them at this ISO. */
export const electronsOf = (recorder: Recorder, lux: number): number =>
  Math.min(1, shareOfFullScale(lux * twoTo(-recorder.neutral_stops), recorder.settings)) *
  capacityOf(recorder);

/** One channel of a raw exposure in lux after balance, before it is given a code value: its variance is of photons and reading. */
export function capture(recorder: Recorder, channel: 0 | 1 | 2, lux: number): RecordedChannel {
  return capturing(recorder)(channel, lux);
}

/** The same for many exposures: what they share is worked out once. */
export function capturing(recorder: Recorder): (channel: 0 | 1 | 2, lux: number) => RecordedChannel {
  const { gains, pixels, settings, neutral_stops } = recorder;
  const capacity = capacityOf(recorder);
  const sharePerLux = shareOfFullScale(twoTo(-neutral_stops), settings);
  const read_e2 = pixels.read_noise_e ** 2;
  return (channel, lux) => {
    const gain = gains[channel];
    const share = Math.min(1, lux * sharePerLux);
    const relative = gain / capacity;
    return {
      value: Math.min(1, gain * share),
      variance: (relative * relative * (share * capacity + read_e2)) / pixels.averaged,
    };
  };
}

/** Variance that code values add to a value of the recording: at most that of one code for all light that there is. */
export function codeVariance({ bits, curve, pixels }: Recorder, value: number): number {
  const step = Math.min(1, 1 / (highestCode(bits) * transferSlope(curve, value)));
  return (step * step) / 12 / pixels.averaged;
}

/** One channel's record of a raw exposure in lux. */
export function record(recorder: Recorder, channel: 0 | 1 | 2, lux: number): RecordedChannel {
  const { value, variance } = capture(recorder, channel, lux);
  return { value, variance: variance + codeVariance(recorder, value) };
}

/** A record with its signal over noise. */
export function recordedGrey(
  recorder: Recorder,
  channel: 0 | 1 | 2,
  lux: number,
): RecordedChannel & { signalToNoise: number } {
  const recorded = record(recorder, channel, lux);
  return { ...recorded, signalToNoise: recorded.value / Math.sqrt(recorded.variance) };
}

/** Code values that one stop around a linear value takes up on a recording of so many bits. */
export const codesPerStop = (linear: number, bits: number, curve: Transfer): number =>
  highestCode(bits) * transferSlope(curve, linear) * linear * Math.LN2;
