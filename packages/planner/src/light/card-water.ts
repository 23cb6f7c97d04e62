import { type CardFit, fitCard, illuminant, type Spectrum } from "@sunfathom/optics";
import { sensorOf } from "../camera/sensor.js";
import type { CardSample, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { Daylight } from "./daylight.js";

const asSample = ({ depth_m, red, green, blue, ...rest }: CardSample) => {
  const { iso, shutter_s, f_number, red_gain, green_gain, blue_gain } = rest;
  return {
    depth_m,
    rgb: [red, green, blue] as const,
    ...(iso !== undefined && shutter_s !== undefined && f_number !== undefined
      ? { exposure: { iso, shutter_s, f_number } }
      : {}),
    ...(red_gain !== undefined && green_gain !== undefined && blue_gain !== undefined
      ? { balance_gains: [red_gain, green_gain, blue_gain] as const }
      : {}),
  };
};

/** The water that a scene's card samples saw, under its daylight or, without one, under an even sky of 5500 K. */
export function fitCardWater(scene: Scene, daylight: Daylight | undefined): CardFit | undefined {
  if (!scene.card_samples) return undefined;
  const top: Spectrum = daylight?.below.downwelling ?? illuminant("D55");
  return fitCard(
    {
      samples: scene.card_samples.map(asSample),
      transfer_curve: scene.transfer_curve ?? "linear",
      ...(scene.locked_exposure === undefined ? {} : { locked_exposure: scene.locked_exposure }),
      ...(scene.locked_balance === undefined ? {} : { locked_balance: scene.locked_balance }),
    },
    { daylight: top, sensor: sensorOf(scene, NOMINAL), ...(daylight ? { mu0: daylight.below.mu0 } : {}) },
  );
}
