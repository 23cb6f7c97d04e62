import {
  add,
  beamAngleInWater_deg,
  beamShareOnSubject,
  CLEAR,
  filterTransmittance,
  GRID_SIZE,
  LED_NAMES,
  lampIrradiance,
  ledIlluminant,
  multiply,
  peakIntensity_cd,
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
export const lampIntensity_cd = (lamp: Lamp): number =>
  peakIntensity_cd(lamp.flux_lm * lamp.count, beamInWater_deg(lamp));

/** Full beam angle in water. */
export const beamInWater_deg = ({
  beam_angle_deg,
  beam_angle_medium,
}: Pick<Lamp, "beam_angle_deg" | "beam_angle_medium">): number =>
  beam_angle_medium === "air" ? beamAngleInWater_deg(beam_angle_deg) : beam_angle_deg;

/** How a beam meets the subject. */
export interface Aim {
  /** Between the middle of the beam and the middle of the subject. */
  aimOff_deg: number;
  subjectRadius_m: number;
}

/** Mean intensity towards a subject at a distance, as a share of that in the middle of the beam. */
export function beamShareAt(
  beam_deg: number,
  distance_m: number,
  { aimOff_deg, subjectRadius_m }: Aim,
): number {
  const halfAngle_deg = (Math.atan(subjectRadius_m / distance_m) * 180) / Math.PI;
  return beamShareOnSubject(beam_deg, aimOff_deg, halfAngle_deg);
}

export interface LampLight {
  aim: Aim;
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
    const distance_m = light.distance_m ?? lamp.distance_m;
    const share = beamShareAt(beamInWater_deg(lamp), distance_m, light.aim) * light.intensityScale;
    const intensity_cd = lampIntensity_cd(lamp) * share;
    sum = add(sum, lampIrradiance(spectrum, intensity_cd, distance_m, light.attenuation_per_m));
  }
  return sum;
}

/** A spectrum of all lamps as they leave their ports, per lumen of the first: for what the water takes from them. */
export function lampsAtPort(lamps: readonly Lamp[]): Spectrum {
  return lamps
    .map((lamp) => scale(multiply(lampSpectrum(lamp), lampFilter(lamp)), lampIntensity_cd(lamp)))
    .reduce((sum, s) => add(sum, s), new Float64Array(GRID_SIZE));
}
