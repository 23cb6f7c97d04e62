import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

/** How many observers there are: red, green, blue, photopic and quanta, in this order. */
export const SEEN_COUNT = 5;
/** Numbers kept side by side for each wavelength: what is left of it, and what each observer would see of all of it. */
const WIDTH = 8;
const FIRST_OBSERVER = 1;

/** How strongly five observers see each wavelength. */
export class Observers {
  /** Side by side as in `LightSeen`; the first and the last wavelength count half (trapezoid rule). */
  readonly weights = new Float64Array(GRID_SIZE * WIDTH);

  constructor(red: Spectrum, green: Spectrum, blue: Spectrum, photopic: Spectrum, quanta: Spectrum) {
    [red, green, blue, photopic, quanta].forEach((sensitivity, observer) => {
      sensitivity.forEach((value, i) => {
        const end = i === 0 || i === GRID_SIZE - 1;
        this.weights[i * WIDTH + FIRST_OBSERVER + observer] = end ? value / 2 : value;
      });
    });
  }
}

/**
 * A light on its way down, as five observers see it. All numbers of one wavelength lie side by side in one array: a pass over
 * them is then as fast as a bare loop.
 */
export class LightSeen {
  readonly #terms = new Float64Array(GRID_SIZE * WIDTH);

  /** Takes the light just below the surface, and writes the sums seen there, up to one factor, which no loss depends on. */
  set(light: Spectrum, observers: Observers, sums: Float64Array): void {
    const terms = this.#terms;
    const weights = observers.weights;
    let red = 0;
    let green = 0;
    let blue = 0;
    let photopic = 0;
    let quanta = 0;
    for (let i = 0, k = 0; i < GRID_SIZE; i++, k += WIDTH) {
      const value = light[i];
      red += terms[k + 1] = value * weights[k + 1];
      green += terms[k + 2] = value * weights[k + 2];
      blue += terms[k + 3] = value * weights[k + 3];
      photopic += terms[k + 4] = value * weights[k + 4];
      quanta += terms[k + 5] = value * weights[k + 5];
    }
    sums[0] = red;
    sums[1] = green;
    sums[2] = blue;
    sums[3] = photopic;
    sums[4] = quanta;
  }

  /** Starts at a depth where `left` is left of each wavelength. */
  startAt(left: Spectrum): void {
    const terms = this.#terms;
    for (let i = 0; i < GRID_SIZE; i++) terms[i * WIDTH] = left[i];
  }

  /**
   * Goes down twice, by what lets `toFirst` and then `toSecond` through, and writes the sums seen at both depths to `sums`
   * from `at` on.
   */
  sumAtNextTwo(toFirst: Spectrum, toSecond: Spectrum, sums: Float64Array, at: number): void {
    const terms = this.#terms;
    let red1 = 0;
    let green1 = 0;
    let blue1 = 0;
    let photopic1 = 0;
    let quanta1 = 0;
    let red2 = 0;
    let green2 = 0;
    let blue2 = 0;
    let photopic2 = 0;
    let quanta2 = 0;
    for (let i = 0, k = 0; i < GRID_SIZE; i++, k += WIDTH) {
      const first = terms[k] * toFirst[i];
      const second = first * toSecond[i];
      terms[k] = second;
      const red = terms[k + 1];
      red1 += red * first;
      red2 += red * second;
      const green = terms[k + 2];
      green1 += green * first;
      green2 += green * second;
      const blue = terms[k + 3];
      blue1 += blue * first;
      blue2 += blue * second;
      const photopic = terms[k + 4];
      photopic1 += photopic * first;
      photopic2 += photopic * second;
      const quanta = terms[k + 5];
      quanta1 += quanta * first;
      quanta2 += quanta * second;
    }
    sums[at] = red1;
    sums[at + 1] = green1;
    sums[at + 2] = blue1;
    sums[at + 3] = photopic1;
    sums[at + 4] = quanta1;
    sums[at + 5] = red2;
    sums[at + 6] = green2;
    sums[at + 7] = blue2;
    sums[at + 8] = photopic2;
    sums[at + 9] = quanta2;
  }
}
