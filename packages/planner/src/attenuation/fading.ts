import { type EqualDepths, illuminance_lx, SEEN_COUNT, type Spectrum } from "@sunfathom/optics";
import type { Conditions } from "../light/conditions.js";
import type { Underwater } from "../light/underwater.js";
import { LossesOfScene, topLight } from "./losses.js";
import { redDownTo_m } from "./red-depths.js";

/** Place of the eye among those that see the light. */
const PHOTOPIC = 3;
/** Shares of red down to which its reach is told. */
const RED_SHARES = [0.1, 0.01];

/** All that an answer tells of how a scene's light fades, as numbers in one state of the world after another. */
export class Fading {
  readonly #losses: LossesOfScene;
  readonly #light: Spectrum;
  readonly #level: number;
  readonly #redDepths_m = new Map<Spectrum, number[]>();

  constructor(conditions: Conditions, depths: EqualDepths) {
    this.#losses = new LossesOfScene(conditions, depths);
    this.#light = topLight(conditions);
    this.#level = Math.log2(illuminance_lx(this.#light));
  }

  /** Depth by depth the losses in stops and the level of light, log2 lux; then how far red reaches, m. */
  numbersIn(world: Underwater): number[] {
    const level = this.#level + Math.log2(world.nuisance.daylightScale);
    const losses = this.#losses.in(world);
    const numbers: number[] = [];
    for (let at = 0; at < losses.length; at += SEEN_COUNT) {
      for (let k = 0; k < SEEN_COUNT; k++) numbers.push(losses[at + k]);
      numbers.push(level - losses[at + PHOTOPIC]);
    }
    return numbers.concat(this.#redDepthsIn(world));
  }

  #redDepthsIn({ kd_per_m }: Underwater): number[] {
    const known = this.#redDepths_m.get(kd_per_m);
    if (known !== undefined) return known;
    const depths_m = redDownTo_m(this.#light, kd_per_m, RED_SHARES);
    this.#redDepths_m.set(kd_per_m, depths_m);
    return depths_m;
  }
}
