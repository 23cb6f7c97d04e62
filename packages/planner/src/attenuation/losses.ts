import {
  DepthLosses,
  type EqualDepths,
  illuminant,
  multiply,
  Observers,
  SEEN_COUNT,
  type Spectrum,
  WAVELENGTHS_NM,
  Y_BAR,
} from "@sunfathom/optics";
import { sensorWith } from "../camera/sensor.js";
import type { Conditions } from "../light/conditions.js";
import type { Underwater } from "../light/underwater.js";
import { band } from "./band.js";

/** Photons from 400 to 700 nm per energy, in any unit: losses are ratios. */
const QUANTA: Spectrum = multiply(band(400, 700), WAVELENGTHS_NM);
const D55: Spectrum = illuminant("D55");

/** Light just below the surface; an even sky of 5500 K where there is no daylight, for losses only. */
export const topLight = ({ daylight }: Conditions): Spectrum => daylight?.below.downwelling ?? D55;

const observersOfSensor = new WeakMap<Spectrum, Observers>();

/** Red, green and blue channel, eye and leaf. */
function observersIn({ nuisance }: Underwater): Observers {
  const { red, green, blue } = sensorWith(nuisance.crosstalkSd);
  let observers = observersOfSensor.get(red);
  if (observers === undefined) {
    observers = new Observers(red, green, blue, Y_BAR, QUANTA);
    observersOfSensor.set(red, observers);
  }
  return observers;
}

const workspace = new DepthLosses();

/**
 * Loss from just below the surface, in stops: at each depth the number for each who sees the light. Neither the brightness of
 * the sky nor most else that is not known bears on it, so that states of one water and one sensor share what is found.
 */
export class LossesOfScene {
  readonly #known = new Map<Spectrum, Map<number, Float64Array>>();

  readonly #light: Spectrum;

  constructor(
    conditions: Conditions,
    readonly depths: EqualDepths,
  ) {
    this.#light = topLight(conditions);
  }

  in(world: Underwater): Float64Array {
    const { kd_per_m, nuisance } = world;
    const bySensor = this.#known.get(kd_per_m) ?? new Map<number, Float64Array>();
    this.#known.set(kd_per_m, bySensor);
    const known = bySensor.get(nuisance.crosstalkSd);
    if (known !== undefined) return known;
    const losses = new Float64Array(this.depths.count * SEEN_COUNT);
    workspace.setLight(this.#light, observersIn(world));
    workspace.over(kd_per_m, this.depths, losses);
    bySensor.set(nuisance.crosstalkSd, losses);
    return losses;
  }
}
