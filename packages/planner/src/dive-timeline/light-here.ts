/** What the model says of one moment of a dive: the card as the camera sees it, what is metered, the red that is left. */
import {
  illuminance_lx,
  integrateProduct,
  multiply,
  pathTransmittance,
  type Spectrum,
} from "@sunfathom/optics";
import { topLight } from "../attenuation/losses.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import { budgetAt } from "../exposure-loss/budget.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { daylightUnder } from "../light/daylight.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { stageAt } from "../light/stage.js";
import { sunOf } from "../light/sun.js";
import { sunAtPlace } from "../light/sun-at-place.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { cardLight } from "../white-balance/avoidable-cast.js";

/** All but `redLoss` in the order of its names, as logarithms to base 2. */
export interface LightHere {
  /** Raw values of a white card at the subject, behind filter and water. */
  red: number;
  green: number;
  blue: number;
  /** Mean raw values of the whole picture: what a camera that balances by itself looks at. The card's where it does not. */
  wholeRed: number;
  wholeGreen: number;
  wholeBlue: number;
  /** Exposure value at ISO 100 that the camera meters on its subject. */
  ev100: number;
  /** What the camera's red channel has lost since just below the surface, stops. */
  redLoss: number;
}

export const NAMES = [
  "red",
  "green",
  "blue",
  "wholeRed",
  "wholeGreen",
  "wholeBlue",
  "ev100",
  "redLoss",
] as const satisfies readonly (keyof LightHere)[];

/** The conditions of a dive, minute by minute: the water stays, the sun moves where place and time are known. */
export class Hours {
  readonly start: Conditions;
  readonly #moves: boolean;
  readonly #begin_ms: number;
  readonly #known = new Map<number, Conditions>();

  /** @throws SceneProblem as `conditionsOf` does, and without any light */
  constructor(readonly scene: Scene) {
    this.start = conditionsOf(scene);
    requireLight(this.start);
    this.#moves = scene.daylight_basis === "place_time";
    this.#begin_ms = this.#moves ? sunAtPlace(scene).instant.getTime() : 0;
  }

  get sunMoves(): boolean {
    return this.#moves;
  }

  /** @throws SceneProblem where the sun has sunk too low by then */
  at(time_s: number): Conditions {
    if (!this.#moves || time_s === 0) return this.start;
    const known = this.#known.get(time_s);
    if (known !== undefined) return known;
    const { local_time, time_zone: _, ...rest } = this.scene;
    const scene: Scene = { ...rest, time: new Date(this.#begin_ms + time_s * 1000).toISOString() };
    try {
      const sun = sunOf(scene);
      const now = { ...this.start, scene, sun, daylight: sun && daylightUnder(sun, scene) };
      requireLight(now);
      this.#known.set(time_s, now);
      return now;
    } catch (error) {
      if (error instanceof SceneProblem && error.field === "time" && local_time !== undefined)
        throw new SceneProblem(error.refusal, "local_time", error.within);
      throw error;
    }
  }
}

const log2 = Math.log2;

/** @param conditions of the moment, with the filter that is on the lens then */
export function lightAt(conditions: Conditions, nuisance: Nuisance, depth_m: number): LightHere {
  const { scene } = conditions;
  const world = underwater(conditions, nuisance);
  const filter = lensFilterOf(scene, nuisance);
  const sensor = sensorOf(scene, nuisance);
  const profile = sensorProfile(sensor);
  const [red, green, blue] = rawOf(profile, cardLight(world, filter, depth_m));
  const isAuto = scene.white_balance_mode === "auto";
  const whole = isAuto
    ? rawOf(profile, multiply(stageAt(world, depth_m).whole(), filter))
    : [red, green, blue];
  const top = topLight(conditions);
  const seen = (light: Spectrum): number => integrateProduct(light, sensor.red);
  const below = multiply(pathTransmittance(world.kd_per_m, depth_m), top);
  return {
    red: log2(red),
    green: log2(green),
    blue: log2(blue),
    wholeRed: log2(whole[0] ?? red),
    wholeGreen: log2(whole[1] ?? green),
    wholeBlue: log2(whole[2] ?? blue),
    ev100: budgetAt(world, filter, depth_m).meteredEv100,
    redLoss: log2(seen(top) / seen(below)),
  };
}

/** Illuminance just below the surface, lx. */
export const topLux = (conditions: Conditions): number => illuminance_lx(topLight(conditions));
