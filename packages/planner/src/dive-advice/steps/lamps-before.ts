import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { ownedName } from "../owned-name.js";
import { lampsOff } from "./lamps-off.js";
import { step } from "./step.js";

const at = { phase: "before_dive" } as const;

/** What is done with the lamps on dry land. */
export function lampsBefore(d: Decisions): DiveStep[] {
  const { fitted, lampFilter, lampPlan, middle } = d;
  if (lampPlan === "lamps_with_filter" && lampFilter) {
    const { item, split_left_delta_e00: left } = lampFilter;
    const instead = fitted ? { instead_of: fitted.filter } : {};
    return [step(at, "filter_lamps", { filter: ownedName(item), left, ...instead })];
  }
  if (fitted && !fitted.kept) return [step(at, "bare_lamps", { filter: fitted.filter })];
  if (fitted && lampPlan !== "lamps_off") {
    const left = middle.split_delta_e00?.likely ?? 0;
    return [step(at, "keep_lamp_filters", { filter: fitted.filter, left })];
  }
  return lampPlan === "lamps_off" ? lampsOff(d) : [];
}
