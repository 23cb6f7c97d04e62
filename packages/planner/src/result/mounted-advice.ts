import type { LightCauses } from "../codes/causes.js";
import type { CautionCode, MountingCautionCode } from "../codes/cautions.js";
import type { Basis, Coded } from "../codes/coded.js";
import type { FilterMountingReasons } from "../codes/filter-mounting.js";
import type { MountStepCodes, MountTakeCodes } from "../codes/mount-in-plan.js";
import type { StepCodes } from "../codes/steps.js";
import type { SummaryCodes } from "../codes/summary.js";
import type { TakeCodes } from "../codes/take.js";
import type { FilterHolder } from "../scene/filter-mounting-scene.js";
import type { FilterChange } from "../scene/scene.js";
import type { AnswerParts } from "./common.js";
import type { DiveAdviceAnswer, DivePhase, PlanReasons } from "./dive-advice.js";
import type { MountOption, MountPlace, MountVerdict } from "./filter-mounting.js";

/** How what the plan puts on the lens is mounted; where nothing holds it, why. */
export interface MountInPlan {
  holder: FilterHolder;
  place: MountPlace;
  /** `does_not_fit` where no holder takes a filter: the plan then mounts none. */
  verdict: MountVerdict;
  /** Whether, and how, this holder lets the filter be changed at depth. */
  filter_change_underwater: FilterChange;
  /** Filters that it holds, one behind the other; 0 where none fits. */
  filters: number;
  /** Every holder, best first. */
  options: MountOption[];
}

/** One line of it. */
export type MountedStep = Coded<StepCodes & MountStepCodes> & {
  phase: DivePhase;
  depth_m?: number;
  basis: Basis;
};

/** A plan for a scene that says what its filters are mounted on. */
export interface MountedAdviceAnswer
  extends Omit<DiveAdviceAnswer, "summary" | "steps" | "take" | keyof AnswerParts<PlanReasons>>,
    AnswerParts<PlanReasons & FilterMountingReasons, LightCauses, CautionCode | MountingCautionCode> {
  summary: Coded<
    SummaryCodes & Pick<FilterMountingReasons, "mount_nothing_fits" | "mount_asked_does_not_fit">
  >[];
  steps: MountedStep[];
  take: (Coded<TakeCodes & MountTakeCodes> & { id?: string })[];
  /** Absent where the plan puts nothing on the lens, and would not. */
  mounting?: MountInPlan;
}
