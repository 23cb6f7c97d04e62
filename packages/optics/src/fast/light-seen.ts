import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

/** How many observers there are: red, green, blue, photopic and quanta, in this order. */
export const SEEN_COUNT = 5;
/** Numbers kept side by side for each wavelength: what is left of it, and what each observer would see of all of it. */
const WIDTH = 8;
const FIRST_OBSERVER = 1;
const PHOTOPIC = FIRST_OBSERVER + 3;

/** How strongly five observers see each wavelength. */
export class Observers {
  /** Side by side as in `LightSeen`; the first and the last wavelength count half (trapezoid rule). */
  readonly weights = new Float64Array(GRID_SIZE * WIDTH);
  /** Wavelengths outside these, by index, only the eye sees: `from` up to and without `to`. */
  readonly from: number;
  readonly to: number;

  constructor(red: Spectrum, green: Spectrum, blue: Spectrum, photopic: Spectrum, quanta: Spectrum) {
    [red, green, blue, photopic, quanta].forEach((sensitivity, observer) => {
      sensitivity.forEach((value, i) => {
        const end = i === 0 || i === GRID_SIZE - 1;
        this.weights[i * WIDTH + FIRST_OBSERVER + observer] = end ? value / 2 : value;
      });
    });
    const others = [red, green, blue, quanta];
    const seen = Array.from({ length: GRID_SIZE }, (_, i) =>
      others.some((sensitivity) => sensitivity[i] !== 0),
    );
    this.from = Math.max(0, seen.indexOf(true));
    this.to = seen.lastIndexOf(true) + 1;
  }
}

/**
 * A light on its way down, as five observers see it. All numbers of one wavelength lie side by side in one array: a pass over
 * them is then as fast as a bare loop.
 */
export class LightSeen {
  readonly #terms = new Float64Array(GRID_SIZE * WIDTH);
  #from = 0;
  #to = GRID_SIZE;

  /** Takes the light just below the surface, and writes the sums seen there, up to one factor, which no loss depends on. */
  set(light: Spectrum, observers: Observers, sums: Float64Array): void {
    const terms = this.#terms;
    const weights = observers.weights;
    this.#from = observers.from;
    this.#to = observers.to;
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
    for (let i = this.#from, k = i * WIDTH; i < this.#to; i++, k += WIDTH) {
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
    this.#addWhatOnlyTheEyeSees(0, this.#from, toFirst, toSecond, sums, at);
    this.#addWhatOnlyTheEyeSees(this.#to, GRID_SIZE, toFirst, toSecond, sums, at);
  }

  #addWhatOnlyTheEyeSees(
    from: number,
    to: number,
    toFirst: Spectrum,
    toSecond: Spectrum,
    sums: Float64Array,
    at: number,
  ): void {
    const terms = this.#terms;
    let photopic1 = 0;
    let photopic2 = 0;
    for (let i = from, k = i * WIDTH; i < to; i++, k += WIDTH) {
      const first = terms[k] * toFirst[i];
      const second = first * toSecond[i];
      terms[k] = second;
      photopic1 += terms[k + PHOTOPIC] * first;
      photopic2 += terms[k + PHOTOPIC] * second;
    }
    sums[at + PHOTOPIC - FIRST_OBSERVER] += photopic1;
    sums[at + PHOTOPIC - FIRST_OBSERVER + SEEN_COUNT] += photopic2;
  }
}
