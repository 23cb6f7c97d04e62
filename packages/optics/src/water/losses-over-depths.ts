/**
 * Loss of light from just below the surface down to equally spaced depths, in stops, as five observers see it:
 * log2(integral of the light seen) - log2(integral of the light seen times exp(-Kd z)), by the trapezoid rule on the grid.
 *
 * Only the working out is short: exp(-Kd z) as powers of one step's transmittance, two depths in a pass, and of more than
 * some twenty depths most by interpolation (`depth-plan.ts`). The test beside this file holds it to the formula.
 */
import { type DepthPlan, depthPlan, everyDepth } from "../fast/depth-plan.js";
import { expNegative } from "../fast/exp-negative.js";
import { LightSeen, type Observers, SEEN_COUNT } from "../fast/light-seen.js";
import { log2 } from "../fast/log2.js";
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

export interface EqualDepths {
  first_m: number;
  step_m: number;
  count: number;
}

/** More than interpolation may be off, and far less than an answer shows. */
const TOLERANCE_STOPS = 1e-7;

const ONES: Spectrum = new Float64Array(GRID_SIZE).fill(1);

/** Losses in one light after another: what is worked out on the way is kept in the same memory. */
export class DepthLosses {
  readonly #seen = new LightSeen();
  readonly #surface = new Float64Array(2 * SEEN_COUNT);
  readonly #first = new Float64Array(GRID_SIZE);
  /** Transmittance of 0, 1, 2 ... steps; the first `#powersKnown` belong to the water at hand. */
  readonly #powers: Spectrum[] = [ONES];
  #powersKnown = 1;
  /** Losses where they are integrated, with room for two depths at a time. */
  #integrated = new Float64Array(0);

  /** Takes a light just below the surface, in any unit, and who sees it. */
  setLight(light: Spectrum, observers: Observers): void {
    this.#seen.set(light, observers, this.#surface);
    for (let c = 0; c < SEEN_COUNT; c++) this.#surface[c] = log2(this.#surface[c]);
  }

  /** @param out written from `at` on, depth by depth, at each red, green, blue, photopic and quanta. */
  over(kd_per_m: Spectrum, depths: EqualDepths, out: Float64Array, at = 0): void {
    const plan = depthPlan(depths.count);
    this.#integrate(plan, kd_per_m, depths);
    if (!this.#holds(plan)) {
      const every = everyDepth(depths.count);
      this.#integrate(every, kd_per_m, depths);
      this.#spread(every, out, at);
    } else this.#spread(plan, out, at);
  }

  #integrate({ integrated }: DepthPlan, kd_per_m: Spectrum, { first_m, step_m }: EqualDepths): void {
    const room = (integrated.length + 1) * SEEN_COUNT;
    if (this.#integrated.length < room) this.#integrated = new Float64Array(room);
    this.#setStep(kd_per_m, step_m);
    this.#seen.startAt(this.#leftAtFirst(kd_per_m, first_m, step_m));
    let at = 0;
    for (let k = 0; k < integrated.length; k += 2) {
      const one = integrated[k];
      const two = integrated[Math.min(k + 1, integrated.length - 1)];
      this.#seen.sumAtNextTwo(
        this.#power(one - at),
        this.#power(two - one),
        this.#integrated,
        k * SEEN_COUNT,
      );
      at = two;
    }
    toLosses(this.#integrated, integrated.length, this.#surface);
  }

  #setStep(kd_per_m: Spectrum, step_m: number): void {
    this.#powers[1] ??= new Float64Array(GRID_SIZE);
    fade(kd_per_m, step_m, this.#powers[1]);
    this.#powersKnown = 2;
  }

  #power(steps: number): Spectrum {
    for (; this.#powersKnown <= steps; this.#powersKnown++) {
      this.#powers[this.#powersKnown] ??= new Float64Array(GRID_SIZE);
      times(this.#powers[this.#powersKnown - 1], this.#powers[1], this.#powers[this.#powersKnown]);
    }
    return this.#powers[steps];
  }

  #leftAtFirst(kd_per_m: Spectrum, first_m: number, step_m: number): Spectrum {
    if (first_m === 0) return ONES;
    if (first_m === step_m) return this.#powers[1];
    fade(kd_per_m, first_m, this.#first);
    return this.#first;
  }

  /** Whether interpolation gives what was integrated where it can be compared. */
  #holds({ check, integrated }: DepthPlan): boolean {
    if (check === undefined) return true;
    const mixed = this.#surface.subarray(SEEN_COUNT);
    mix(this.#integrated, integrated.length, check.weights, 0, mixed, 0);
    for (let c = 0; c < SEEN_COUNT; c++) {
      const off = Math.abs(mixed[c] - this.#integrated[check.at * SEEN_COUNT + c]);
      if (!(off < TOLERANCE_STOPS)) return false;
    }
    return true;
  }

  #spread({ integrated, others, weights }: DepthPlan, out: Float64Array, at: number): void {
    copyRows(this.#integrated, integrated, out, at);
    for (let m = 0; m < others.length; m++) {
      mix(
        this.#integrated,
        integrated.length,
        weights,
        m * integrated.length,
        out,
        at + others[m] * SEEN_COUNT,
      );
    }
  }
}

function fade(kd_per_m: Spectrum, length_m: number, out: Spectrum): void {
  for (let i = 0; i < GRID_SIZE; i++) out[i] = expNegative(kd_per_m[i] * length_m);
}

function times(a: Spectrum, b: Spectrum, out: Spectrum): void {
  for (let i = 0; i < GRID_SIZE; i++) out[i] = a[i] * b[i];
}

function toLosses(sums: Float64Array, rows: number, surface: Float64Array): void {
  for (let k = 0; k < rows * SEEN_COUNT; k += SEEN_COUNT) {
    for (let c = 0; c < SEEN_COUNT; c++) sums[k + c] = surface[c] - log2(sums[k + c]);
  }
}

function copyRows(from: Float64Array, to: readonly number[], out: Float64Array, at: number): void {
  for (let k = 0; k < to.length; k++) {
    for (let c = 0; c < SEEN_COUNT; c++) out[at + to[k] * SEEN_COUNT + c] = from[k * SEEN_COUNT + c];
  }
}

/** A row of `out` as a weighted sum of the rows of `from`. */
function mix(
  from: Float64Array,
  rows: number,
  weights: Float64Array,
  firstWeight: number,
  out: Float64Array,
  at: number,
): void {
  let red = 0;
  let green = 0;
  let blue = 0;
  let photopic = 0;
  let quanta = 0;
  for (let n = 0, k = 0; n < rows; n++, k += SEEN_COUNT) {
    const weight = weights[firstWeight + n];
    red += weight * from[k];
    green += weight * from[k + 1];
    blue += weight * from[k + 2];
    photopic += weight * from[k + 3];
    quanta += weight * from[k + 4];
  }
  out[at] = red;
  out[at + 1] = green;
  out[at + 2] = blue;
  out[at + 3] = photopic;
  out[at + 4] = quanta;
}
