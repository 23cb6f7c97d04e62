import type { Finish } from "../scene/scene.js";
import type { Candidate } from "./candidates.js";

/**
 * Improvement in mean CIEDE2000 that a filter must bring to be worth mounting: what is just noticeable, about 1, in a picture that is
 * looked at; half of that where a grade follows, which brings out what it is given.
 */
const NOTICEABLE_DELTA_E00 = 1;
export const worthwhileFor = (finish: Finish): number =>
  finish === "matched" ? NOTICEABLE_DELTA_E00 / 2 : NOTICEABLE_DELTA_E00;

/** Mean colour errors nearer than this are alike to any eye: a tenth of what is just noticeable. */
export const AS_GOOD_DELTA_E00 = 0.1;

/**
 * Mean colour errors nearer than this are worth no light. A denser filter costs light as a first one does, and has to earn it: half of
 * what a first one must, since the weakest and the densest of a band lie on both sides of the best. A profiled grade leaves errors so
 * small, and brings out what it is given, that only what is alike to any eye is as good. Judgements.
 */
export const asGoodWithin = (finish: Finish): number =>
  finish === "matched" ? AS_GOOD_DELTA_E00 : worthwhileFor(finish) / 2;

/** Colour error plus what a filter must earn: the lower, the better the choice. */
export const costOf = ({ kind }: Candidate, delta_e00: number, worthwhile: number): number =>
  kind === "none" ? delta_e00 : delta_e00 + worthwhile;

export interface Scored {
  candidate: Candidate;
  delta_e00: number;
}

/** The first of the cheapest, in the order given. */
export function cheapest(scored: readonly Scored[], worthwhile: number): Scored {
  const cost = ({ candidate, delta_e00 }: Scored): number => costOf(candidate, delta_e00, worthwhile);
  return scored.reduce((best, next) => (cost(next) < cost(best) ? next : best));
}

export interface Decision {
  advised: Scored;
  /** Densities of the advised kind that are as good as its best, from weak to dense; undefined for no filter and measured ones. */
  asGood: { from: number; to: number } | undefined;
  /** The best of another kind than the advised one; the advised one itself where there is no other. */
  runnerUp: Scored;
  /** The best of the filters, whether advised or not; undefined where there is none to choose. */
  bestFilter: Scored | undefined;
}

/** About the weakest filter that is made for a lens under water: one stop. From memory. */
const WEAKEST_SOLD = 0.3;
const isHad = ({ candidate: { id, mounted, density = 0 } }: Scored): boolean =>
  id !== undefined || mounted === true || density >= WEAKEST_SOLD;

/** Of a band from weak to dense, what is sold or owned; its densest where that is none of it. */
function toBeHad(alike: readonly Scored[]): readonly Scored[] {
  const had = alike.filter(isHad);
  return had.length > 0 ? had : alike.slice(-1);
}

/**
 * A filter is advised when it beats no filter by the worthwhile amount; of filters, the one that leaves the least error, and of
 * densities that are as good as that, the weakest that is sold or owned, which costs the least light.
 */
export function decide(scored: readonly Scored[], worthwhile: number, within = AS_GOOD_DELTA_E00): Decision {
  const best = cheapest(scored, worthwhile);
  const bestOf = (test: (kind: string) => boolean): Scored | undefined => {
    const left = scored.filter(({ candidate }) => test(candidate.kind));
    return left.length > 0 ? cheapest(left, worthwhile) : undefined;
  };
  const rival = bestOf((kind) => kind !== best.candidate.kind);
  const alike = toBeHad(asGoodAs(best, scored, rival, { worthwhile, within }));
  const advised = alike[0] ?? best;
  // Kinds are compared by one rule: the other one, too, at the weakest that is as good as its best.
  const rivals = rival ? toBeHad(asGoodAs(rival, scored, undefined, { worthwhile, within })) : [];
  return {
    advised,
    asGood: bandOf(alike),
    runnerUp: rivals[0] ?? rival ?? advised,
    bestFilter: bestOf((kind) => kind !== "none"),
  };
}

/** Filters of the best one's kind that nobody can tell from it, and that lead as it does; from weak to dense. */
function asGoodAs(
  best: Scored,
  scored: readonly Scored[],
  rival: Scored | undefined,
  { worthwhile, within }: { worthwhile: number; within: number },
): Scored[] {
  const cost = (s: Scored): number => costOf(s.candidate, s.delta_e00, worthwhile);
  const { kind, density } = best.candidate;
  if (kind === "none" || density === undefined) return [];
  const most = Math.min(cost(best) + within, rival ? cost(rival) : Number.POSITIVE_INFINITY);
  return scored
    .filter((s) => s.candidate.kind === kind && s.candidate.density !== undefined)
    .filter((s) => s === best || cost(s) < most)
    .sort((a, b) => (a.candidate.density ?? 0) - (b.candidate.density ?? 0));
}

function bandOf(alike: readonly Scored[]): Decision["asGood"] {
  const [from, to] = [alike[0]?.candidate.density, alike.at(-1)?.candidate.density];
  return from === undefined || to === undefined ? undefined : { from, to };
}
