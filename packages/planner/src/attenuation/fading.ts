import { type EqualDepths, illuminance_lx, type Spectrum } from "@sunfathom/optics";
import type { Conditions } from "../light/conditions.js";
import type { Underwater } from "../light/underwater.js";
import { LossesOfScene, type LossStops, topLight } from "./losses.js";
import { redDownTo_m } from "./red-depths.js";

/** How light has faded, depth by depth. */
export interface FadedLight extends LossStops {
  /** Illuminance, log2 lux. */
  level: Float64Array;
}

/** Depths at which so much of red is left. */
interface RedReach {
  redToTenth_m: number;
  redToHundredth_m: number;
}

/** All that an answer tells of how a scene's light fades, in one state of the world. */
export interface FadingFigures extends RedReach {
  depths: FadedLight;
}

/** The figures of one state of the world after another. */
export class Fading {
  readonly #losses: LossesOfScene;
  readonly #light: Spectrum;
  readonly #level: number;
  readonly #redReach = new Map<Spectrum, RedReach>();

  constructor(conditions: Conditions, depths: EqualDepths) {
    this.#losses = new LossesOfScene(conditions, depths);
    this.#light = topLight(conditions);
    this.#level = Math.log2(illuminance_lx(this.#light));
  }

  in(world: Underwater): FadingFigures {
    const level = this.#level + Math.log2(world.nuisance.daylightScale);
    const { redToTenth_m, redToHundredth_m } = this.#redReachIn(world);
    const { red, green, blue, photopic, par } = this.#losses.in(world);
    return {
      depths: { red, green, blue, photopic, par, level: photopic.map((loss) => level - loss) },
      redToTenth_m,
      redToHundredth_m,
    };
  }

  #redReachIn({ kd_per_m }: Underwater): RedReach {
    const known = this.#redReach.get(kd_per_m);
    if (known !== undefined) return known;
    const redToTenth_m = redDownTo_m(this.#light, kd_per_m, 0.1);
    const redToHundredth_m = redDownTo_m(this.#light, kd_per_m, 0.01, redToTenth_m);
    const reach = { redToTenth_m, redToHundredth_m };
    this.#redReach.set(kd_per_m, reach);
    return reach;
  }
}
