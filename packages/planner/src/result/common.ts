import type { LightCauses } from "../codes/causes.js";
import type { CautionCode } from "../codes/cautions.js";
import type { Coded, Reason } from "../codes/coded.js";

/** 10th, 50th and 90th percentile of a quantity. */
export interface Estimate {
  low: number;
  likely: number;
  high: number;
}

export interface Caution<Code extends string = CautionCode> {
  code: Code;
}

/** A cause of uncertainty and the part of the variance that it explains. */
export type UncertaintyCause<Causes = LightCauses> = Coded<Causes> & {
  /** Share of the variance of the answer's main quantity, 0 to 1. */
  share: number;
};

/** Parts that every answer of the planner carries. */
export interface AnswerParts<Reasons, Causes = LightCauses, Cautions extends string = CautionCode> {
  reasons: Reason<Reasons>[];
  cautions: Caution<Cautions>[];
  /** Largest first. */
  uncertainty: UncertaintyCause<Causes>[];
  /** Ids of the tables and formulas that the answer rests on. */
  sources: string[];
}
