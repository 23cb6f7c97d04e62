/**
 * The light of a dive on a grid of depth and time. A dive has up to twenty thousand samples; the model is asked at fixed depths and
 * times around them, when first needed, and what it says is drawn straight between them, as logarithms. `light-grid.test.ts` holds
 * how far that is off.
 */
import type { Conditions } from "../light/conditions.js";
import { itemAt } from "../lists/non-empty.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { Hours, type LightHere, lightAt, NAMES } from "./light-here.js";
import { SHALLOWEST_M } from "./profile.js";

/** How far what is drawn may be off what the model says, as the tests hold it. */
export const DRAWN_WITHIN = { stops: 0.02, delta_e00: 0.1 };

/** Between depths: light bends most near the surface, where red goes. */
const STEP_M = 0.25;
const STEP_SHARE = 0.12;
const DEEPEST_M = 101;
const DEPTHS_M: readonly number[] = (() => {
  const depths = [SHALLOWEST_M];
  for (let at = SHALLOWEST_M; at < DEEPEST_M; ) {
    at += Math.max(STEP_M, STEP_SHARE * at);
    depths.push(at);
  }
  return depths;
})();
/** Between times, where the sun moves: less than two degrees of its height. */
const STEP_S = 450;

const mixed = (a: LightHere, b: LightHere, share: number): LightHere => {
  if (share === 0) return a;
  const made = { ...a };
  for (const name of NAMES) made[name] = a[name] + share * (b[name] - a[name]);
  return made;
};

/** How many depths and times of the model a dive takes at most. */
export function nodesFor(
  min_depth_m: number,
  max_depth_m: number,
  length_s: number,
  sunMoves: boolean,
): number {
  const depths = DEPTHS_M.filter(
    (depth) => depth > min_depth_m * 0.85 && depth < max_depth_m * 1.15 + STEP_M,
  );
  return (depths.length + 1) * (sunMoves ? Math.ceil(length_s / STEP_S) + 1 : 1);
}

/** The light of a dive with one filter, or none, on the lens. */
export class LightGrid {
  readonly hours: Hours;
  readonly #known = new Map<number, LightHere>();

  /** @throws SceneProblem for a scene that the model cannot answer for */
  constructor(readonly scene: Scene) {
    this.hours = new Hours(scene);
  }

  /** How many points of it were worked out. */
  get size(): number {
    return this.#known.size;
  }

  conditionsAt(time_s: number): Conditions {
    return this.hours.at(time_s);
  }

  at(time_s: number, depth_m: number): LightHere {
    if (!this.hours.sunMoves) return this.#atNode(0, depth_m);
    const before = Math.floor(time_s / STEP_S);
    const share = time_s / STEP_S - before;
    const from = this.#atNode(before, depth_m);
    return share === 0 ? from : mixed(from, this.#atNode(before + 1, depth_m), share);
  }

  /** As the model says it, without drawing. */
  exactlyAt(time_s: number, depth_m: number): LightHere {
    return lightAt(this.hours.at(time_s), NOMINAL, depth_m);
  }

  #atNode(node: number, depth_m: number): LightHere {
    let below = 1;
    while (itemAt(DEPTHS_M, below) < depth_m) below += 1;
    const [from_m, to_m] = [itemAt(DEPTHS_M, below - 1), itemAt(DEPTHS_M, below)];
    const share = Math.max(0, (depth_m - from_m) / (to_m - from_m));
    return mixed(this.#node(node, below - 1), this.#node(node, below), share);
  }

  #node(node: number, depth: number): LightHere {
    const key = node * DEPTHS_M.length + depth;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const light = lightAt(this.hours.at(node * STEP_S), NOMINAL, itemAt(DEPTHS_M, depth));
    this.#known.set(key, light);
    return light;
  }
}
