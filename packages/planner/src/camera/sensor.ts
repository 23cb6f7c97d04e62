import { meanSensor, measuredSensor, type Sensor } from "@sunfathom/optics";
import type { Camera, SensorSample } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { remember, rememberFor } from "./remember.js";

const mean = remember(
  (crosstalkSd: number): Sensor => meanSensor(crosstalkSd),
  (crosstalkSd: number) => `${crosstalkSd}`,
  16,
);
const measured = rememberFor((samples: readonly SensorSample[]) => measuredSensor(samples));

/**
 * The scene's own sensor, or the mean of cameras with more or less cross-talk in red. The same object for the same curves, by which
 * others remember. Apart from its profile: whoever asks only what a channel sees carries no colour chart.
 */
export const sensorOf = (
  { sensor_samples }: Pick<Camera, "sensor_samples">,
  { crosstalkSd }: Pick<Nuisance, "crosstalkSd">,
): Sensor => (sensor_samples ? measured(sensor_samples) : mean(crosstalkSd));
