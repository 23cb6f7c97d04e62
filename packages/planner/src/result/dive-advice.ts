import type { CircumstanceReasons } from "../codes/circumstances.js";
import type { Basis, Coded } from "../codes/coded.js";
import type { FilterMainReasons } from "../codes/filter-choice.js";
import type { LeftAshoreReasons } from "../codes/left-ashore.js";
import type { LightReasons } from "../codes/light.js";
import type { FilterVerdict } from "../codes/named-filter.js";
import type { StepCodes } from "../codes/steps.js";
import type { CloseCalls, LampPlan, SummaryCodes } from "../codes/summary.js";
import type { TakeCodes } from "../codes/take.js";
import type { WhiteBalanceReasons } from "../codes/white-balance.js";
import type { AnswerParts } from "./common.js";
import type { MixedLightVerdict } from "./mixed-light.js";

export type DivePhase = "before_dive" | "at_start" | "going_down" | "lamps" | "coming_up" | "after_dive";

/** Reasons of the decisions that a plan is made of; steps say why the camera and the lamps are set as they are. */
export type PlanReasons = FilterMainReasons &
  WhiteBalanceReasons &
  LightReasons &
  LeftAshoreReasons &
  CircumstanceReasons;

/** One line of the plan. */
export type DiveStep = Coded<StepCodes> & {
  phase: DivePhase;
  /** Where it is to be done; absent where it belongs to no one depth. */
  depth_m?: number;
  basis: Basis;
};

/** What to take from the shelf. */
export type TakeItem = Coded<TakeCodes> & {
  /** The id from the kit; absent for what the kit lacks. */
  id?: string;
};

/** The numbers to remember first. */
export interface Remember {
  /** Of the colour filter; absent without one, and for one that is known by its measured curve. */
  filter_density?: number;
  first_balance_depth_m: number;
  starting_iso: number;
}

export interface DiveAdviceAnswer extends AnswerParts<PlanReasons> {
  /** The whole advice in two or three sentences. */
  summary: Coded<SummaryCodes>[];
  filter_kind: FilterVerdict;
  filter_density?: number;
  filter_id?: string;
  filter_verdict: "clear" | "near_tie";
  lamp_plan: LampPlan;
  /** What leads in the middle of the range. */
  mixed_light_verdict: MixedLightVerdict;
  balance_to: "daylight" | "lamps" | "daylight_and_lamps";
  balance_depths_descending_m: number[];
  balance_depths_ascending_m: number[];
  remember: Remember;
  /** Plans that are nearly as good. */
  close_calls: Coded<CloseCalls>[];
  /** In the order in which things are done. */
  steps: DiveStep[];
  take: TakeItem[];
}
