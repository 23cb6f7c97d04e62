import {
  add,
  beamAngleInWater_deg,
  CLEAR,
  coneIntensity_cd,
  filterTransmittance,
  GRID_SIZE,
  LED_NAMES,
  lampIrradiance,
  ledIlluminant,
  multiply,
  perLumen,
  type Spectrum,
  scale,
  whiteLampPerLumen,
} from "@sunfathom/optics";
import type { Lamp } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { measuredCurve } from "./measured-curve.js";

/** Spectrum of a lamp without its filter, W nm^-1 per lumen. */
export function lampSpectrum(lamp: Lamp): Spectrum {
  if (lamp.led !== undefined) {
    const name = LED_NAMES.find((known) => known === lamp.led);
    if (name) return perLumen(ledIlluminant(name));
  } else if (lamp.cct_K !== undefined) {
    return whiteLampPerLumen(lamp.cct_K);
  }
  throw new SceneProblem({ code: "lamp_unknown", parameters: { leds: LED_NAMES } }, "lamps");
}

export function lampFilter({ filter_kind, filter_density, filter_transmittance }: Lamp): Spectrum {
  if (filter_transmittance) {
    return measuredCurve(filter_transmittance);
  }
  return filter_kind && filter_density !== undefined
    ? filterTransmittance(filter_kind, filter_density)
    : CLEAR;
}

/** Intensity of all lamps of one entry in the middle of the beam, cd. */
export function lampIntensity_cd(lamp: Lamp): number {
  const angle =
    lamp.beam_angle_medium === "air" ? beamAngleInWater_deg(lamp.beam_angle_deg) : lamp.beam_angle_deg;
  return coneIntensity_cd(lamp.flux_lm * lamp.count, angle);
}

export interface LampLight {
  /** Multiplies intensity. */
  intensityScale: number;
  /** Attenuation on the way to the subject, 1/m. */
  attenuation_per_m: Spectrum;
  /** In place of each lamp's own filter, where one is tried. */
  filter?: Spectrum;
  /** In place of each lamp's own distance, where one is tried. */
  distance_m?: number;
}

/** Irradiance of all lamps together on a subject that faces them, W m^-2 nm^-1. */
export function lampsIrradiance(lamps: readonly Lamp[], light: LampLight): Spectrum {
  let sum: Spectrum = new Float64Array(GRID_SIZE);
  for (const lamp of lamps) {
    const spectrum = multiply(lampSpectrum(lamp), light.filter ?? lampFilter(lamp));
    const intensity = lampIntensity_cd(lamp) * light.intensityScale;
    const part = lampIrradiance(
      spectrum,
      intensity,
      light.distance_m ?? lamp.distance_m,
      light.attenuation_per_m,
    );
    sum = add(sum, part);
  }
  return sum;
}

/** A spectrum of all lamps as they leave their ports, per lumen of the first: for what the water takes from them. */
export function lampsAtPort(lamps: readonly Lamp[]): Spectrum {
  return lamps
    .map((lamp) => scale(multiply(lampSpectrum(lamp), lampFilter(lamp)), lampIntensity_cd(lamp)))
    .reduce((sum, s) => add(sum, s), new Float64Array(GRID_SIZE));
}
