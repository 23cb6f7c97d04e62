import { CLEAR, type FilterKind, filterTransmittance, fitDensity, stopsUnder } from "@sunfathom/optics";
import { sensorOf } from "../../camera/sensor.js";
import type { Conditions } from "../../light/conditions.js";
import { underwater } from "../../light/underwater.js";
import { itemAt } from "../../lists/non-empty.js";
import type { Estimate } from "../../result/common.js";
import type { CardSample } from "../../scene/scene.js";
import { FILTER_CAUSES } from "../../uncertainty/causes.js";
import { Z90 } from "../../uncertainty/normal.js";
import type { Nuisance } from "../../uncertainty/nuisance.js";
import { cardLight } from "../../white-balance/avoidable-cast.js";
import { type FittedWater, lnLightOf } from "./fitted-water.js";
import { estimateFrom, evenly, type Shift } from "./spread.js";

/**
 * The density of the filter on the lens, by the cards that were filmed through it: what they show less than the water that the other
 * cards show would have let them.
 */
export function measuredDensity(
  { fit, conditions, likely, others, overDownwelling, movedIn }: FittedWater,
  through: readonly CardSample[],
  kind: FilterKind,
): Estimate {
  const depths = through.map(({ depth_m }) => depth_m);
  const open = fit.shownAt(depths);
  const seen = lnLightOf(through);
  const over = overDownwelling(depths);
  const stops = open.ln.map((ln, i) => (ln + (over[i] ?? 0) - (seen[i] ?? ln)) / Math.LN2);
  const lights = lightsAt(conditions, likely, depths);
  const pictures = lights.map((light, n) => ({
    light,
    stops: [stops[3 * n] ?? 0, stops[3 * n + 1] ?? 0, stops[3 * n + 2] ?? 0] as const,
  }));
  const { density, gains } = fitDensity(pictures, kind, sensorOf(conditions.scene, likely));
  // Readings through the filter are as noisy as those that the water rests on.
  let variance = 0;
  gains.forEach((gain, i) => {
    variance += (gain * fit.noise_ln) ** 2;
    gains.forEach((other, j) => {
      variance += gain * other * (open.covariance[i]?.[j] ?? 0);
    });
  });
  const lost = (nuisance: Nuisance): number[] =>
    stopsUnder(
      lightsAt(conditions, nuisance, depths),
      sensorOf(conditions.scene, nuisance),
      filterTransmittance(kind, density, nuisance.filterShape),
    );
  const nominal = lost(likely);
  // What the filter takes more there, and what the fit makes too much of the cards without it.
  const shiftOf = (nuisance: Nuisance): number => {
    const { shown, fitted } = movedIn(nuisance, depths);
    return lost(nuisance).reduce((sum, value, i) => {
      const off = (itemAt(fitted, i) - itemAt(shown, i)) / Math.LN2;
      // What takes more light at the same density makes the same light a lower one.
      return sum - itemAt(gains, i) * (value - itemAt(nominal, i) + off);
    }, 0);
  };
  const ofFilter = FILTER_CAUSES.filter(({ code }) => code !== "full_well").map(({ shift }) =>
    [-Z90, Z90].map((z): Nuisance => ({ ...likely, ...shift(z) })),
  );
  const shifts = [...ofFilter, ...others].map(
    ([minus = likely, plus = likely]): Shift => [shiftOf(minus), shiftOf(plus)],
  );
  const estimate = estimateFrom(density, [evenly(Math.sqrt(variance) / Math.LN2), ...shifts]);
  return { ...estimate, low: Math.max(0, estimate.low) };
}

const lightsAt = (conditions: Conditions, nuisance: Nuisance, depths: readonly number[]) => {
  const world = underwater(conditions, nuisance);
  return depths.map((depth_m) => cardLight(world, CLEAR, depth_m));
};
