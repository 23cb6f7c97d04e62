import { CARD_NOISE_LN } from "@sunfathom/optics";
import { GREY_CARD } from "../../camera/card-level.js";
import { shareOfFullScale } from "../../camera/recording.js";
import { sensorOf } from "../../camera/sensor.js";
import { rawOf, sensorProfile } from "../../camera/sensor-profile.js";
import { budgetAt } from "../../exposure-loss/budget.js";
import type { Conditions } from "../../light/conditions.js";
import { lensFilterOf } from "../../light/lens-filter.js";
import { PORT, underwater } from "../../light/underwater.js";
import type { Estimate } from "../../result/common.js";
import { causesOf, FILTER_CAUSES } from "../../uncertainty/causes.js";
import type { Nuisance } from "../../uncertainty/nuisance.js";
import { propagate } from "../../uncertainty/propagate.js";
import { cardLight } from "../../white-balance/avoidable-cast.js";
import type { CardFrame } from "../plan.js";
import { estimateFrom, evenly } from "./spread.js";

/**
 * How far a camera's scale may be off what its ISO, f-number and exposure time say, stops: speeds are stated in thirds (ISO 12232), and
 * lenses let through less than their f-numbers say. From memory.
 */
export const CAMERA_SCALE_SIGMA_STOPS = 0.25;

export interface MeasuredExposure {
  /** What a flat card was predicted to be metered as, and what it shows: exposure values at ISO 100. */
  predicted: Estimate;
  measured: Estimate;
  /** What the camera was set to. */
  used_ev100: number;
}

/** Exposure value at ISO 100 that settings are right for. */
const evOf = ({ iso, shutter_s, f_number }: CardFrame): number =>
  Math.log2(f_number ** 2 / shutter_s) - Math.log2(iso / 100);

/**
 * @param conditions at the time of the frame, with what was on the lens
 */
export function measuredExposure(conditions: Conditions, frame: CardFrame): MeasuredExposure {
  const { scene } = conditions;
  const { depth_m } = frame;
  const figures = (nuisance: Nuisance) => {
    const world = underwater(conditions, nuisance);
    const filter = lensFilterOf(scene, nuisance);
    const [, green] = rawOf(sensorProfile(sensorOf(scene, nuisance)), cardLight(world, filter, depth_m));
    const { cardEv100 } = budgetAt(world, filter, depth_m);
    const share = shareOfFullScale(GREY_CARD * PORT * green, frame);
    // What is metered over what the camera's green channel sees: of how bright it is, nothing is left.
    return { cardEv100, over: cardEv100 - Math.log2(share) };
  };
  const nominalFilter = scene.filter_kind !== undefined && scene.filter_transmittance === undefined;
  const causes = [
    ...causesOf(conditions),
    ...(nominalFilter ? FILTER_CAUSES.filter(({ code }) => code !== "full_well") : []),
  ];
  const { estimates } = propagate(figures, causes);
  const { over } = estimates;
  const shown = Math.log2(frame.green / frame.green_gain);
  const measured = estimateFrom(over.likely + shown, [
    [over.low - over.likely, over.high - over.likely],
    evenly(CARD_NOISE_LN / Math.LN2),
    evenly(CAMERA_SCALE_SIGMA_STOPS),
  ]);
  return { predicted: estimates.cardEv100, measured, used_ev100: evOf(frame) };
}
