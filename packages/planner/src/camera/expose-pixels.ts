/** One pixel as it is looked at, drawn at random: so many pixels exposed, read, balanced and stored as codes, then averaged. */
import { twoTo } from "@sunfathom/optics";
import { codeShare, linearAt } from "./code-curve.js";
import type { Vector3 } from "./matrix.js";
import { perPlace } from "./matrix.js";
import { capacityOf, highestCode, type Recorder, shareOfFullScale } from "./recording.js";

/** Normal deviates from even ones between 0 and 1: Box and Muller 1958, Ann. Math. Statist. 29, 610. */
const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** The nearest light that the recording has a code for. */
export function stored({ bits, curve }: Pick<Recorder, "bits" | "curve">, linear: number): number {
  const highest = highestCode(bits);
  const held = Math.min(1, Math.max(0, linear));
  return Math.max(0, linearAt(curve, Math.round(codeShare(curve, held) * highest) / highest));
}

/**
 * Red, green and blue of a raw exposure in lux after balance, 1 at the top of the recording. Their mean and variance are those of
 * `record` as long as neither end of the codes is near.
 * @param random even between 0 and 1
 */
export function exposePixels(recorder: Recorder, lux: Vector3, random: () => number): Vector3 {
  const { gains, pixels, settings, neutral_stops } = recorder;
  const capacity = capacityOf(recorder);
  return perPlace((k) => {
    // Beyond what the sensor holds, too: there the codes end.
    const electrons = capacity * shareOfFullScale(lux[k] * twoTo(-neutral_stops), settings);
    const noise_e = Math.sqrt(electrons + pixels.read_noise_e ** 2);
    let sum = 0;
    for (let i = 0; i < pixels.averaged; i++)
      sum += stored(recorder, (gains[k] * (electrons + noise_e * normal(random))) / capacity);
    return sum / pixels.averaged;
  });
}
