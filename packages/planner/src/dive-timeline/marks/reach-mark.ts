import { CARD_NOISE_LN } from "@sunfathom/optics";
import { balanceReach, beyondReach } from "../../camera/balance-reach.js";
import { sensorOf } from "../../camera/sensor.js";
import { rawOf, sensorProfile } from "../../camera/sensor-profile.js";
import type { Conditions } from "../../light/conditions.js";
import { lensFilterOf } from "../../light/lens-filter.js";
import { underwater } from "../../light/underwater.js";
import type { Estimate } from "../../result/common.js";
import { causesOf, FILTER_CAUSES } from "../../uncertainty/causes.js";
import { mapRising } from "../../uncertainty/percentiles.js";
import { propagate } from "../../uncertainty/propagate.js";
import { cardLight } from "../../white-balance/avoidable-cast.js";
import type { CardFrame } from "../plan.js";
import { estimateFrom, evenly } from "./spread.js";

/** A cast on a card that was just balanced on, beyond what readings scatter: the camera could not reach it. */
const LEAST_CAST_STOPS = 0.1;

export interface MeasuredReach {
  /** How far the card stays from neutral, in stops between channels, as the site and its camera have it, and as the card shows it. */
  predicted: Estimate;
  measured: Estimate;
  /** The card is neutral, within what its readings scatter. */
  inReach: boolean;
}

/**
 * How far the camera's balance fell short on a card that it had just been set on.
 * @param conditions at the time of the frame, with what was on the lens
 */
export function measuredReach(conditions: Conditions, frame: CardFrame): MeasuredReach {
  const { scene } = conditions;
  const nominalFilter = scene.filter_kind !== undefined && scene.filter_transmittance === undefined;
  const causes = [
    ...causesOf(conditions),
    ...(nominalFilter ? FILTER_CAUSES.filter(({ code }) => code !== "full_well") : []),
  ];
  const { estimates } = propagate((nuisance) => {
    const profile = sensorProfile(sensorOf(scene, nuisance));
    const light = cardLight(underwater(conditions, nuisance), lensFilterOf(scene, nuisance), frame.depth_m);
    return { short: beyondReach(balanceReach(scene, profile), rawOf(profile, light)) };
  }, causes);
  const red = Math.log2(frame.red / frame.green);
  const blue = Math.log2(frame.blue / frame.green);
  const cast = Math.hypot(red, blue);
  // Along the cast: what the readings of red and blue scatter, with green, which both share.
  const [r, b] = cast > 0 ? [red / cast, blue / cast] : [1, 0];
  const sigma = (CARD_NOISE_LN / Math.LN2) * Math.sqrt(r ** 2 + b ** 2 + (r + b) ** 2);
  const { low, likely, high } = estimateFrom(cast, [evenly(sigma)]);
  const { short } = estimates;
  const inReach = cast < Math.max(LEAST_CAST_STOPS, 3 * sigma);
  return {
    // What lies within reach falls short by nothing.
    predicted: mapRising(short, (stops) => Math.max(0, stops)),
    // A cast that is no more than scatter may be none.
    measured: { low: inReach ? 0 : Math.max(0, low), likely, high },
    inReach,
  };
}
