import type { Basis } from "../codes/coded.js";
import type { DivePhase, DiveStep } from "../result/dive-advice.js";
import { figuresOf } from "./say.js";
import { STEPS_EN, type StepCode, type StepText } from "./steps-en.js";

type StepParameters<C extends StepCode> = Parameters<(typeof STEPS_EN)[C]> extends [infer P] ? [P] : [];

/** A step of the plan with its texts; its numbers as figures. */
export function step<C extends StepCode>(
  at: { phase: DivePhase; depth_m?: number; basis?: Basis },
  code: C,
  ...[parameters]: StepParameters<C>
): DiveStep {
  const say = STEPS_EN[code] as (p?: unknown) => StepText;
  const { text, why } = say(parameters);
  return {
    phase: at.phase,
    ...(at.depth_m === undefined ? {} : { depth_m: at.depth_m }),
    code,
    text,
    why,
    basis: at.basis ?? "computed",
    figures: figuresOf(parameters),
  };
}
