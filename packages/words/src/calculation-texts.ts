import type {
  AttenuationReasons,
  BalanceSteps,
  CardNotes,
  CautionCode,
  ColourRecoveryReasons,
  ExposureLossReasons,
  FilterChoiceReasons,
  FilterMountingReasons,
  LightReasons,
  MixedLightReasons,
  MountingCauses,
  MountingCautionCode,
  MountingSteps,
  MountTakeCodes,
  PlanReasons,
  StepCodes,
  SummaryCodes,
  TakeCodes,
  WaysOut,
  WaysToPay,
  WhiteBalanceReasons,
} from "@sunfathom/planner";
import type { AnswerTexts, StepText, TakeText } from "./answer-texts.js";
import type { Texts } from "./problems/texts.js";

// Texts of each calculation, by its name. One that a language lacks is an error of the compiler.

export type AttenuationTexts = AnswerTexts<AttenuationReasons & LightReasons>;

export type FilterChoiceTexts = AnswerTexts<FilterChoiceReasons & LightReasons>;

export type ColourRecoveryTexts = AnswerTexts<ColourRecoveryReasons & LightReasons>;

export interface ExposureLossTexts extends AnswerTexts<ExposureLossReasons & LightReasons> {
  readonly ways: Texts<WaysToPay, string>;
}

export interface MixedLightTexts extends AnswerTexts<MixedLightReasons & LightReasons> {
  readonly ways: Texts<WaysOut, string>;
}

export interface WhiteBalanceTexts extends AnswerTexts<WhiteBalanceReasons & LightReasons> {
  readonly procedure: Texts<BalanceSteps, string>;
  readonly notes: Texts<CardNotes, string>;
}

export interface FilterMountingTexts
  extends AnswerTexts<FilterMountingReasons, MountingCauses, CautionCode | MountingCautionCode> {
  readonly procedure: Texts<MountingSteps, string>;
  /** What a plan takes along to hold its filters. */
  readonly take: Texts<MountTakeCodes, TakeText>;
}

export interface DiveAdviceTexts extends AnswerTexts<PlanReasons> {
  readonly summary: Texts<SummaryCodes, string>;
  readonly steps: Texts<StepCodes, StepText>;
  readonly take: Texts<TakeCodes, TakeText>;
}
