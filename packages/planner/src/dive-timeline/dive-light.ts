/**
 * The light of a dive in one state of the world after another. What is not known shifts it by what it shifts it in the middle of the
 * dive, at a few depths between which that is drawn: it changes with depth as evenly as water does, and hardly with the sun.
 */
import { sensorOf } from "../camera/sensor.js";
import { type SensorProfile, sensorProfile } from "../camera/sensor-profile.js";
import { hasLensFilter } from "../light/lens-filter.js";
import { itemAt } from "../lists/non-empty.js";
import type { Scene } from "../scene/scene.js";
import { type Cause, causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { LightGrid } from "./light-grid.js";
import { type LightHere, lightAt, NAMES } from "./light-here.js";

/** What is on the lens. */
export type OnLens = "bare" | "filtered";

/** The light of a dive in one state of the world. */
export interface DiveWorld {
  profile: SensorProfile;
  at(lens: OnLens, time_s: number, depth_m: number): LightHere;
}

const DEPTHS_OF_SPREAD = 6;

export class DiveLight {
  readonly grids: Readonly<Record<OnLens, LightGrid>>;
  readonly causes: Cause[];
  readonly #depths_m: readonly number[];

  /**
   * @param scenes with and without the filter, their depths those that are asked for
   * @param middle_s middle of the dive
   * @throws SceneProblem for a scene that the model cannot answer for
   */
  constructor(
    readonly scenes: Readonly<Record<OnLens, Scene>>,
    readonly middle_s: number,
  ) {
    const bare = new LightGrid(scenes.bare);
    const grids = { bare, filtered: scenes.filtered === scenes.bare ? bare : new LightGrid(scenes.filtered) };
    this.grids = grids;
    const { min_depth_m, max_depth_m } = scenes.bare;
    this.#depths_m = Array.from(
      { length: DEPTHS_OF_SPREAD },
      (_, i) => min_depth_m * (max_depth_m / min_depth_m) ** (i / (DEPTHS_OF_SPREAD - 1)),
    );
    const nominal = hasLensFilter(scenes.filtered) && scenes.filtered.filter_transmittance === undefined;
    this.causes = [
      ...causesOf(grids.bare.hours.start),
      ...(nominal ? FILTER_CAUSES.filter(({ code }) => code !== "full_well") : []),
    ];
  }

  /** One state of the world. */
  in(nuisance: Nuisance): DiveWorld {
    const profile = sensorProfile(sensorOf(this.scenes.bare, nuisance));
    if (nuisance === NOMINAL)
      return { profile, at: (lens, time_s, depth_m) => this.grids[lens].at(time_s, depth_m) };
    const shifts = new Map<OnLens, LightHere[]>();
    const shiftsBehind = (lens: OnLens): LightHere[] => {
      const known = shifts.get(lens) ?? this.#shifts(lens, nuisance);
      shifts.set(lens, known);
      return known;
    };
    return {
      profile,
      at: (lens, time_s, depth_m) =>
        plus(this.grids[lens].at(time_s, depth_m), this.#between(shiftsBehind(lens), depth_m)),
    };
  }

  #shifts(lens: OnLens, nuisance: Nuisance): LightHere[] {
    const conditions = this.grids[lens].conditionsAt(this.middle_s);
    return this.#depths_m.map((depth_m) => {
      const shifted = { ...lightAt(conditions, nuisance, depth_m) };
      const nominal = lightAt(conditions, NOMINAL, depth_m);
      for (const name of NAMES) shifted[name] -= nominal[name];
      return shifted;
    });
  }

  #between(shifts: readonly LightHere[], depth_m: number): LightHere {
    let next = 1;
    while (next < shifts.length - 1 && itemAt(this.#depths_m, next) < depth_m) next += 1;
    const [from_m, to_m] = [itemAt(this.#depths_m, next - 1), itemAt(this.#depths_m, next)];
    const share = to_m > from_m ? (depth_m - from_m) / (to_m - from_m) : 0;
    const [from, to] = [itemAt(shifts, next - 1), itemAt(shifts, next)];
    const made = { ...from };
    for (const name of NAMES) made[name] += share * (to[name] - from[name]);
    return made;
  }
}

function plus(light: LightHere, shift: LightHere): LightHere {
  const made = { ...light };
  for (const name of NAMES) made[name] += shift[name];
  return made;
}
