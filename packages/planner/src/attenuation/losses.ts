import {
  DepthLosses,
  type EqualDepths,
  illuminant,
  multiply,
  Observers,
  SEEN_COUNT,
  type Sensor,
  type Spectrum,
  WAVELENGTHS_NM,
  Y_BAR,
} from "@sunfathom/optics";
import { rememberFor } from "../camera/remember.js";
import { sensorOf } from "../camera/sensor.js";
import type { Conditions } from "../light/conditions.js";
import type { Underwater } from "../light/underwater.js";
import { requireLossesEnd } from "../light/within-sight.js";
import { valueAt } from "../lists/non-empty.js";
import { band } from "./band.js";

/** Photons from 400 to 700 nm per energy, in any unit: losses are ratios. */
const QUANTA: Spectrum = multiply(band(400, 700), WAVELENGTHS_NM);
const D55: Spectrum = illuminant("D55");

/**
 * Light just below the surface; an even sky of 5500 K where there is no daylight, for losses only.
 * @throws SceneProblem where those are beyond numbers
 */
export function topLight({ scene, daylight, water }: Conditions): Spectrum {
  if (daylight) return daylight.below.downwelling;
  requireLossesEnd(scene, water.kd_reference_per_m);
  return D55;
}

/** In the order of `lossesFrom`. */
const observersOf = rememberFor(
  ({ red, green, blue }: Sensor) => new Observers(red, green, blue, Y_BAR, QUANTA),
);

/** Loss from just below the surface for each who sees the light, in stops, depth by depth. */
export interface LossStops {
  red: Float64Array;
  green: Float64Array;
  blue: Float64Array;
  /** Of the eye. */
  photopic: Float64Array;
  /** Of a leaf. */
  par: Float64Array;
}

/** Who stands at which place of a row of losses. */
function lossesFrom(rows: Float64Array, count: number): LossStops {
  const of = (place: number): Float64Array => {
    const column = new Float64Array(count);
    for (let d = 0; d < count; d++) column[d] = valueAt(rows, d * SEEN_COUNT + place);
    return column;
  };
  return { red: of(0), green: of(1), blue: of(2), photopic: of(3), par: of(4) };
}

const workspace = new DepthLosses();

/**
 * Losses at each depth. Neither the brightness of the sky nor most else that is not known bears on them, so that states of one
 * water and one sensor share what is found.
 */
export class LossesOfScene {
  readonly #known = new Map<Spectrum, Map<Sensor, LossStops>>();

  readonly #light: Spectrum;
  readonly #rows: Float64Array;

  constructor(
    conditions: Conditions,
    readonly depths: EqualDepths,
  ) {
    this.#light = topLight(conditions);
    this.#rows = new Float64Array(depths.count * SEEN_COUNT);
  }

  in(world: Underwater): LossStops {
    const { kd_per_m, scene, nuisance } = world;
    const sensor = sensorOf(scene, nuisance);
    const bySensor = this.#known.get(kd_per_m) ?? new Map<Sensor, LossStops>();
    this.#known.set(kd_per_m, bySensor);
    const known = bySensor.get(sensor);
    if (known !== undefined) return known;
    workspace.setLight(this.#light, observersOf(sensor));
    workspace.over(kd_per_m, this.depths, this.#rows);
    const losses = lossesFrom(this.#rows, this.depths.count);
    bySensor.set(sensor, losses);
    return losses;
  }
}
