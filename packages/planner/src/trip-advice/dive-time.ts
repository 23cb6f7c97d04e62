import { localTimeToInstant, OpticsDomainError } from "@sunfathom/optics";
import { SceneProblem } from "../scene/scene-problem.js";
import type { TripDive } from "./plan.js";

/**
 * When a dive begins, in UTC (RFC 3339). Of an hour that a clock change repeats, the first.
 * @throws SceneProblem for a time that there is not, or a zone that nobody knows
 */
export function timeOf({ local_time, time_zone }: TripDive): string {
  try {
    return localTimeToInstant(local_time, time_zone).instant.toISOString().replace(".000Z", "Z");
  } catch (error) {
    if (!(error instanceof OpticsDomainError)) throw error;
    const field = error.refusal.code === "time_zone_unknown" ? "time_zone" : "local_time";
    throw new SceneProblem(error.refusal, field);
  }
}
