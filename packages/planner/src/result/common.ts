/** 10th, 50th and 90th percentile of a quantity. */
export interface Estimate {
  low: number;
  likely: number;
  high: number;
}

export interface Figure {
  /** What the figure is, in snake_case with its unit at the end where it has one. */
  name: string;
  value: number;
}

/** Why the answer is what it is. */
export interface Reason {
  /** Stable code, for programs and translations. */
  code: string;
  /** One or two plain sentences. */
  text: string;
  /** `computed` from the model, or `common_practice` of the trade without a published source. */
  basis: "computed" | "common_practice";
  /** The figures that the reason rests on. */
  figures: Figure[];
}

export interface Caution {
  code: string;
  text: string;
}

/** A cause of uncertainty and the part of the variance that it explains. */
export interface UncertaintyCause {
  cause: string;
  text: string;
  /** Share of the variance of the answer's main quantity, 0 to 1. */
  share: number;
  /** What the user could measure or state to shrink it. */
  how_to_shrink: string;
}

/** Parts that every answer of the planner carries. */
export interface AnswerParts {
  reasons: Reason[];
  cautions: Caution[];
  /** Largest first. */
  uncertainty: UncertaintyCause[];
  /** Ids of the tables and formulas that the answer rests on. */
  sources: string[];
}
