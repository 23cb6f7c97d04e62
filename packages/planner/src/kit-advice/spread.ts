/** How sure it is what a set loses on a dive. */
import type { Estimate, UncertaintyCause } from "../result/common.js";
import { causesOf, FILTER_CAUSES, LIT_HAZE_CAUSES } from "../uncertainty/causes.js";
import { normalCdf } from "../uncertainty/normal.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { propagate, shareOfCauses, sigmaOf } from "../uncertainty/propagate.js";
import { errorInState } from "./lighting.js";
import type { Option } from "./options.js";

/** From this probability on that it is the other way round, a call is close; as for the choice of a filter. */
export const CLOSE_FROM = 0.25;

export interface Spread {
  error: Estimate;
  /** Never below 0: with everything at hand nothing is worse. */
  regret: Estimate;
  /** Standard deviation of what is lost. */
  sigma_delta_e00: number;
  /** What is lost most, by cause; of the error itself where nothing is. */
  uncertainty: UncertaintyCause[];
}

const changeableIn = ({ filter }: Option): boolean => filter?.way.changeable ?? false;

const errorOf = ({ lighting, candidate, ...option }: Option, nuisance: Nuisance): number =>
  errorInState(lighting, candidate, changeableIn({ lighting, candidate, ...option }), nuisance);

/** Causes of both, each once. */
function causesFor(one: Option, other: Option) {
  const both = [one, other].flatMap(({ lighting: { conditions } }) => [
    ...causesOf(conditions),
    ...(conditions.scene.lamps.length > 0 ? LIT_HAZE_CAUSES : []),
    ...FILTER_CAUSES,
  ]);
  return both.filter(({ code }, i) => both.findIndex((cause) => cause.code === code) === i);
}

/** Moved so that its middle is what the whole range comes to. */
const around = ({ low, likely, high }: Estimate, middle: number): Estimate => ({
  low: Math.max(0, middle + low - likely),
  likely: middle,
  high: Math.max(0, middle + high - likely),
});

/** @param used with the set @param best with everything */
export function spreadOf(used: Option, best: Option): Spread {
  const isSame = used === best;
  const propagated = propagate(
    (nuisance) => {
      const error = errorOf(used, nuisance);
      return { error, regret: isSame ? 0 : error - errorOf(best, nuisance) };
    },
    causesFor(used, best),
  );
  const { error, regret } = propagated.estimates;
  return {
    error: around(error, used.delta_e00),
    regret: around(regret, used.delta_e00 - best.delta_e00),
    sigma_delta_e00: sigmaOf(propagated, (figures) => figures.regret),
    uncertainty: shareOfCauses(propagated, (figures) => (isSame ? figures.error : figures.regret)),
  };
}

/** How likely a dive loses as much as the limit: a set that is as good as everything does not. */
export const probabilityOver = (
  regret_delta_e00: number,
  sigma_delta_e00: number,
  limit_delta_e00: number,
): number => normalCdf((regret_delta_e00 - limit_delta_e00) / Math.max(1e-6, sigma_delta_e00));

/** Standard deviation of the difference between two ways to film a dive. */
export function sigmaBetween(one: Option, other: Option): number {
  const propagated = propagate(
    (nuisance) => ({ regret: errorOf(one, nuisance) - errorOf(other, nuisance) }),
    causesFor(one, other),
  );
  return sigmaOf(propagated, ({ regret }) => regret);
}
