import type { Candidate } from "./candidates.js";
import { NO_FILTER } from "./candidates.js";

/** Improvement in mean CIEDE2000 that a filter must bring to be worth mounting: half of what is just noticeable. */
export const WORTHWHILE_DELTA_E00 = 0.5;

/** Colour error plus what a filter must earn: the lower, the better the choice. */
export const costOf = ({ kind }: Candidate, delta_e00: number): number =>
  kind === "none" ? delta_e00 : delta_e00 + WORTHWHILE_DELTA_E00;

export interface Scored {
  candidate: Candidate;
  delta_e00: number;
}

const cost = ({ candidate, delta_e00 }: Scored): number => costOf(candidate, delta_e00);

/** The first of the cheapest, in the order given. */
export const cheapest = (scored: readonly Scored[]): Scored =>
  scored.reduce((best, next) => (cost(next) < cost(best) ? next : best));

export interface Decision {
  advised: Scored;
  runnerUp: Scored;
  /** The best of the colour filters, whether advised or not. */
  bestColour: Scored;
  bestNeutral: Scored;
  /** True where a colour filter would win, but hardly by more than a neutral one. */
  onlyNeutral: boolean;
}

/**
 * A colour filter is advised when it beats no filter, and any neutral one, by the worthwhile amount. A neutral filter is never
 * advised for the lens here: where it helps, there is too much light, and the aperture can close or neutral density be named.
 */
export function decide(scored: readonly Scored[]): Decision {
  const of = (test: (kind: string) => boolean) =>
    cheapest(scored.filter(({ candidate }) => test(candidate.kind)));
  const none = of((kind) => kind === NO_FILTER.kind);
  const bestNeutral = of((kind) => kind === "neutral");
  const bestColour = of((kind) => kind !== "none" && kind !== "neutral");
  const beatsNone = cost(bestColour) < none.delta_e00;
  const beatsNeutral = cost(bestColour) < bestNeutral.delta_e00;
  const advised = beatsNone && beatsNeutral ? bestColour : none;
  const runnerUp = of((kind) => kind !== advised.candidate.kind && kind !== "neutral");
  return { advised, runnerUp, bestColour, bestNeutral, onlyNeutral: beatsNone && !beatsNeutral };
}
