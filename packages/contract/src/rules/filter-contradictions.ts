import type { Scene } from "../scene/scene.js";
import { broken, type Violation } from "./rule.js";

type Samples = NonNullable<Scene["filter_samples"]>;
export type FilterSamplesProblem =
  | { case: "brighter"; colour: "red" | "green" | "blue"; stops: number }
  | { case: "differ"; colour: "red" | "green" | "blue"; stops: number };

const COLOURS = ["red", "green", "blue"] as const;
/** A filter takes light; what a card gains by more than this is another exposure or other light. */
const MOST_GAIN_STOPS = 0.15;
/** Pairs of one filter lose alike, but for noise and a passing cloud. */
const MOST_SPREAD_STOPS = 0.5;

const lost = (sample: Samples[number], colour: (typeof COLOURS)[number]): number =>
  Math.log2(sample[`${colour}_without`] / sample[`${colour}_with`]);
const hundredths = (stops: number): number => Number(stops.toFixed(2));

/** Pairs of one filter that contradict themselves or each other. */
export function contradictions(samples: Samples, pointer: string): Violation<FilterSamplesProblem>[] {
  for (const [n, sample] of samples.entries()) {
    for (const colour of COLOURS) {
      const stops = lost(sample, colour);
      if (stops < -MOST_GAIN_STOPS)
        return [broken(`${pointer}/${n}`, { case: "brighter", colour, stops: hundredths(-stops) })];
      const before = samples
        .slice(0, n)
        .find((other) => Math.abs(lost(other, colour) - stops) > MOST_SPREAD_STOPS);
      if (before) {
        const spread = hundredths(Math.abs(lost(before, colour) - stops));
        return [broken(`${pointer}/${n}`, { case: "differ", colour, stops: spread })];
      }
    }
  }
  return [];
}
