import type { Candidate } from "./candidates.js";

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
  /** The best of another kind than the advised one; the advised one itself where there is no other. */
  runnerUp: Scored;
  /** The best of the filters, whether advised or not; undefined where there is none to choose. */
  bestFilter: Scored | undefined;
}

/** A filter is advised when it beats no filter by the worthwhile amount; of filters, the one that leaves the least error. */
export function decide(scored: readonly Scored[]): Decision {
  const advised = cheapest(scored);
  const bestOf = (test: (kind: string) => boolean): Scored | undefined => {
    const left = scored.filter(({ candidate }) => test(candidate.kind));
    return left.length > 0 ? cheapest(left) : undefined;
  };
  return {
    advised,
    runnerUp: bestOf((kind) => kind !== advised.candidate.kind) ?? advised,
    bestFilter: bestOf((kind) => kind !== "none"),
  };
}
