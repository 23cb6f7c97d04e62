import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";
import type { Sensor } from "./mean-sensor.js";

/** Sensitivities at one wavelength, per watt, in any unit that all samples share. */
export interface SensorSample {
  wavelength_nm: number;
  red: number;
  green: number;
  blue: number;
}

/** Colour mosaics leak: no channel is blind to light that another sees. Of the channel's peak; from memory, far below what is published. */
const LEAK = 1e-5;
const LEAKS_nm = { from: 400, to: 700 } as const;

/**
 * A sensor by its measured curves: straight between samples, nothing beyond them, and from 400 to 700 nm at least a leak in each channel.
 * @param samples two or more, wavelengths rising
 */
export function measuredSensor(samples: readonly SensorSample[]): Sensor {
  const wavelengths = samples.map(({ wavelength_nm }) => wavelength_nm);
  const curve = (channel: "red" | "green" | "blue"): Spectrum => {
    const values = samples.map((sample) => sample[channel]);
    const seen = onGrid(wavelengths, values, 0);
    const least = LEAK * Math.max(...values);
    return spectrumFrom((nm, i) =>
      nm < LEAKS_nm.from || nm > LEAKS_nm.to ? seen[i] : Math.max(least, seen[i]),
    );
  };
  return { red: curve("red"), green: curve("green"), blue: curve("blue") };
}
