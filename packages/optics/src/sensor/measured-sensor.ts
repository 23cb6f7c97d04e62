import { onGrid } from "../spectrum/resample.js";
import type { Sensor } from "./mean-sensor.js";

/** Sensitivities at one wavelength, per watt, in any unit that all samples share. */
export interface SensorSample {
  wavelength_nm: number;
  red: number;
  green: number;
  blue: number;
}

/**
 * A sensor by its measured curves: straight between samples, nothing beyond them.
 * @param samples two or more, wavelengths rising
 */
export function measuredSensor(samples: readonly SensorSample[]): Sensor {
  const wavelengths = samples.map(({ wavelength_nm }) => wavelength_nm);
  const curve = (channel: "red" | "green" | "blue") =>
    onGrid(
      wavelengths,
      samples.map((sample) => sample[channel]),
      0,
    );
  return { red: curve("red"), green: curve("green"), blue: curve("blue") };
}
