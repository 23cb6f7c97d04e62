/**
 * Spectral sensitivity of a camera's red, green and blue channels.
 *
 * Mean of 11 anonymous cameras, peak-normalised, with its spread (see tables/NOTICE-sensor.txt). Relative heights of the
 * channels are not in that table: red 0.75, green 1, blue 0.85, from memory, typical of colour mosaics behind an infrared
 * cut; they give raw daylight gains near 1.8 for red and 1.5 for blue.
 */
import { MEAN_SENSOR } from "../data/mean-sensor.js";
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";

export interface Sensor {
  red: Spectrum;
  green: Spectrum;
  blue: Spectrum;
}

const PEAK = { red: 0.75, green: 1, blue: 0.85 };
/** Below this the red channel sees green and blue by cross-talk rather than by design; its spread is kept up to there. */
const RED_CROSSTALK_BELOW_NM = 570;

const mean = (values: readonly number[]): Spectrum => onGrid(MEAN_SENSOR.wavelength_nm, values, 0);
const RED = mean(MEAN_SENSOR.mean_R);
const GREEN = mean(MEAN_SENSOR.mean_G);
const BLUE = mean(MEAN_SENSOR.mean_B);
const RED_SD = onGrid(MEAN_SENSOR.sd_wavelength_nm, MEAN_SENSOR.sd_R, 0);

/**
 * The mean sensor, or one whose red channel sees more (`crosstalkSd` > 0) or less green and blue, in standard deviations
 * between cameras. That cross-talk decides how early the red signal stops being red light.
 */
export function meanSensor(crosstalkSd = 0): Sensor {
  return {
    red: spectrumFrom((nm, i) => {
      const shift = nm < RED_CROSSTALK_BELOW_NM ? crosstalkSd * RED_SD[i] : 0;
      return PEAK.red * Math.max(0, RED[i] + shift);
    }),
    green: spectrumFrom((_, i) => PEAK.green * GREEN[i]),
    blue: spectrumFrom((_, i) => PEAK.blue * BLUE[i]),
  };
}
