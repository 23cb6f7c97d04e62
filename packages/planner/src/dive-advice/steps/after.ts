import type { Gear } from "../../codes/steps.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { STRONG_DELTA_E00 } from "../ranks.js";
import { step } from "./step.js";

/** What is done after the dive: the grade, and care of the gear. */
export function afterDive({ red, filmed, filter, scene }: Decisions): DiveStep[] {
  const at = { phase: "after_dive" } as const;
  const steps: DiveStep[] = [];
  if (red) {
    // What lies deeper than anyone films is nobody's concern.
    const gone = red.gone_m < filmed.max_depth_m ? { gone_m: red.gone_m } : {};
    if (red.acceptable_m <= filmed.min_depth_m)
      steps.push(
        step(at, "grade_no_red", {
          ...gone,
          ...(red.gone_m <= filmed.min_depth_m ? { from_start: true as const } : {}),
        }),
      );
    // Told to a metre, it is to lie above the end of the dive.
    else if (red.acceptable_m < filmed.max_depth_m - 0.5)
      steps.push(step(at, "grade_red", { acceptable_m: red.acceptable_m, ...gone, ...leftIn(filter) }));
  }
  const gear: Gear[] = ["housing"];
  // What is mounted behind the port is not rinsed before that is opened.
  if (filter.filter_kind !== "none" && scene.filter_change_underwater !== "none") gear.push("filter");
  if (scene.lamps.length > 0) gear.push("lamps");
  const profile = scene.finish === "matched" ? { profile: true as const } : {};
  steps.push(step({ ...at, basis: "common_practice" }, "rinse", { gear, ...profile }));
  return steps;
}

function leftIn({ colour_error_delta_e00 }: Decisions["filter"]): { left?: { error: number } } {
  const error = colour_error_delta_e00.likely;
  return error < STRONG_DELTA_E00 ? {} : { left: { error } };
}
