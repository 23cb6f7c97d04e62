import type { Scene } from "../scene/scene.js";

type Samples = NonNullable<Scene["sensor_samples"]>;
type Channel = "red" | "green" | "blue";
type Curve = readonly (readonly [wavelength_nm: number, sensitivity: number])[];

/** What a curve has to cover: beyond it cameras see little (the mean of 11 of them, a fiftieth of their peaks at most). */
const COVERED_nm = [420, 680] as const;
/** A channel that sees less than this of what the best one sees is a slip of the pen. */
const LEAST_PEAK = 0.02;
/**
 * Squared volume that the three curves span, each taken as of length 1: 1 where none sees what another sees. Below this no
 * balance and no matrix could tell their colours apart. The mean of 11 cameras spans 0.6, the eye's cones some 0.1.
 */
const LEAST_VOLUME = 0.01;

export type SensorProblem =
  | { case: "short"; from_nm: number; to_nm: number; needed_from_nm: number; needed_to_nm: number }
  | { case: "blind"; channel: Channel; peak: number; least: number }
  | { case: "swapped"; first: Channel; first_nm: number; second: Channel; second_nm: number }
  | { case: "alike" };

const curveOf = (samples: Samples, channel: Channel): Curve =>
  samples.map((sample) => [sample.wavelength_nm, sample[channel]] as const);

/** Integral of the product of two curves that are straight between their samples, exact. */
function overlap(a: Curve, b: Curve): number {
  let sum = 0;
  for (let i = 1; i < a.length; i += 1) {
    const [from, to] = [a[i - 1], a[i]];
    const [p, q] = [b[i - 1]?.[1] ?? 0, b[i]?.[1] ?? 0];
    if (from === undefined || to === undefined) continue;
    sum += ((to[0] - from[0]) * (from[1] * (2 * p + q) + to[1] * (p + 2 * q))) / 6;
  }
  return sum;
}

function meanWavelength_nm(curve: Curve): number {
  const one: Curve = curve.map(([nm]) => [nm, 1]);
  const itself: Curve = curve.map(([nm]) => [nm, nm]);
  return overlap(curve, itself) / overlap(curve, one);
}

function volume(red: Curve, green: Curve, blue: Curve): number {
  const between = (a: Curve, b: Curve) => overlap(a, b) / Math.sqrt(overlap(a, a) * overlap(b, b));
  const [rg, gb, rb] = [between(red, green), between(green, blue), between(red, blue)];
  return 1 + 2 * rg * gb * rb - rg ** 2 - gb ** 2 - rb ** 2;
}

/** What is first found to be wrong of curves whose wavelengths rise. */
export function sensorProblem(samples: Samples): SensorProblem | undefined {
  const [from_nm, to_nm] = [samples[0]?.wavelength_nm ?? 0, samples.at(-1)?.wavelength_nm ?? 0];
  const [needed_from_nm, needed_to_nm] = COVERED_nm;
  if (from_nm > needed_from_nm || to_nm < needed_to_nm)
    return { case: "short", from_nm, to_nm, needed_from_nm, needed_to_nm };
  const channels = ["blue", "green", "red"] as const;
  for (const channel of channels) {
    const peak = Math.max(...samples.map((sample) => sample[channel]));
    if (peak < LEAST_PEAK) return { case: "blind", channel, peak, least: LEAST_PEAK };
  }
  const [blue, green, red] = channels.map((channel) => curveOf(samples, channel)) as [Curve, Curve, Curve];
  const means = [blue, green, red].map(meanWavelength_nm);
  for (const [n, first] of channels.entries()) {
    const second = channels[n + 1];
    const [first_nm = 0, second_nm = 0] = [means[n], means[n + 1]].map((nm) => Math.round(nm ?? 0));
    if (second !== undefined && (means[n] ?? 0) >= (means[n + 1] ?? 0))
      return { case: "swapped", first, first_nm, second, second_nm };
  }
  return volume(red, green, blue) < LEAST_VOLUME ? { case: "alike" } : undefined;
}
