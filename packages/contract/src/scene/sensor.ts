import { z } from "zod/v3";
import { list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";

const sensitivity = (colour: string, example: number) =>
  quantity({
    description: `Sensitivity of the ${colour} channel, as a share of the highest of all three.`,
    unit: "1",
    min: 0,
    max: 1,
    example,
  });

export const SensorSample = z
  .object({
    wavelength_nm: quantity({
      description: "Wavelength of the light, in air.",
      unit: "nm",
      min: 380,
      max: 780,
      example: 550,
    }),
    red: sensitivity("red", 0.08),
    green: sensitivity("green", 0.92),
    blue: sensitivity("blue", 0.06),
  })
  .strict()
  .describe("What a camera's channels see of light of one wavelength, per watt, before any white balance.");

/** The camera's own curves. */
export const sensorField = {
  sensor_samples: list(SensorSample, {
    description:
      "Measured sensitivities of your camera, in place of the mean of 11 cameras: 4 to 401 samples, wavelengths rising, from 420 nm or less to 680 nm or more. The channels see nothing beyond the samples, and between 400 and 700 nm at least a 100000th of their own peak, since colour mosaics leak (from memory). The curves are taken as exact.",
    minItems: 4,
    maxItems: 401,
    example: [
      { wavelength_nm: 400, red: 0.01, green: 0.02, blue: 0.2 },
      { wavelength_nm: 460, red: 0.02, green: 0.1, blue: 0.85 },
      { wavelength_nm: 530, red: 0.06, green: 1, blue: 0.15 },
      { wavelength_nm: 600, red: 0.75, green: 0.3, blue: 0.02 },
      { wavelength_nm: 700, red: 0.05, green: 0.02, blue: 0 },
    ],
  }),
};
