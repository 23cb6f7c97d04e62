import type { AnswerForm, Problem, TextUnits } from "@sunfathom/contract";

/** What was worked out, in words, before it has its form. */
export interface Said {
  /** Ids of the tables and formulas that it rests on. */
  sources: string[];
}

/** Why there is no answer, in words. */
export interface Refused {
  status: "problem";
  problem: Problem;
}

export interface Answered {
  status: "ok";
  /** The answer in its final form: `toJson` gives its text. Put into form when it is first asked for. */
  readonly body: object;
  /** The same before it is put into form, for `toBytes`. */
  readonly unshaped: object;
  /** The form that the contract gives it. */
  readonly form: AnswerForm;
  /** The scene in its one form, as text: equal for scenes that mean the same. */
  canonical: string;
}

/** A scene that is valid, before anything was computed. */
export interface Ready<R = Refused> {
  status: "ready";
  canonical: string;
  /** Units of lengths in its texts: no part of what the scene means. */
  units: TextUnits;
  /** The scene in its one form: what the computing will cost can be told from it. */
  scene: object;
  compute: () => Answered | R;
  /**
   * Why something else that is made of the scene cannot be.
   * @throws the error again where it is not the scene's fault
   */
  refuse: (error: unknown) => R;
}
