import type { Basis, Coded, With } from "../../codes/coded.js";
import type { StepCodes } from "../../codes/steps.js";
import type { DivePhase, DiveStep } from "../../result/dive-advice.js";

/** A step of the plan. */
export function step<Code extends keyof StepCodes>(
  at: { phase: DivePhase; depth_m?: number; basis?: Basis },
  code: Code,
  ...[parameters]: With<StepCodes[Code]>
): DiveStep {
  const coded = { code, parameters: parameters ?? {} } as Coded<StepCodes>;
  return {
    phase: at.phase,
    ...(at.depth_m === undefined ? {} : { depth_m: at.depth_m }),
    ...coded,
    basis: at.basis ?? "computed",
  };
}
