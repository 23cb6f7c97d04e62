/** Which filter of the same kind more light would mount: whether colour or light sets the density. */
import type { Conditions } from "../light/conditions.js";
import { lastOf, type NonEmpty } from "../lists/non-empty.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, NO_FILTER } from "./candidates.js";
import { costOf, decide } from "./decide.js";
import { type Judged, judge, rangeError } from "./merits.js";
import type { Search } from "./search.js";

/** So many times the exposure is more than any filter takes; what is too much is left to neutral density. */
const ENOUGH = 4096;
/** Denser by less than this is within what the search resolves. */
const DENSER_BY = 0.1;

const withEnoughLight = (conditions: Conditions): Conditions => ({
  ...conditions,
  scene: { ...conditions.scene, shutter_s: conditions.scene.shutter_s * ENOUGH },
});

/** The filter that would be advised with the same ISO limits if light were no matter; undefined where light moves no density. */
export function wantedWithMoreLight(
  conditions: Conditions,
  depths: Readonly<NonEmpty<number>>,
  { judged, decision, worthwhile, within, redIsGone, mayGain, changeable }: Search,
): Candidate | undefined {
  const { advised, asGood, bestFilter } = decision;
  if (!conditions.daylight || !bestFilter) return undefined;
  const isNone = advised.candidate.kind === "none";
  // Where even the bare camera stays too dark, that is all there is to say.
  if (isNone && lastOf(judged[0].merits).settings.off_by_stops < 0) return undefined;
  const { kind } = isNone ? bestFilter.candidate : advised.candidate;
  const densest = isNone ? 0 : (asGood?.to ?? Number.POSITIVE_INFINITY);
  const ofKind = judged.filter(({ candidate }) => candidate.kind === kind);
  const denser = ofKind.filter(({ candidate }) => (candidate.density ?? 0) > densest + DENSER_BY - 1e-9);
  if (denser.every(({ merits }) => lastOf(merits).settings.at_lowest_iso)) return undefined;
  const reference = isNone
    ? NO_FILTER
    : (ofKind.find(({ candidate }) => candidate.density === densest)?.candidate ?? advised.candidate);
  const lit = judge(withEnoughLight(conditions), NOMINAL, depths, [
    NO_FILTER,
    reference,
    ...denser.map(({ candidate }) => candidate),
  ]);
  const [without, held] = lit;
  const error = (j: Judged): number => rangeError(j, { without, redIsGone, mayGain, changeable });
  const wanted = decide(
    lit.map((j) => ({ candidate: j.candidate, delta_e00: error(j) })),
    worthwhile,
    within,
  ).advised;
  if (wanted.candidate.kind === "none" || wanted.candidate === reference) return undefined;
  const gain =
    costOf(reference, error(held), worthwhile) - costOf(wanted.candidate, wanted.delta_e00, worthwhile);
  return gain > (isNone ? 0 : within) ? wanted.candidate : undefined;
}
