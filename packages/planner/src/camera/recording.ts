/**
 * What a camera records of a light level, and how sure each value is: photons, read noise, gain, clipping and code values.
 *
 * Values are counted with 1 at the top of the recording. Full well, read noise and averaging are from memory of camera tests:
 * 20 000 electrons at ISO 100 (10 000 to 100 000 between cameras), 3 electrons, and four pixels to each one that is looked at.
 */
import { focalPlaneExposure_lx_s, power, saturationExposure_lx_s, twoTo } from "@sunfathom/optics";
import type { RecordingCurve } from "../scene/scene.js";
import type { Settings } from "./exposure-settings.js";
import type { Vector3 } from "./matrix.js";

const FULL_WELL_ISO_100_E = 20000;
const READ_NOISE_E = 3;
const PIXELS_AVERAGED = 4;

/** A logarithmic curve is taken to spread its codes evenly over 13 stops, evenly in light below them: from memory of cameras. */
const LOG_STOPS = 13;
const LEAST_LOG = 2 ** -LOG_STOPS;

/** The highest code value of a recording of so many bits, at most 30. */
const highestCode = (bits: number): number => (1 << bits) - 1;

/** Slope of the transfer curve at a linear value: share of the code values per linear unit. */
function transferSlope(curve: RecordingCurve, linear: number): number {
  if (curve === "linear") return 1;
  if (curve === "log") return 1 / (LOG_STOPS * Math.LN2 * Math.max(linear, LEAST_LOG));
  // ITU-R BT.709
  return linear < 0.018 ? 4.5 : 1.099 * 0.45 * power(linear, -0.55);
}

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
  curve: RecordingCurve;
  fullWellScale: number;
}

const capacityOf = ({ settings, fullWellScale }: Recorder): number =>
  (FULL_WELL_ISO_100_E * fullWellScale * 100) / settings.iso;

/** Electrons that a raw exposure in lux frees, as far as the sensor holds them at this ISO. */
export const electronsOf = (recorder: Recorder, lux: number): number =>
  Math.min(1, shareOfFullScale(lux * twoTo(-recorder.neutral_stops), recorder.settings)) *
  capacityOf(recorder);

/** One channel's record of a raw exposure in lux. */
export function record(recorder: Recorder, channel: 0 | 1 | 2, lux: number): RecordedChannel {
  const gain = recorder.gains[channel];
  const capacity = capacityOf(recorder);
  const electrons = electronsOf(recorder, lux);
  const value = Math.min(1, (gain * electrons) / capacity);
  const noise = (gain * gain * (electrons + READ_NOISE_E ** 2)) / capacity ** 2;
  const step = 1 / (highestCode(recorder.bits) * transferSlope(recorder.curve, value));
  return { value, variance: (noise + (step * step) / 12) / PIXELS_AVERAGED };
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
export const codesPerStop = (linear: number, bits: number, curve: RecordingCurve): number =>
  highestCode(bits) * transferSlope(curve, linear) * linear * Math.LN2;
