import type { Conditions } from "../light/conditions.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { OtherFinish } from "../result/filter-choice.js";
import type { Finish } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, NO_FILTER, named } from "./candidates.js";
import { cheapest, worthwhileFor } from "./decide.js";
import {
  type Comparison,
  finishOf,
  type Judged,
  judgeIn,
  mayFilterGain,
  rangeError,
  sightOf,
} from "./merits.js";

const FINISHES: readonly Finish[] = ["in_camera", "basic_edit", "matched"];

/** What a finish makes of the three that the answer is about, and which of them is best under it. */
export interface UnderFinish {
  answer: OtherFinish;
  best: Candidate;
}

interface Compared extends Pick<Comparison, "redIsGone" | "changeable"> {
  advised: Candidate;
  runnerUp: Candidate;
}

/** Under each other finish, nominally: three candidates instead of a search for each. */
export function underOtherFinishes(
  conditions: Conditions,
  depths: Readonly<NonEmpty<number>>,
  { advised, runnerUp, redIsGone, changeable }: Compared,
  finishes: readonly Finish[] = FINISHES,
): UnderFinish[] {
  const own = finishOf(conditions.scene);
  return finishes
    .filter((finish) => finish !== own)
    .map((finish) => {
      const sight = sightOf(conditions, NOMINAL, depths, finish);
      const [none, first, second] = judgeIn(sight, [NO_FILTER, advised, runnerUp]);
      const mayGain = mayFilterGain(conditions);
      const error = (of: Judged) => rangeError(of, { without: none, redIsGone, mayGain, changeable });
      // The advised choice first: of equals it stays.
      const scored = [first, second, none].map((of) => ({ candidate: of.candidate, delta_e00: error(of) }));
      const best = cheapest(scored, worthwhileFor(finish)).candidate;
      const { kind, density, id } = named(best);
      return {
        best,
        answer: {
          finish,
          filter_kind: kind,
          ...(density === undefined ? {} : { filter_density: density }),
          ...(id === undefined ? {} : { filter_id: id }),
          advised_colour_error_delta_e00: error(first),
          runner_up_colour_error_delta_e00: error(second),
          without_colour_error_delta_e00: error(none),
        },
      };
    });
}
