/** Whether the search, and neither colour nor light, ends the density: the best filter of its kind is the densest that was tried. */
import type { NonEmpty } from "../lists/non-empty.js";
import { type Judged, rangeError } from "./merits.js";
import type { Search } from "./search.js";

const isTaken = ({ candidate: { id, mounted } }: Judged): boolean => id !== undefined || mounted === true;

/** Density of the densest filter of the advised kind that was tried, where it is the best; undefined where the best is a weaker one, or owned. */
export function densestTried(search: Search): number | undefined {
  const { kind, density: advised } = search.decision.advised.candidate;
  const ofKind = search.judged.filter(({ candidate }) => candidate.kind === kind);
  const [first, ...others] = ofKind;
  if (kind === "none" || advised === undefined || first === undefined || ofKind.some(isTaken))
    return undefined;
  const comparison = { ...search, without: search.judged[0] };
  const error = (judged: Judged): number => rangeError(judged, comparison);
  const all: Readonly<NonEmpty<Judged>> = [first, ...others];
  const best = all.reduce((a, b) => (error(b) < error(a) ? b : a)).candidate.density;
  const densest = Math.max(...all.map(({ candidate }) => candidate.density ?? 0));
  return best === densest ? densest : undefined;
}
