import { itemAt } from "../../lists/non-empty.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { balancesUpIn, changeStops, mountOf } from "../legs.js";
import { step } from "./step.js";

/** What is done on the way up, leg by leg. */
export function comingUp(d: Decisions): DiveStep[] {
  const steps: DiveStep[] = [];
  const upward = [...d.legs].reverse();
  upward.forEach((leg, i) => {
    const depth_m = leg.scene.max_depth_m;
    if (i > 0) {
      const code = leg.filtered ? "filter_in" : "filter_out";
      const stops = changeStops(leg, itemAt(upward, i - 1));
      steps.push(step({ phase: "coming_up", depth_m }, code, { depth_m, stops, mount: mountOf(leg) }));
    }
    const again = balancesUpIn(leg, d.legs[0]).slice(1);
    const [first_m] = again;
    if (first_m !== undefined) {
      const tolerance = leg.balance.balance_tolerance_delta_e00;
      steps.push(
        step({ phase: "coming_up", depth_m: first_m }, "balance_again", {
          depths_m: again,
          tolerance,
        }),
      );
    }
  });
  if (d.filmed.lamps.length > 0) {
    steps.push(step({ phase: "coming_up", basis: "common_practice" }, "lamps_off_before_air"));
  }
  return steps;
}
