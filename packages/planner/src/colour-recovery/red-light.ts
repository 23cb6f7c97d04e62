import type { Sensor } from "@sunfathom/optics";
import { perPlace, type Vector3 } from "../camera/matrix.js";
import { recordedGrey } from "../camera/recording.js";
import { GREY_REFLECTANCE, redShareAbove600, type Shot } from "../camera/shot.js";

/** Weight of red-minus-luminance noise in ISO 12232's noise-based speeds; from memory. */
const RED_NOISE_WEIGHT = Math.sqrt(0.279);
/** Signal over noise of those speeds, for red alone. */
export const EXCELLENT = 40 * RED_NOISE_WEIGHT;
export const ACCEPTABLE = 10 * RED_NOISE_WEIGHT;
/** Below this the red light is less than the noise of a pixel. */
export const GONE = 1;

/** What a shot shows of a grey of 18 %, per channel: raw exposure in lux, haze over it included. */
export const greyIn = ({ direct, haze }: Shot): Vector3 =>
  perPlace((channel) => GREY_REFLECTANCE * direct[channel] + haze[channel]);

export interface RedLight {
  /** Share of the red channel's signal on the subject that comes from above 600 nm, 0 to 1. */
  share: number;
  /** Signal over noise of that light alone on a grey: the rest of the channel's light adds noise, not red. */
  signalToNoise: number;
}

/** What is recorded of red light on a grey of 18 %. */
export function redLightIn(shot: Shot, sensor: Sensor): RedLight {
  const [red] = greyIn(shot);
  const share = redShareAbove600(sensor, shot.subject);
  // Haze carries no colour of the subject.
  const ofSubject = (GREY_REFLECTANCE * shot.direct[0]) / red;
  return { share, signalToNoise: share * ofSubject * recordedGrey(shot.recorder, 0, red).signalToNoise };
}
