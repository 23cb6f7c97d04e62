import { exposuresOf } from "../exposure-loss/exposures.js";
import { lastOf } from "../lists/non-empty.js";
import type { Estimate } from "../result/common.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";

/** Where light is lost, in the order in which it is. */
export const LOSSES = ["surface", "depth", "upright", "distance", "port", "lens_filter"] as const;
export type LossAt = (typeof LOSSES)[number];

/** The budget of light at one depth. */
export interface BudgetAtDepth {
  depth_m: number;
  /** Stops lost at each place; at the first three only by day. */
  losses: { at: LossAt; stops: Estimate }[];
  /** All of them together; absent without daylight. */
  total?: Estimate;
  verdict: ExposureAtDepth["verdict"];
  iso: number;
  f_number: number;
  shutter_s: number;
  shortfall_stops?: number;
  excess_stops?: number;
}

/** The shallowest filmed depth and the deepest; one where they are the same. */
export interface ExposureBudget {
  depths: BudgetAtDepth[];
}

function budgetOf(exposure: ExposureAtDepth): BudgetAtDepth {
  const { depth_m, verdict, iso, f_number, shutter_s, total_loss_stops, shortfall_stops, excess_stops } =
    exposure;
  return {
    depth_m,
    losses: LOSSES.flatMap((at) => {
      const stops = exposure[`${at}_loss_stops`];
      // No filter on the lens takes nothing.
      return stops === undefined || stops.likely === 0 ? [] : [{ at, stops }];
    }),
    ...(total_loss_stops ? { total: total_loss_stops } : {}),
    verdict,
    iso,
    f_number,
    shutter_s,
    ...(shortfall_stops ? { shortfall_stops: shortfall_stops.likely } : {}),
    ...(excess_stops ? { excess_stops: excess_stops.likely } : {}),
  };
}

/**
 * The figures of `exposure-loss` at the ends of the filmed depths.
 * @throws SceneProblem as `exposureLoss` does
 */
export function exposureBudget(scene: Scene): ExposureBudget {
  const { depths } = exposuresOf(scene);
  const ends = depths.length > 1 ? [depths[0], lastOf(depths)] : [depths[0]];
  return { depths: ends.map(budgetOf) };
}
