import { type Spectrum, stopsToDensity } from "@sunfathom/optics";
import type { CameraState } from "../camera/camera-state.js";
import { FITS_WITHIN_STOPS } from "../camera/exposure-settings.js";
import { perPlace } from "../camera/matrix.js";
import { codesPerStop, electronsOf, recordedGrey } from "../camera/recording.js";
import { type Exposure, takeShot } from "../camera/shot.js";
import type { RedQuality } from "../codes/colour-recovery.js";
import type { Stage } from "../light/stage.js";
import type { Recording } from "../result/colour-recovery.js";
import { ACCEPTABLE, EXCELLENT, GONE, greyIn, redLightIn } from "./red-light.js";

/** What the contract has room for. */
const MOST_GAIN = 1e12;

export function qualityOf(signalToNoise: number): RedQuality {
  if (signalToNoise >= EXCELLENT) return "excellent";
  if (signalToNoise >= ACCEPTABLE) return "acceptable";
  return signalToNoise >= GONE ? "poor" : "gone";
}

/** What one recording of the grey comes to, before its red light is judged. */
export interface GreyRecord
  extends Omit<Recording, "recording" | "red_light_signal_to_noise" | "red_quality"> {
  /** Signal over noise of the red light above 600 nm alone. */
  redLight: number;
  exposure: Exposure;
}

export function recordGrey(
  stage: Stage,
  filter: Spectrum,
  camera: CameraState,
  given?: Exposure,
): GreyRecord {
  const shot = takeShot(stage, filter, camera, given);
  const { recorder, balance } = shot;
  const grey = greyIn(shot);
  const red = redLightIn(shot, camera.profile.sensor);
  const electrons = perPlace((k) => electronsOf(recorder, grey[k]));
  const recorded = perPlace((k) => recordedGrey(recorder, k, grey[k]));
  const afterBalance = perPlace((k) => grey[k] * balance.gains[k]);
  const { neutral_stops } = recorder;
  const { iso, f_number, shutter_s } = recorder.settings;
  return {
    iso,
    f_number,
    shutter_s,
    ...(neutral_stops > FITS_WITHIN_STOPS ? { neutral_density: stopsToDensity(neutral_stops) } : {}),
    red_electrons: electrons[0],
    green_electrons: electrons[1],
    blue_electrons: electrons[2],
    red_signal_to_noise: recorded[0].signalToNoise,
    green_signal_to_noise: recorded[1].signalToNoise,
    blue_signal_to_noise: recorded[2].signalToNoise,
    red_above_600_nm_share: red.share,
    red_gain_needed: Math.min(MOST_GAIN, Math.max(...afterBalance) / afterBalance[0]),
    red_codes_per_stop_8_bit: codesPerStop(recorded[0].value, 8, camera.curve),
    red_codes_per_stop_10_bit: codesPerStop(recorded[0].value, 10, camera.curve),
    red_codes_per_stop_12_bit: codesPerStop(recorded[0].value, 12, camera.curve),
    redLight: red.signalToNoise,
    exposure: recorder,
  };
}
