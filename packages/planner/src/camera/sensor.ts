import { meanSensor, type Sensor } from "@sunfathom/optics";
import { remember } from "./remember.js";

/**
 * The mean sensor, or one with more or less cross-talk in red, in standard deviations between cameras. Apart from its profile:
 * whoever asks only what a channel sees carries no colour chart.
 */
export const sensorWith = remember(
  (crosstalkSd: number): Sensor => meanSensor(crosstalkSd),
  (crosstalkSd: number) => `${crosstalkSd}`,
  16,
);
