/**
 * Spectra that change smoothly with one number, kept at equal steps of it. Between the steps each wavelength follows the
 * polynomial through the six nearest: a mix of six kept spectra, and no formula is evaluated.
 */
const POINTS = 6;
/** Product of the differences between one point and the other five, in steps: the denominators of Lagrange's formula. */
const DENOMINATORS = [-120, 24, -12, 12, -24, 120];

export class SpectrumTable {
  readonly #rows: Float64Array;
  readonly #steps: number;

  /** @param rowAt what to keep at x, all of one length: a spectrum, or several end to end. */
  constructor(
    readonly from: number,
    readonly to: number,
    steps: number,
    rowAt: (x: number) => Float64Array,
  ) {
    const kept = Array.from({ length: steps + 1 }, (_, n) => rowAt(from + ((to - from) * n) / steps));
    this.#steps = steps;
    this.width = kept[0].length;
    this.#rows = new Float64Array(kept.length * this.width);
    kept.forEach((row, n) => {
      this.#rows.set(row, n * this.width);
    });
  }

  /** Length of what is kept at each x. */
  readonly width: number;

  /** Writes the row at `x`, which must lie from `from` to `to`, to `out`. */
  mixAt(x: number, out: Float64Array): void {
    const at = ((x - this.from) / (this.to - this.from)) * this.#steps;
    const first = Math.max(0, Math.min(this.#steps - POINTS + 1, Math.floor(at) - 2));
    const t = at - first;
    const [d0, d1, d2, d3, d4, d5] = [t, t - 1, t - 2, t - 3, t - 4, t - 5];
    const [head, tail] = [d0 * d1 * d2, d3 * d4 * d5];
    const w0 = (d1 * d2 * tail) / DENOMINATORS[0];
    const w1 = (d0 * d2 * tail) / DENOMINATORS[1];
    const w2 = (d0 * d1 * tail) / DENOMINATORS[2];
    const w3 = (head * d4 * d5) / DENOMINATORS[3];
    const w4 = (head * d3 * d5) / DENOMINATORS[4];
    const w5 = (head * d3 * d4) / DENOMINATORS[5];
    mixSix(this.#rows, first * this.width, this.width, w0, w1, w2, w3, w4, w5, out);
  }
}

function mixSix(
  rows: Float64Array,
  start: number,
  width: number,
  w0: number,
  w1: number,
  w2: number,
  w3: number,
  w4: number,
  w5: number,
  out: Float64Array,
): void {
  const second = start + width;
  const third = second + width;
  const fourth = third + width;
  const fifth = fourth + width;
  const sixth = fifth + width;
  for (let i = 0; i < width; i++) {
    out[i] =
      w0 * rows[start + i] +
      w1 * rows[second + i] +
      w2 * rows[third + i] +
      w3 * rows[fourth + i] +
      w4 * rows[fifth + i] +
      w5 * rows[sixth + i];
  }
}
