import type { Gear } from "../../codes/steps.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { step } from "./step.js";

/** What is done after the dive: the grade, and care of the gear. */
export function afterDive({ red, filmed, filter, scene }: Decisions): DiveStep[] {
  const at = { phase: "after_dive" } as const;
  const steps: DiveStep[] = [];
  if (red) {
    // What lies deeper than anyone films is nobody's concern.
    const gone = red.gone_m < filmed.max_depth_m ? { gone_m: red.gone_m } : {};
    if (red.acceptable_m <= filmed.min_depth_m) steps.push(step(at, "grade_no_red", gone));
    else if (red.acceptable_m < filmed.max_depth_m)
      steps.push(step(at, "grade_red", { acceptable_m: red.acceptable_m, ...gone }));
  }
  const gear: Gear[] = ["housing"];
  if (filter.filter_kind !== "none") gear.push("filter");
  if (scene.lamps.length > 0) gear.push("lamps");
  steps.push(step({ ...at, basis: "common_practice" }, "rinse", { gear }));
  return steps;
}
