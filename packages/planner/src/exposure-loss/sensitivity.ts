import type { ExposureAtDepth } from "../result/exposure-loss.js";

/** Exposure value at ISO 100 that the camera meters on the subject: its own light and the haze over it. */
export const meteredOnSubject = ({ exposure_value_ev100, haze_gain_stops }: ExposureAtDepth): number =>
  exposure_value_ev100.likely + (haze_gain_stops?.likely ?? 0);

/** Product of ISO, shutter time and 1/N^2 that an exposure value at ISO 100 asks for. */
export const sensitivityFor = (ev100: number): number => 100 * 2 ** -ev100;
